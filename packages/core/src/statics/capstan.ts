import type { Basis } from "../outcome/basis.ts";
import { refuseAll, succeed, type Outcome } from "../outcome/outcome.ts";
import { between } from "./between.ts";

export interface CapstanInput {
  readonly pullN: number;
  /** Full turns in touch with the bark. */
  readonly turns: number;
  readonly friction: number;
}

export interface Capstan {
  /** Pull over what its tail must hold. */
  readonly ratio: number;
  readonly tailN: number;
  readonly basis: Basis;
}

/** Friction of fibre strap on bark: a broad band, smooth wet bark at the low end. Source: capstan, from memory. */
export const BARK_FRICTION_LOW = 0.2;
export const BARK_FRICTION_HIGH = 0.5;
/** Ordinary bark: the middle of that band, as a ratio of its ends. */
export const BARK_FRICTION_MIDDLE = Math.sqrt(BARK_FRICTION_LOW * BARK_FRICTION_HIGH);

/**
 * What the tail of a strap wrapped round a trunk must hold, so that friction holds the rest.
 *
 *   pull / tail = e^(μ · 2π · turns)
 *
 * Shapes   scalars in, scalars out
 * Units    pullN [N], turns and friction [1] → tailN [N]
 * Holds    pull ≥ 0, 0 to 10 turns, friction 0 to 2; anything else is refused by field name
 * Error    exact for a limp strap about to slip on a round trunk; friction on bark is known to a factor of two,
 *          and a ratio to its power of the turns
 * Source   capstan (handbook/statics.md)
 */
export function capstan({ pullN, turns, friction }: CapstanInput): Outcome<Capstan> {
  const failure = refuseAll([
    ...between("pullN", pullN, 0, 1e6),
    ...between("turns", turns, 0, 10),
    ...between("friction", friction, 0, 2),
  ]);
  if (failure !== undefined) return failure;
  const ratio = Math.exp(2 * Math.PI * friction * turns);
  return succeed({ ratio, tailN: pullN / ratio, basis: BASIS });
}

const BASIS: Basis = {
  rule: "capstan",
  source: "capstan",
  assumes: ["the strap is limp and about to slip", "the trunk is round and the friction even"],
};
