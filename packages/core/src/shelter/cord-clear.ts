import { STRAP_CLEAR_M } from "./best-pitch.ts";
import { groundZM } from "./ground-plane.ts";
import type { PitchSite, PitchTrial } from "./pitch-trial.ts";
import type { End } from "./tarp-geometry.ts";

/**
 * The tarp line over the suspension where both meet the trunk, upright.
 *
 * Both lie in the upright plane through both trees and are straight, so between the cloth's end and the tree the least gap
 * is at one of the two; the cloth's end is `strapClearM`.
 *
 * Shapes   a pitch, its site → a signed gap at each tree
 * Units    metres; negative: the strap is above the tarp line
 * Holds    a straight suspension and a straight ridge: the cord's sag of a few centimetres is left out
 * Source   tarp-geometry (handbook/shelter.md)
 */
export function cordClearM(
  { pitch }: Pick<PitchTrial, "pitch">,
  { berth, strapRise }: Pick<PitchSite, "berth" | "strapRise">,
): Readonly<Record<End, number>> {
  const { headGather, footGather, spanM, ground } = berth;
  const headStrapM = headGather[2] + headGather[0] * strapRise.head;
  const footStrapM = footGather[2] + (spanM - footGather[0]) * strapRise.foot;
  return {
    head: pitch.headTieM - headStrapM,
    foot: groundZM(ground, spanM, 0) + pitch.footTieM - footStrapM,
  };
}

/** True where the cloth clears the strap, and the cord on its way to the tree then comes too near it or crosses it. */
export function cordCrosses(clothClearM: number, treeClearM: number): boolean {
  return clothClearM >= STRAP_CLEAR_M && treeClearM < STRAP_CLEAR_M;
}
