import { refuse, refuseAll, succeed, type Limit, type Outcome } from "../outcome/outcome.ts";
import type { HouseRules } from "../plan/house-rules.ts";
import { hangCore } from "../statics/hang-core.ts";
import { hangInputRefusals } from "../statics/hang-input.ts";
import { hangRig } from "../statics/hang-rig.ts";
import type { HangInput, OkRange } from "../statics/hang-types.ts";

/**
 * The spans at which a kit and a sleeper can be hung between two such trees, planned anew for each, and which limit
 * ends them: reach, cap, shortest or longest strap, room between the trees, or the house's own range.
 *
 * Walks outwards from the span given, or where that does not serve from the nearest that does, and closes in on each
 * end by halving. The ground keeps its fall over the span.
 *
 * Shapes   one hang → low, high [m] and the limit at each end
 * Holds    a usable hang; refused with the hang's own reasons where no span from 1 to 12 m serves
 * Error    0.1 mm on each end
 * Source   hang-chain, house-rules
 */
export function spanWindow(
  request: HangInput,
  rules: Pick<HouseRules, "spanMinM" | "spanMaxM">,
): Outcome<OkRange> {
  const failure = refuseAll(hangInputRefusals(request));
  if (failure !== undefined) return failure;
  const rig = hangRig(request);
  const at = (spanM: number): Outcome<unknown> => hangCore(rig, { ...request, spanM });
  const here = at(request.spanM);
  const inside = nearestThatServes(at, request.spanM);
  if (inside === undefined) return here.ok ? refuse("spanM", request.spanM, "from 1 to 12 m") : here;
  const low = edge(at, inside, SHORTEST_M);
  const high = edge(at, inside, LONGEST_M);
  const { spanMinM, spanMaxM } = rules;
  const isHouseLow = spanMinM.value >= low.spanM;
  const isHouseHigh = spanMaxM.value <= high.spanM;
  return succeed({
    low: isHouseLow ? spanMinM.value : low.spanM,
    high: isHouseHigh ? spanMaxM.value : high.spanM,
    bindsLow: isHouseLow ? "span-least" : low.binds,
    bindsHigh: isHouseHigh ? "span-most" : high.binds,
  });
}

const SHORTEST_M = 1;
const LONGEST_M = 12;
const SCAN_M = 0.1;
const CLOSE_M = 1e-4;

type Ask = (spanM: number) => Outcome<unknown>;

function nearestThatServes(at: Ask, spanM: number): number | undefined {
  for (let offM = 0; offM <= LONGEST_M; offM += SCAN_M) {
    const found = [spanM - offM, spanM + offM].find(
      (tried) => tried >= SHORTEST_M && tried <= LONGEST_M && at(tried).ok,
    );
    if (found !== undefined) return found;
  }
  return undefined;
}

interface Edge {
  readonly spanM: number;
  readonly binds: Limit;
}

/** The last span that serves on the way from `inside` to `end`. */
function edge(at: Ask, inside: number, end: number): Edge {
  const side = Math.sign(end - inside);
  let kept = inside;
  let over = inside;
  while (at(over).ok) {
    kept = over;
    over += side * SCAN_M;
    if (side * (end - over) < 0) return { spanM: end, binds: side < 0 ? "trees-too-close" : "span-most" };
  }
  while (Math.abs(over - kept) > CLOSE_M) {
    const middle = (kept + over) / 2;
    if (at(middle).ok) kept = middle;
    else over = middle;
  }
  return { spanM: kept, binds: bindsOf(at(over)) ?? "trees-too-close" };
}

function bindsOf(refused: Outcome<unknown>): Limit | undefined {
  return refused.ok ? undefined : refused.refusals.find(({ binds }) => binds !== undefined)?.binds;
}
