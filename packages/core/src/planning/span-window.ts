import { refuse, refuseAll, succeed, type Limit, type Outcome } from "../outcome/outcome.ts";
import type { HouseRules } from "../plan/house-rules.ts";
import { furthestAngle, hangCore } from "../statics/hang-core.ts";
import { hangInputRefusals } from "../statics/hang-input.ts";
import { hangRig } from "../statics/hang-rig.ts";
import type { HangTrial } from "../statics/hang-trial.ts";
import type { HangInput, OkRange } from "../statics/hang-types.ts";

/** What besides the hang may end the window, where it is known. */
export interface SpanExtras {
  /** Length of the tarp's ridge [m]. */
  readonly tarpRidgeM?: number;
  /** Most that each trunk may be bent: sideways pull × strap height [N m]. */
  readonly bendMaxNM?: { readonly head?: number; readonly foot?: number };
}

/**
 * The spans at which a kit and a sleeper can be hung between two such trees, planned anew for each, and which limit
 * ends them: reach, cap, shortest or longest strap, room between the trees or for the tarp, the bending of a trunk, or
 * the house's own range.
 *
 * Starts from the span given, or where that does not serve from the nearest that does, and closes in on each end by
 * halving. The ground keeps its fall over the span.
 *
 * Shapes   one hang → low, high [m] and the limit at each end
 * Holds    a usable hang; refused with the hang's own reasons where no span of the house's range serves
 * Error    0.5 mm on each end, always inside
 * Source   hang-chain, house-rules
 */
export function spanWindow(
  request: HangInput,
  rules: Pick<HouseRules, "spanMinM" | "spanMaxM">,
  extras: SpanExtras = {},
): Outcome<OkRange> {
  const failure = refuseAll(hangInputRefusals(request));
  if (failure !== undefined) return failure;
  const [floor, ceiling] = frameOf(request, rules, extras);
  if (floor.spanM > ceiling.spanM) {
    return refuse("spanM", floor.spanM, `at most ${ceiling.spanM} m`, floor.binds);
  }
  const at = asker(request, extras);
  const spanM = Math.min(Math.max(request.spanM, floor.spanM), ceiling.spanM);
  const inside = nearestThatServes(at, spanM, floor.spanM, ceiling.spanM);
  if (inside === undefined) return refusedAt(at, spanM);
  const [low, high] = [edge(at, inside, floor), edge(at, inside, ceiling)];
  return succeed({ low: low.spanM, high: high.spanM, bindsLow: low.binds, bindsHigh: high.binds });
}

const SHORTEST_M = 1;
const LONGEST_M = 12;
const SCAN_M = 0.1;
const CLOSE_M = 5e-4;

/** Each end of the tarp's ridge needs so much line to be tied off and tightened [m]. Source: common-practice. */
const TARP_LINE_M = 0.1;

interface Edge {
  readonly spanM: number;
  readonly binds: Limit;
}

/** What bounds the window whatever hangs: the house's range, and room for the tarp. */
function frameOf(
  { head, foot }: HangInput,
  { spanMinM, spanMaxM }: Pick<HouseRules, "spanMinM" | "spanMaxM">,
  { tarpRidgeM }: SpanExtras,
): readonly [floor: Edge, ceiling: Edge] {
  const floors: Edge[] = [
    { spanM: SHORTEST_M, binds: "trees-too-close" },
    { spanM: spanMinM.value, binds: "span-least" },
  ];
  if (tarpRidgeM !== undefined) {
    const spanM = tarpRidgeM + 2 * TARP_LINE_M + (head.dbhM + foot.dbhM) / 2;
    floors.push({ spanM, binds: "tarp-ridge" });
  }
  const floor = floors.reduce((most, next) => (next.spanM >= most.spanM ? next : most));
  return [floor, { spanM: Math.min(LONGEST_M, spanMaxM.value), binds: "span-most" }];
}

type Ask = (spanM: number) => Outcome<unknown>;

function asker(request: HangInput, { bendMaxNM = {} }: SpanExtras): Ask {
  const rig = hangRig(request);
  const edges = {
    flatter: furthestAngle(rig, request, "flatter"),
    steeper: furthestAngle(rig, request, "steeper"),
  };
  return (spanM) => {
    const core = hangCore(rig, { ...request, spanM }, edges);
    if (!core.ok) return core;
    return bendRefusal(core.value.trial, bendMaxNM) ?? core;
  };
}

function bendRefusal(
  { straps, setting }: HangTrial,
  { head = Infinity, foot = Infinity }: { readonly head?: number; readonly foot?: number },
) {
  const sidewaysN = straps.lying.alongN;
  const [headNM, footNM] = [sidewaysN * setting.headHeightM, sidewaysN * setting.footHeightM];
  if (headNM > head) return refuse("head.bendingNM", headNM, `at most ${head} N m`, "trunk-bend");
  if (footNM > foot) return refuse("foot.bendingNM", footNM, `at most ${foot} N m`, "trunk-bend");
  return undefined;
}

function nearestThatServes(at: Ask, spanM: number, least: number, most: number): number | undefined {
  for (let offM = 0; spanM - offM >= least || spanM + offM <= most; offM += SCAN_M) {
    const found = [spanM - offM, spanM + offM].find(
      (tried) => tried >= least && tried <= most && at(tried).ok,
    );
    if (found !== undefined) return found;
  }
  return [least, most].find((end) => at(end).ok);
}

function refusedAt(at: Ask, spanM: number): Outcome<never> {
  const asked = at(spanM);
  return asked.ok ? refuse("spanM", spanM, "a span that serves") : asked;
}

/** The last span that serves on the way from `inside` to the end of the frame. */
function edge(at: Ask, inside: number, end: Edge): Edge {
  if (at(end.spanM).ok) return end;
  let [kept, over] = [inside, end.spanM];
  while (Math.abs(over - kept) > CLOSE_M) {
    const middle = (kept + over) / 2;
    if (at(middle).ok) kept = middle;
    else over = middle;
  }
  return { spanM: kept, binds: bindsOf(at(over)) ?? end.binds };
}

function bindsOf(refused: Outcome<unknown>): Limit | undefined {
  return refused.ok ? undefined : refused.refusals.find(({ binds }) => binds !== undefined)?.binds;
}
