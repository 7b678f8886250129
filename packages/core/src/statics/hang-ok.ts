import type { Limit } from "../outcome/outcome.ts";
import { heightOversteps, isOver, strapOversteps, type LimitInput } from "./hang-breaches.ts";
import { shortfall, type ErrorName } from "./hang-deviation.ts";
import { hangFigures, type HangSetting, type HangSite, type HangStart } from "./hang-figures.ts";
import type { HangRig } from "./hang-rig.ts";
import { forecast, limitRows, SLOPES, type Forecast, type LimitRow } from "./hang-ok-forecast.ts";
import { hangSlopes, startOffBy, type SolvedHang } from "./hang-slopes.ts";
import { startOf, strapFigures, type HangTrial } from "./hang-trial.ts";
import type { HangQuantity, OkRange } from "./hang-types.ts";

/** What a person sets, and so what may come out wrong. */
export type SetQuantity = Extract<
  HangQuantity,
  "head.strapHeightM" | "foot.strapHeightM" | "head.strapLengthM" | "foot.strapLengthM" | "spanM"
>;

export type OkRanges = Readonly<Partial<Record<SetQuantity, OkRange>>>;

/**
 * How far each thing a person sets may be off, all else as planned, before a limit is met.
 *
 * Walks outwards from the plan. At each look the hang is solved as it would then be, and its exact slopes foretell
 * where each limit would be met; the next look is at the nearest. Every limit counts: angles of both straps, lengths,
 * reach and caps, seat, low point, foot raise. Empty where the plan itself keeps not all of the limits.
 *
 * Error    at each end the named limit is met to a millionth of a metre or radian, from inside. A quantity that meets
 *          no limit within 1.5 m is left out
 */
export function okRanges(rig: HangRig, site: HangSite, input: LimitInput, trial: HangTrial): OkRanges {
  const ranges: Partial<Record<SetQuantity, OkRange>> = {};
  const edges = okEdges(rig, site, input, trial);
  for (const quantity of SET_QUANTITIES) {
    const { low, high } = edges[quantity] ?? {};
    if (low === undefined || high === undefined) continue;
    const [lowest, highest] = [toldAt(quantity, low.at), toldAt(quantity, high.at)];
    ranges[quantity] = { low: lowest, high: highest, bindsLow: low.binds, bindsHigh: high.binds };
  }
  return ranges;
}

/** Both ends of each quantity's way, as hangs: absent where no limit is met within 1.5 m. */
export function okEdges(rig: HangRig, site: HangSite, input: LimitInput, trial: HangTrial): OkEdges {
  const planned = solved(rig, site, trial.setting, startOf(trial.straps), undefined);
  const edges: Partial<Record<SetQuantity, { low?: Edge; high?: Edge }>> = {};
  if (brokenLimits(input, trial).length > 0) return edges;
  const rows = limitRows(input, planned);
  const slopes = hangSlopes(planned);
  const paths = SET_QUANTITIES.flatMap((quantity) => {
    slopes(HOW[quantity].cause, SLOPES);
    return ([-1, 1] as const).map((side) => newPath(rows, planned, quantity, side));
  });
  for (const path of paths) {
    const edge = edgeOf(path);
    const known = (edges[path.quantity] ??= {});
    if (edge !== undefined) known[path.side < 0 ? "low" : "high"] = edge;
  }
  return edges;
}

export type OkEdges = Readonly<Partial<Record<SetQuantity, { readonly low?: Edge; readonly high?: Edge }>>>;

/** Where a way ends: how far from the plan, the hang as it is there, and the limit that is met. */
export interface Edge {
  readonly offM: number;
  readonly at: SolvedHang;
  readonly binds: Limit;
}

/** What is read off a tape or counted in steps: straps as long as they are under load. */
function toldAt(quantity: SetQuantity, { rig, setting, figures }: SolvedHang): number {
  const straps = strapFigures(rig, setting, figures);
  if (quantity === "head.strapLengthM") return straps.headStrapM;
  if (quantity === "foot.strapLengthM") return straps.footStrapM;
  return setting[HOW[quantity].field];
}

/** The limits that the plan itself does not keep, each once. */
export function brokenLimits(input: LimitInput, { straps, setting, figures }: HangTrial): readonly Limit[] {
  const oversteps = [...strapOversteps(input, straps), ...heightOversteps(input, { setting, figures })];
  return [...new Set(oversteps.filter(isOver).map(({ limit }) => limit))];
}

export const SET_QUANTITIES: readonly SetQuantity[] = [
  "head.strapHeightM",
  "foot.strapHeightM",
  "head.strapLengthM",
  "foot.strapLengthM",
  "spanM",
];

/** The setting with one quantity off by so much, the rest as it was. */
export function moved(setting: HangSetting, quantity: SetQuantity, offM: number): HangSetting {
  const { field } = HOW[quantity];
  return { ...setting, [field]: setting[field] + offM };
}

interface How {
  readonly field: keyof HangSetting;
  readonly cause: ErrorName;
}

const HOW: Readonly<Record<SetQuantity, How>> = {
  "head.strapHeightM": { field: "headHeightM", cause: "headHeightM" },
  "foot.strapHeightM": { field: "footHeightM", cause: "footHeightM" },
  "head.strapLengthM": { field: "headStrapM", cause: "headStrapM" },
  "foot.strapLengthM": { field: "footStrapM", cause: "footStrapM" },
  spanM: { field: "spanM", cause: "spanM" },
};

const FURTHEST_M = 1.5;
/** No look goes further than this beyond the last one that kept all limits [m]. */
const LONGEST_STEP_M = 0.3;
/** Between a look that keeps all limits and one that does not, at the last [m]. */
const CLOSE_M = 1e-9;
const MOST_LOOKS = 60;

/** A way outwards from the plan, with the first step already foretold. */
interface Path {
  readonly rows: readonly LimitRow[];
  readonly planned: SolvedHang;
  readonly quantity: SetQuantity;
  readonly side: 1 | -1;
  readonly end: PathEnd;
  readonly first: Forecast;
  readonly firstM: number;
  readonly start: HangStart;
}

function newPath(rows: readonly LimitRow[], planned: SolvedHang, quantity: SetQuantity, side: 1 | -1): Path {
  const end = endOfPath(planned, quantity, side);
  const first = forecast(rows, planned, quantity, side);
  const firstM = between(0, Math.max(0, end.offM), first.byM);
  const start = startOffBy(planned, HOW[quantity].cause, side * firstM);
  return { rows, planned, quantity, side, end, first, firstM, start };
}

/** The next look: as foretold where that lies between what keeps all limits and what does not, else half way. */
function between(keptM: number, brokenM: number, nextM: number): number {
  const furthestM = Math.min(brokenM, keptM + LONGEST_STEP_M);
  const goM = Math.min(nextM, furthestM);
  return goM > keptM && goM < brokenM ? goM : (keptM + furthestM) / 2;
}

function edgeOf({ rows, planned, quantity, side, end, first, firstM, start }: Path): Edge | undefined {
  if (first.isMet) return { offM: 0, at: planned, binds: first.limit };
  if (!(end.offM > 0)) return { offM: 0, at: planned, binds: end.binds };
  const { field, cause } = HOW[quantity];
  let [kept, keptM, brokenM] = [planned, 0, end.offM];
  let { binds } = end;
  let offM = firstM;
  let from = start;
  for (let look = 0; look < MOST_LOOKS; look++) {
    const setting = { ...planned.setting };
    setting[field] += side * offM;
    const here = solved(planned.rig, planned.site, setting, from, LOOK_RESIDUAL);
    hangSlopes(here)(cause, SLOPES);
    const ahead = forecast(rows, here, quantity, side);
    if (ahead.isBroken) [brokenM, binds] = [offM, ahead.limit];
    else [kept, keptM] = [here, offM];
    if (ahead.isMet) return { offM: side * offM, at: here, binds: ahead.limit };
    if (keptM >= FURTHEST_M) return undefined;
    if (brokenM - keptM <= CLOSE_M) break;
    const goM = between(keptM, brokenM, offM + ahead.byM);
    from = startOffBy(here, cause, side * (goM - offM));
    offM = goM;
  }
  return { offM: side * keptM, at: kept, binds };
}

/** A look may be off by this over the chain's length: a hundredth of how closely a limit is met. */
const LOOK_RESIDUAL = 1e-9;

function solved(
  rig: HangRig,
  site: HangSite,
  setting: HangSetting,
  start: HangStart,
  residual: number | undefined,
): SolvedHang {
  return { rig, site, setting, figures: hangFigures(rig, site, setting, start, residual), letOut: false };
}

interface PathEnd {
  readonly offM: number;
  readonly binds: Limit;
}

/**
 * Where a quantity can go no further in any hang: a strap of no length, gathers that meet, or straps and cloth that
 * reach the other tree only in a straight line, which is the flattest that can be.
 */
function endOfPath({ rig, site, setting }: SolvedHang, quantity: SetQuantity, side: 1 | -1): PathEnd {
  const dxM = setting.spanM - site.headRadiusM - site.footRadiusM;
  const dzM = site.footGroundM + setting.footHeightM - setting.headHeightM;
  const straightM = Math.sqrt(dxM * dxM + dzM * dzM) - shortfall(rig, site, setting);
  if (quantity === "spanM") {
    if (side < 0) return { offM: dxM, binds: "trees-too-close" };
    return flattest(Math.sqrt(straightM * straightM - dzM * dzM) - dxM);
  }
  if (quantity === "head.strapLengthM" || quantity === "foot.strapLengthM") {
    if (side > 0) return { offM: Infinity, binds: "trees-too-close" };
    const strapM = setting[HOW[quantity].field];
    const reachM = -shortfall(rig, site, setting);
    return reachM < strapM ? flattest(reachM) : { offM: strapM, binds: "trees-too-close" };
  }
  const rising = quantity === "foot.strapHeightM" ? side : -side;
  return flattest(Math.sqrt(straightM * straightM - dxM * dxM) - rising * dzM);
}

function flattest(offM: number): PathEnd {
  return { offM, binds: "angle-flattest" };
}
