import { at } from "../numeric/at.ts";
import type { Limit } from "../outcome/outcome.ts";
import { LENGTH_SLACK_M } from "../quantity/constants.ts";
import { heightOversteps, strapOversteps, type LimitInput } from "./hang-breaches.ts";
import { SLOPE_QUANTITIES, type SolvedHang } from "./hang-slopes.ts";
import { strapFigures } from "./hang-trial.ts";
import type { HangQuantity } from "./hang-types.ts";

/** One limit of a hang, ready to be looked at many times. */
export interface LimitRow {
  readonly limit: Limit;
  /** 1 where the bound is a highest, −1 where it is a lowest. */
  readonly sense: 1 | -1;
  readonly bound: number;
  /** Where its quantity stands among GOTS, and among SLOPES; −1 where it has no slope there. */
  readonly got: number;
  readonly slope: number;
  readonly field: string;
}

/** Where the next limit is met, by the slopes at one look. */
export interface Forecast {
  /** How far on, or back, the first limit would be met [m]; and which, or which is broken. */
  readonly byM: number;
  readonly limit: Limit;
  readonly isBroken: boolean;
  readonly isMet: boolean;
}

/** All limits of a hang as rows. */
export function limitRows(input: LimitInput, { rig, setting, figures }: SolvedHang): readonly LimitRow[] {
  const oversteps = [
    ...strapOversteps(input, strapFigures(rig, setting, figures)),
    ...heightOversteps(input, { setting, figures }),
  ];
  return oversteps.map(({ limit, sense, bound, field }) => ({
    limit,
    sense,
    bound,
    got: GOT_FIELDS.indexOf(field),
    slope: SLOPE_FIELDS.indexOf(field),
    field,
  }));
}

/** Slopes at the look that is forecast from, by the quantity that is off; in the order of SLOPE_QUANTITIES. */
export const SLOPES = new Float64Array(SLOPE_QUANTITIES.length);

/**
 * How far on the nearest limit would be met if all ran on along the slopes; back, where one is broken.
 *
 * A limit counts as met from a millionth inside it, and the middle of that is aimed at.
 */
export function forecast(
  rows: readonly LimitRow[],
  solved: SolvedHang,
  quantity: HangQuantity,
  side: 1 | -1,
): Forecast {
  fillGots(solved);
  let byM = Infinity;
  let limit: Limit = "trees-too-close";
  let isBroken = false;
  let isMet = false;
  for (const row of rows) {
    const over = row.sense * (at(GOTS, row.got) - row.bound);
    const thisIsBroken = !(over <= (ANGLES.includes(row.got) ? ANGLE_SLACK : LENGTH_SLACK_M));
    const slope = side * row.sense * slopeOf(row, quantity);
    if (isBroken && !thisIsBroken) continue;
    if (!(slope > 0 || thisIsBroken)) continue;
    const thisM = (-MET / 2 - over) / slope;
    if (thisIsBroken === isBroken && !(thisM < byM)) continue;
    byM = thisM;
    limit = row.limit;
    isBroken = thisIsBroken;
    isMet = !thisIsBroken && over >= -MET;
  }
  return { byM: Number.isFinite(byM) ? byM : Infinity, limit, isBroken, isMet };
}

const MET = 1e-6;
/** An angle went through tangents: it keeps its bound within this [rad]. */
const ANGLE_SLACK = 1e-7;

const SLOPE_FIELDS: readonly string[] = SLOPE_QUANTITIES;
const GOT_FIELDS: readonly string[] = [
  "head.angle",
  "foot.angle",
  "head.strapLengthM",
  "foot.strapLengthM",
  "head.strapHeightM",
  "foot.strapHeightM",
  "seatHeightM",
  "lowPointM",
  "footRaiseM",
  "spanM",
];
const ANGLES = [0, 1];
const GOTS = new Float64Array(GOT_FIELDS.length);

function fillGots({ rig, setting, figures }: SolvedHang): void {
  const { headAngle, footAngle, headStrapM, footStrapM, runM } = strapFigures(rig, setting, figures);
  GOTS[0] = headAngle;
  GOTS[1] = footAngle;
  GOTS[2] = headStrapM;
  GOTS[3] = footStrapM;
  GOTS[4] = setting.headHeightM;
  GOTS[5] = setting.footHeightM;
  GOTS[6] = figures.seatHeightM;
  GOTS[7] = figures.lowPointM;
  GOTS[8] = figures.footRaiseM;
  GOTS[9] = runM;
}

/** How a limit's quantity moves with the one that is off; a strap's height only with itself. */
function slopeOf({ slope, field }: LimitRow, quantity: HangQuantity): number {
  if (slope >= 0) return at(SLOPES, slope);
  return field === quantity && field !== "spanM" ? 1 : 0;
}
