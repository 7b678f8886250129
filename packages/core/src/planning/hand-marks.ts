import type { PlannedBerth } from "../plan/plan.ts";
import { hungModel, plus, AS_PLANNED, type HungModel } from "./adjust/hung-model.ts";
import { overLimits, sumOfSquares } from "./adjust/over-limits.ts";

/** The figures that people set a hang by, as they are told. */
export interface HandMarks extends FourMarks {
  /** The foot strap above its own tree's ground, as it then comes [m]. */
  readonly footHeightM: number;
}

/** Whole steps of 5 cm [m]. */
interface FourMarks {
  readonly headHeightM: number;
  /** The foot strap above the level through the head strap; below it where negative. */
  readonly footOverHeadM: number;
  /** Bark to hammock end. */
  readonly headStrapM: number;
  readonly footStrapM: number;
}

/** To such steps people set a strap. Source: house-convention. */
const HAND_STEP_M = 0.05;

/**
 * The marks of a planned berth, rounded together: the nearest of all ways of rounding up and down by which the hang
 * keeps its limits; where none does, with a step more either way; and where none of those does, the one least past them,
 * angles and ground before seat and foot raise.
 *
 *   least Σ (mark − planned)²   of 2⁴ ways, else of 4⁴,   with no limit overstepped
 *
 * Shapes   one berth that says what was asked for → four marks. Without that each is rounded apart
 * Units    SI
 * Holds    a hang that the plan told
 * Error    the rest of the hang as planned; stretch of the straps as planned
 * Source   house-convention; forward model hang-chain
 */
export function handMarks({ hang, request }: MarkedBerth): HandMarks {
  const known = told.get(hang);
  if (known !== undefined) return known;
  const planned: FourMarks = {
    headHeightM: hang.head.strapHeightM,
    footOverHeadM: hang.levelFootOverHeadM,
    headStrapM: hang.head.strapLengthM,
    footStrapM: hang.foot.strapLengthM,
  };
  const model = request === undefined ? undefined : hungModel(request);
  const four = model?.ok === true ? together(model.value, planned) : apart(planned);
  const footGroundM = planned.headHeightM + planned.footOverHeadM - hang.foot.strapHeightM;
  const marks = { ...four, footHeightM: four.headHeightM + four.footOverHeadM - footGroundM };
  told.set(hang, marks);
  return marks;
}

export type MarkedBerth = Pick<PlannedBerth, "hang" | "request">;

/** Card, sheet and sentence ask for the same hang. */
const told = new WeakMap<PlannedBerth["hang"], HandMarks>();

function together(model: HungModel, planned: FourMarks): FourMarks {
  const near = best(model, planned, [0, 1]);
  if (near.pastHard + near.pastSoft === 0) return near.marks;
  const far = best(model, planned, [-1, 0, 1, 2]);
  return isNearer(far, near) ? far.marks : near.marks;
}

interface Rounded {
  readonly marks: FourMarks;
  /** Past angles, reach, ground and what straps can be set to. */
  readonly pastHard: number;
  /** Past seat and foot raise. */
  readonly pastSoft: number;
  readonly awayM2: number;
}

function best(model: HungModel, planned: FourMarks, steps: readonly number[]): Rounded {
  const of = (value: number): readonly number[] =>
    steps.map((step) => HAND_STEP_M * (Math.floor(value / HAND_STEP_M) + step));
  let least: Rounded = { marks: apart(planned), pastHard: Infinity, pastSoft: Infinity, awayM2: Infinity };
  for (const headHeightM of of(planned.headHeightM)) {
    for (const footOverHeadM of of(planned.footOverHeadM)) {
      for (const headStrapM of of(planned.headStrapM)) {
        for (const footStrapM of of(planned.footStrapM)) {
          const next = rounded(model, planned, { headHeightM, footOverHeadM, headStrapM, footStrapM });
          if (isNearer(next, least)) least = next;
        }
      }
    }
  }
  return least;
}

function isNearer(a: Rounded, b: Rounded): boolean {
  if (a.pastHard !== b.pastHard) return a.pastHard < b.pastHard;
  return a.pastSoft === b.pastSoft ? a.awayM2 < b.awayM2 : a.pastSoft < b.pastSoft;
}

function rounded(model: HungModel, planned: FourMarks, marks: FourMarks): Rounded {
  const off = {
    headHeightM: marks.headHeightM - planned.headHeightM,
    footOverHeadM: marks.footOverHeadM - planned.footOverHeadM,
    headStrapM: marks.headStrapM - planned.headStrapM,
    footStrapM: marks.footStrapM - planned.footStrapM,
  };
  const awayM2 = sumOfSquares(Object.values(off));
  if (Math.min(marks.headStrapM, marks.footStrapM) <= 0) {
    return { marks, pastHard: Infinity, pastSoft: Infinity, awayM2 };
  }
  const { headHeightM, footOverHeadM, headStrapM, footStrapM } = off;
  const footHeightM = headHeightM + footOverHeadM;
  const { state } = model.come(plus(AS_PLANNED, { headHeightM, footHeightM, headStrapM, footStrapM }));
  const { walls, hard, soft } = overLimits(state, model.request);
  return { marks, pastHard: sumOfSquares([...walls, ...hard]), pastSoft: sumOfSquares(soft), awayM2 };
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
