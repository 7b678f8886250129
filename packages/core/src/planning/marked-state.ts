import type { PlannedBerth } from "../plan/plan.ts";
import type { HangState } from "./adjust/adjust-types.ts";
import { AS_PLANNED, plus, type HungModel } from "./adjust/hung-model.ts";

/** What hands set on a hang [m]. */
export interface FourMarks {
  readonly headHeightM: number;
  /** The foot strap above the level through the head strap; below it where negative. */
  readonly footOverHeadM: number;
  /** Bark to hammock end. */
  readonly headStrapM: number;
  readonly footStrapM: number;
}

/** The same figures as the plan has them, to no step. */
export function plannedMarks(hang: PlannedHang): FourMarks {
  return {
    headHeightM: hang.head.strapHeightM,
    footOverHeadM: hang.levelFootOverHeadM,
    headStrapM: hang.head.strapLengthM,
    footStrapM: hang.foot.strapLengthM,
  };
}

export type PlannedHang = PlannedBerth["hang"];

/** How the hang comes to hang when it is set by these figures; nothing where a strap would have no length. */
export function stateBy(model: HungModel, hang: PlannedHang, marks: FourMarks): HangState | undefined {
  if (Math.min(marks.headStrapM, marks.footStrapM) <= 0) return undefined;
  const headHeightM = marks.headHeightM - hang.head.strapHeightM;
  return model.come(
    plus(AS_PLANNED, {
      headHeightM,
      footHeightM: headHeightM + marks.footOverHeadM - hang.levelFootOverHeadM,
      headStrapM: marks.headStrapM - hang.head.strapLengthM,
      footStrapM: marks.footStrapM - hang.foot.strapLengthM,
    }),
  ).state;
}
