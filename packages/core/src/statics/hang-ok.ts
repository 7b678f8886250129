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
    const brokenAt = (offM: number) =>
      brokenBy(rig, site, input, moved(trial.setting, quantity, offM), start);
    const low = edge(brokenAt, -1);
    const high = edge(brokenAt, 1);
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

function edge(brokenAt: (offM: number) => readonly Overstep[], side: 1 | -1): Edge | undefined {
  let [kept, step] = [0, FIRST_STEP_M];
  let broken = brokenAt(side * step);
  let over = step;
  while (broken.length === 0) {
    kept = over;
    step *= STEP_GROWTH;
    over += step;
    if (over > FURTHEST_M) return undefined;
    broken = brokenAt(side * over);
  }
  while (over - kept > CLOSE_M) {
    const middle = (kept + over) / 2;
    const there = brokenAt(side * middle);
    if (there.length === 0) kept = middle;
    else [over, broken] = [middle, there];
  }
  const binds = broken[0]?.limit;
  return binds === undefined ? undefined : { offM: side * kept, binds };
}

function brokenBy(
  rig: HangRig,
  site: HangSite,
  input: LimitInput,
  setting: HangSetting,
  start: HangStart,
): readonly Overstep[] {
  if (!(Math.min(setting.headStrapM, setting.footStrapM) > 0)) return TOO_CLOSE;
  const figures = hangFigures(rig, site, setting, start);
  if (!figures.converged) return TOO_CLOSE;
  return [
    ...strapOversteps(input, strapFigures(rig, setting, figures)),
    ...heightOversteps(input, { setting, figures }),
  ].filter(isOver);
}

/** A strap of no length, or a hang that finds no rest: there is no room for it. */
const TOO_CLOSE: readonly Overstep[] = [
  { limit: "trees-too-close", wish: "steeper", over: Infinity, field: "spanM", got: 0, bound: 0 },
];

function plannedOf({ setting, straps }: HangTrial, quantity: SetQuantity): number {
  if (quantity === "head.strapLengthM") return straps.headStrapM;
  if (quantity === "foot.strapLengthM") return straps.footStrapM;
  return setting[FIELD_OF[quantity]];
}
