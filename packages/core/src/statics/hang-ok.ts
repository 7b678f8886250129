import type { Limit } from "../outcome/outcome.ts";
import { heightOversteps, isOver, strapOversteps, type LimitInput, type Overstep } from "./hang-breaches.ts";
import { hangFigures, type HangSetting, type HangSite, type HangStart } from "./hang-figures.ts";
import type { HangRig } from "./hang-rig.ts";
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
 * Walks outwards from the plan in steps, each a forward solve of the hang as it would then be, and closes
 * in by halving on the first limit met. Every limit counts: angles of both straps, lengths, reach and caps,
 * seat, low point, foot raise. The end told is the last place found to keep all of them.
 *
 * Error    0.01 mm on each end. A quantity that meets no limit within 1.5 m is left out
 */
export function okRanges(rig: HangRig, site: HangSite, input: LimitInput, trial: HangTrial): OkRanges {
  const start = startOf(trial.straps);
  const ranges: Partial<Record<SetQuantity, OkRange>> = {};
  for (const quantity of SET_QUANTITIES) {
    const worstAt = (offM: number) => worstOf(rig, site, input, moved(trial.setting, quantity, offM), start);
    const low = edge(worstAt, -1);
    const high = edge(worstAt, 1);
    if (low === undefined || high === undefined) continue;
    const plannedM = plannedOf(trial, quantity);
    ranges[quantity] = {
      low: plannedM + low.offM,
      high: plannedM + high.offM,
      bindsLow: low.binds,
      bindsHigh: high.binds,
    };
  }
  return ranges;
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
  const field = FIELD_OF[quantity];
  return { ...setting, [field]: setting[field] + offM };
}

const FIELD_OF: Readonly<Record<SetQuantity, keyof HangSetting>> = {
  "head.strapHeightM": "headHeightM",
  "foot.strapHeightM": "footHeightM",
  "head.strapLengthM": "headStrapM",
  "foot.strapLengthM": "footStrapM",
  spanM: "spanM",
};

const FIRST_STEP_M = 0.02;
const STEP_GROWTH = 1.25;
const FURTHEST_M = 1.5;
const CLOSE_M = 1e-5;

interface Edge {
  readonly offM: number;
  readonly binds: Limit;
}

/**
 * Outwards in growing steps until a limit is met, then the bracket closed by false position: the far value
 * halved where the same end moves twice, and no step into the outer twentieths, so that it always shrinks.
 */
function edge(worstAt: (offM: number) => Overstep, side: 1 | -1): Edge | undefined {
  let [kept, keptBy] = [0, worstAt(0).over];
  let step = FIRST_STEP_M;
  let over = step;
  let worst = worstAt(side * over);
  while (!isOver(worst)) {
    [kept, keptBy] = [over, worst.over];
    step *= STEP_GROWTH;
    over += step;
    if (over > FURTHEST_M) return undefined;
    worst = worstAt(side * over);
  }
  let overBy = worst.over;
  let lastKept: boolean | undefined;
  while (over - kept > CLOSE_M) {
    const share = Math.max(0.05, Math.min(0.95, keptBy / (keptBy - overBy)));
    const at = kept + (over - kept) * (Number.isFinite(share) ? share : 0.5);
    const there = worstAt(side * at);
    const isKept = !isOver(there);
    if (isKept) {
      [kept, keptBy] = [at, there.over];
      if (lastKept === true) overBy /= 2;
    } else {
      [over, overBy, worst] = [at, there.over, there];
      if (lastKept === false) keptBy /= 2;
    }
    lastKept = isKept;
  }
  return { offM: side * kept, binds: worst.limit };
}

/** The limit nearest to being overstepped, or overstepped most. */
function worstOf(
  rig: HangRig,
  site: HangSite,
  input: LimitInput,
  setting: HangSetting,
  start: HangStart,
): Overstep {
  if (!(Math.min(setting.headStrapM, setting.footStrapM) > 0)) return TOO_CLOSE;
  if (cannotReach(rig, site, setting)) return TOO_FAR;
  const figures = hangFigures(rig, site, setting, start);
  if (!figures.converged) return TOO_CLOSE;
  const told = strapOversteps(input, strapFigures(rig, setting, figures));
  const heights = heightOversteps(input, { setting, figures });
  return heights.reduce(worse, told.reduce(worse));
}

function worse(a: Overstep, b: Overstep): Overstep {
  return b.over > a.over ? b : a;
}

/** A strap of no length, or a hang that finds no rest: there is no room for it. */
const TOO_CLOSE: Overstep = {
  limit: "trees-too-close",
  wish: "steeper",
  over: Infinity,
  field: "spanM",
  got: 0,
  bound: 0,
};

/** Straps and cloth that do not reach across: flatter than any limit. */
const TOO_FAR: Overstep = { ...TOO_CLOSE, limit: "angle-flattest" };

/** Whether straps and hammock pulled straight, before any stretch, fall short of the other tree. */
function cannotReach(rig: HangRig, site: HangSite, setting: HangSetting): boolean {
  const dxM = setting.spanM - site.headRadiusM - site.footRadiusM;
  const dzM = site.footGroundM + setting.footHeightM - setting.headHeightM;
  const betweenM = Math.min(rig.clothM, rig.ridgelineM ?? Infinity);
  const straightM = setting.headStrapM + betweenM + setting.footStrapM;
  return straightM * straightM <= dxM * dxM + dzM * dzM;
}

function plannedOf({ setting, straps }: HangTrial, quantity: SetQuantity): number {
  if (quantity === "head.strapLengthM") return straps.headStrapM;
  if (quantity === "foot.strapLengthM") return straps.footStrapM;
  return setting[FIELD_OF[quantity]];
}
