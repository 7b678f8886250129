import type { PlannedBerth } from "../plan/plan.ts";
import { hungModel, type HungModel } from "./adjust/hung-model.ts";
import { overLimits, sumOfSquares } from "./adjust/over-limits.ts";
import { plannedMarks, stateBy, type FourMarks, type PlannedHang } from "./marked-state.ts";

/** The figures that people set a hang by, as they are told, in whole steps of 5 cm. */
export interface HandMarks extends FourMarks {
  /** The foot strap above its own tree's ground, as it then comes [m]. */
  readonly footHeightM: number;
}

/** To such steps people set a strap. Source: house-convention. */
const HAND_STEP_M = 0.05;

/**
 * The marks of a planned berth, rounded together: of all ways of rounding up and down the nearest by which the hang keeps
 * its limits, and each figure the range in which it may be off alone; where none does both, with one step more either
 * way. Where none of those keeps its limits, with two steps more, and at the last the one least past them, angles and
 * ground before seat and foot raise.
 *
 *   least Σ (mark − planned)²   of 2⁴ ways, else of 4⁴, else of 6⁴,   with no limit overstepped
 *
 * Shapes   one berth that says what was asked for → four marks. Without that each is rounded apart
 * Units    SI
 * Holds    a hang that the plan told
 * Error    the rest of the hang as planned; stretch of the straps as planned. Straps of 20 to 40 cm have ranges of 3 cm,
 *          which no step of 5 cm may meet: the limits of the whole hang go first
 * Source   house-convention; forward model hang-chain
 */
export function handMarks({ hang, request }: MarkedBerth): HandMarks {
  const known = told.get(hang);
  if (known !== undefined) return known;
  const planned = plannedMarks(hang);
  const model = request === undefined ? undefined : hungModel(request);
  const four = model?.ok === true ? together(model.value, hang) : apart(planned);
  const footGroundM = planned.headHeightM + planned.footOverHeadM - hang.foot.strapHeightM;
  const marks = { ...four, footHeightM: four.headHeightM + four.footOverHeadM - footGroundM };
  told.set(hang, marks);
  return marks;
}

export type MarkedBerth = Pick<PlannedBerth, "hang" | "request">;

/** Card, sheet and sentence ask for the same hang. */
const told = new WeakMap<PlannedBerth["hang"], HandMarks>();

const GRIDS = [
  [0, 1],
  [-1, 0, 1, 2],
  [-2, -1, 0, 1, 2, 3],
] as const;

function together(model: HungModel, hang: PlannedHang): FourMarks {
  let least = nothing(hang);
  for (const steps of GRIDS) {
    least = best(model, hang, steps, least);
    const keepsAll = least.pastHard + least.pastSoft === 0;
    if (keepsAll && (least.outOfOk === 0 || steps.length === 4)) break;
  }
  return least.marks;
}

interface Rounded {
  readonly marks: FourMarks;
  /** Past angles, reach, ground and what straps can be set to. */
  readonly pastHard: number;
  /** Past seat and foot raise. */
  readonly pastSoft: number;
  /** Figures outside the range in which each may be off alone. */
  readonly outOfOk: number;
  readonly awayM2: number;
}

function best(model: HungModel, hang: PlannedHang, steps: readonly number[], before: Rounded): Rounded {
  const planned = plannedMarks(hang);
  const of = (value: number): readonly number[] =>
    steps.map((step) => HAND_STEP_M * (Math.floor(value / HAND_STEP_M) + step));
  let least = before;
  for (const headHeightM of of(planned.headHeightM)) {
    for (const footOverHeadM of of(planned.footOverHeadM)) {
      for (const headStrapM of of(planned.headStrapM)) {
        for (const footStrapM of of(planned.footStrapM)) {
          const marks = { headHeightM, footOverHeadM, headStrapM, footStrapM };
          least = nearer(model, hang, marks, least);
        }
      }
    }
  }
  return least;
}

function isNearer(a: Rounded, b: Rounded): boolean {
  if (a.pastHard !== b.pastHard) return a.pastHard < b.pastHard;
  if (a.pastSoft !== b.pastSoft) return a.pastSoft < b.pastSoft;
  return a.outOfOk === b.outOfOk ? a.awayM2 < b.awayM2 : a.outOfOk < b.outOfOk;
}

/** The nearer of both; the hang is solved only where these marks could be it. */
function nearer(model: HungModel, hang: PlannedHang, marks: FourMarks, least: Rounded): Rounded {
  const measured = { marks, outOfOk: outOfOk(hang, marks), awayM2: awayM2(plannedMarks(hang), marks) };
  if (!isNearer({ ...measured, pastHard: 0, pastSoft: 0 }, least)) return least;
  const state = stateBy(model, hang, marks);
  if (state === undefined) return least;
  const { walls, hard, soft } = overLimits(state, model.request);
  const next = { ...measured, pastHard: sumOfSquares([...walls, ...hard]), pastSoft: sumOfSquares(soft) };
  return isNearer(next, least) ? next : least;
}

function nothing(hang: PlannedHang): Rounded {
  const marks = apart(plannedMarks(hang));
  return { marks, pastHard: Infinity, pastSoft: Infinity, outOfOk: Infinity, awayM2: Infinity };
}

function awayM2(planned: FourMarks, marks: FourMarks): number {
  return sumOfSquares([
    marks.headHeightM - planned.headHeightM,
    marks.footOverHeadM - planned.footOverHeadM,
    marks.headStrapM - planned.headStrapM,
    marks.footStrapM - planned.footStrapM,
  ]);
}

function outOfOk({ ok, foot, levelFootOverHeadM }: PlannedHang, marks: FourMarks): number {
  const levelM = foot.strapHeightM - levelFootOverHeadM;
  const figures = [
    [ok["head.strapHeightM"], marks.headHeightM],
    [ok["foot.strapHeightM"], marks.footOverHeadM + levelM],
    [ok["head.strapLengthM"], marks.headStrapM],
    [ok["foot.strapLengthM"], marks.footStrapM],
  ] as const;
  return figures.filter(([range, mark]) => range !== undefined && (mark < range.low || mark > range.high))
    .length;
}

function apart({ headHeightM, footOverHeadM, headStrapM, footStrapM }: FourMarks): FourMarks {
  const near = (value: number): number => HAND_STEP_M * Math.round(value / HAND_STEP_M);
  return {
    headHeightM: near(headHeightM),
    footOverHeadM: near(footOverHeadM),
    headStrapM: near(headStrapM),
    footStrapM: near(footStrapM),
  };
}
