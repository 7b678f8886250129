import type { Basis } from "../outcome/basis.ts";
import { refuseAll, succeed, type Outcome } from "../outcome/outcome.ts";
import { between } from "./between.ts";

export interface DropLoadInput {
  readonly weightN: number;
  /** Free fall before anything takes load. */
  readonly dropM: number;
  /** Of all that stretches, taken together, in the way of the fall. */
  readonly stiffnessNPerM: number;
}

export interface DropLoad {
  readonly peakN: number;
  /** Peak over weight; 2 where a load is let go without falling. */
  readonly factor: number;
  readonly basis: Basis;
}

/**
 * Peak over still weight when somebody sits down hard: the highest force on a seat, 20 people on a chair. A figure of
 * its own beside the energy of a fall, which starts at 2 for letting go without one: never multiply the two.
 * Source: ergonomics-2016 (abstract); its spread is not printed.
 */
export const HARD_SITTING_FACTOR = 2.13;

/**
 * Peak pull when a weight drops onto something elastic: all energy of the fall goes into stretch.
 *
 *   F = W (1 + √(1 + 2 k h / W))
 *
 * Shapes   scalars in, scalars out
 * Units    weightN [N], dropM [m], stiffnessNPerM [N/m] → peakN [N]
 * Holds    weight above 0, drop 0 to 10 m, stiffness above 0; anything else is refused by field name
 * Error    an upper bound: knots, cloth and flesh take up energy; measured peaks were up to six times lower
 * Source   drop-energy (handbook/statics.md)
 */
export function dropLoad({ weightN, dropM, stiffnessNPerM }: DropLoadInput): Outcome<DropLoad> {
  const failure = refuseAll([
    ...between("weightN", weightN, 1e-3, 1e6),
    ...between("dropM", dropM, 0, 10),
    ...between("stiffnessNPerM", stiffnessNPerM, 1e-3, 1e12),
  ]);
  if (failure !== undefined) return failure;
  const factor = 1 + Math.sqrt(1 + (2 * stiffnessNPerM * dropM) / weightN);
  return succeed({ peakN: weightN * factor, factor, basis: BASIS });
}

const BASIS: Basis = {
  rule: "drop-load",
  source: "drop-energy",
  assumes: [
    "what stretches does so in proportion and gives all of it back",
    "nothing else takes up the fall",
  ],
};
