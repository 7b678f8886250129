import { degrees } from "../../quantity/angle.ts";
import type { HangInput, HangLimits } from "../../statics/hang-types.ts";
import { longestOwnedM } from "../../statics/strap-parts.ts";
import type { HangState, StrapState } from "./adjust-types.ts";

/** How far each limit of a hang is overstepped, over what counts as one tolerance; 0 where it is kept. */
export interface OverLimits {
  /** Shortest and longest strap, and webbing as long as there is: nobody can set what lies past these, so a state past them was misjudged. */
  readonly walls: readonly number[];
  /** Angles, reach and caps, room to the ground: an instruction may not lead past these. */
  readonly hard: readonly number[];
  /** Seat and foot raise: passed on the way where two instructions are needed. */
  readonly soft: readonly number[];
}

/** Past a limit each of these counts as one tolerance. */
const OVER_M = 0.02;
const OVER_ANGLE = degrees(1);

/** Instructions aim so far inside the limits of the angles. Source: house-convention. */
const INSIDE = degrees(1);

/** Kept within this: bounds are inclusive, and plans come to rest on them [m or rad]. */
const SLACK = 1e-7;

/**
 * Every limit of the hang against one state, always in the same order. With a plan, angles count as over already up to
 * one degree inside their limits, as far as the plan itself keeps that distance: so instructions aim inside, not at the
 * edge.
 */
export function overLimits(state: HangState, by: LimitedBy, plan?: HangState): OverLimits {
  const { seatHeightM, lowPointM, footRaiseM } = state;
  const { limits, suspension } = by;
  const ofStraps = (["head", "foot"] as const).flatMap((end) => overStrap(state[end], limits, plan?.[end]));
  return {
    walls: (["head", "foot"] as const).flatMap((end) => {
      const longestM = Math.min(suspension.maxM ?? Infinity, longestOwnedM(by, by[end]));
      return [
        over(suspension.minM - state[end].strapLengthM, OVER_M),
        over(state[end].strapLengthM - longestM, OVER_M),
      ];
    }),
    hard: [
      ...ofStraps,
      over(limits.lowPointMinM - lowPointM, OVER_M),
      over(lowPointM - (limits.lowPointMaxM ?? Infinity), OVER_M),
    ],
    soft: [
      over(limits.seatHeightMinM - seatHeightM, OVER_M),
      over(seatHeightM - limits.seatHeightMaxM, OVER_M),
      over(limits.footRaiseMinM - footRaiseM, OVER_M),
      over(footRaiseM - limits.footRaiseMaxM, OVER_M),
    ],
  };
}

function overStrap({ angle, strapHeightM }: StrapState, limits: HangLimits, plan?: StrapState): number[] {
  const { angleMin, angleMax, reachM = Infinity, strapHeightMaxM = Infinity } = limits;
  const inside = (roomOfPlan: number): number => Math.max(0, Math.min(INSIDE, roomOfPlan));
  const [fromMin, toMax] = plan === undefined ? [0, 0] : [plan.angle - angleMin, angleMax - plan.angle];
  return [
    over(angle - angleMax + inside(toMax), OVER_ANGLE),
    over(angleMin - angle + inside(fromMin), OVER_ANGLE),
    over(strapHeightM - Math.min(reachM, strapHeightMaxM), OVER_M),
  ];
}

export type LimitedBy = Pick<HangInput, "limits" | "suspension" | "head" | "foot">;

/** Whether a state keeps every limit that people can break. */
export function keepsAll({ hard, soft }: OverLimits): boolean {
  return [...hard, ...soft].every((value) => value === 0);
}

/**
 * Whether a change leads past no wall and no hard limit that is kept before it. Limits broken already may be traded
 * against one another, as long as they come nearer on the whole.
 */
export function leadsNotPast(before: OverLimits, after: OverLimits): boolean {
  return (["walls", "hard"] as const).every((kind) => {
    const isKept = after[kind].every((value, at) => value === 0 || (before[kind][at] ?? 0) > 0);
    return isKept && sumOfSquares(after[kind]) <= sumOfSquares(before[kind]);
  });
}

export function sumOfSquares(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value * value, 0);
}

function over(excess: number, tolerance: number): number {
  return excess > SLACK ? excess / tolerance : 0;
}
