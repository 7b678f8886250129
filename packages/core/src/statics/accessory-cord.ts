import type { Basis } from "../outcome/basis.ts";
import { refuseAll, succeed, type Outcome } from "../outcome/outcome.ts";
import { between } from "./between.ts";

export interface AccessoryCordInput {
  readonly diameterM: number;
}

export interface AccessoryCord {
  /** What the cord must bear at least before it breaks, new, dry, unknotted, on a round bar. */
  readonly breakingN: number;
  readonly basis: Basis;
}

/** Least breaking strength over the diameter squared [N/m²]. Source: en-564. */
const STRENGTH_N_PER_M2 = 0.2e9;

/**
 * Least breaking strength of accessory cord of the mountaineering standard, by its nominal diameter.
 *
 *   F = 0.20 kN/mm² · d²
 *
 * Shapes   scalars in, scalars out
 * Units    diameterM [m] → breakingN [N]
 * Holds    4 to 8 mm, the diameters of the standard; anything else is refused by field name
 * Error    exact as the standard's least; a knot takes a third to a half of it, wear and wet take more
 * Source   en-564 (handbook/statics.md)
 */
export function accessoryCord({ diameterM }: AccessoryCordInput): Outcome<AccessoryCord> {
  const failure = refuseAll(between("diameterM", diameterM, 0.004, 0.008));
  if (failure !== undefined) return failure;
  return succeed({ breakingN: STRENGTH_N_PER_M2 * diameterM ** 2, basis: BASIS });
}

const BASIS: Basis = {
  rule: "accessory-cord",
  source: "en-564",
  assumes: ["the cord keeps to the standard", "it is new, dry and without a knot"],
};
