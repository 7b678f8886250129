import type { End, PitchedTarp } from "./tarp-geometry.ts";
import type { PitchSite } from "./pitch-trial.ts";

export interface DripPlace {
  /** From the gather along the suspension [m]. */
  readonly fromGatherM: number;
  /** From there out, level, to the edge of the cloth above; negative: outside [m]. */
  readonly insideM: number;
}

/**
 * Where a string on the suspension breaks the run of water: a hand inside the cloth's edge, at least a hand from the gather.
 *
 * Shapes   tarp, berth, end → a length along the suspension
 * Units    metres
 * Holds    a straight suspension from gather to strap
 * Source   tarp-geometry; a hand's breadth is common-practice (handbook/shelter.md)
 */
export function dripPlace(
  { ridgeHead, ridgeFoot }: PitchedTarp,
  { berth, strapRise }: Pick<PitchSite, "berth" | "strapRise">,
  end: End,
): DripPlace {
  const { headGather, footGather } = berth;
  const beyondM = end === "head" ? headGather[0] - ridgeHead[0] : ridgeFoot[0] - footGather[0];
  const outM = Math.max(HAND_M, beyondM - INSIDE_M);
  return { fromGatherM: outM * Math.hypot(1, strapRise[end]), insideM: beyondM - outM };
}

const HAND_M = 0.05;
const INSIDE_M = 0.1;
