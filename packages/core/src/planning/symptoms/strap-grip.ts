import { capstan } from "../../statics/capstan.ts";
import { WRAPS } from "../../statics/hang-constants.ts";
import type { HangInput } from "../../statics/hang-types.ts";

/**
 * The least grip of a strap on a trunk: how much of the inward pull friction can hold against slipping down, where the
 * strap was drawn tight by that pull alone.
 *
 *   grip = μ ∫ T dφ / H = 1 − e^(−μφ),   holds where grip ≥ down / inward = tan θ
 *
 * φ is the arc from where the strap is pulled to its calm end: whole turns of tied webbing; the one turn of a tree strap
 * through its own eye; half of the half turn of a tree strap whose two eyes are joined, and half of each further turn.
 *
 * Units    φ in turns; a ratio out
 * Holds    turns 0 to 10, friction 0 to 2
 * Error    a lower bound: a strap drawn tight by hand before the load presses harder. Friction on bark is known to a
 *          factor of two
 * Source   capstan; tan θ derived in handbook/planning.md
 */
export function strapGrip(
  { type, wraps = WRAPS, throughOwnEye = false }: StrapUse,
  turnsMore: number,
  friction: number,
): number {
  const turns =
    type === "tied-webbing" ? wraps + turnsMore : throughOwnEye ? 1 + turnsMore : (0.5 + turnsMore) / 2;
  const held = capstan({ pullN: 1, turns, friction });
  return held.ok ? 1 - held.value.tailN : NaN;
}

/** How a strap goes round a trunk. */
export type StrapUse = Pick<HangInput["suspension"], "type" | "wraps" | "throughOwnEye">;
