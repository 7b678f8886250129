import type { Basis } from "../outcome/basis.ts";
import { refuseAll, succeed, type Outcome, type Refusal } from "../outcome/outcome.ts";
import { between } from "./between.ts";
import { findWood, type Wood } from "./wood-strength.ts";

export interface TrunkInput {
  /** Scientific or English name. */
  readonly species: string;
  readonly dbhM: number;
  /** Level, sideways, at the strap. */
  readonly pullN: number;
  /** Strap above the ground. */
  readonly heightM: number;
  readonly strapWidthM: number;
}

export interface Trunk {
  readonly bendingPa: number;
  /** Mean strength of clear green wood of the species. */
  readonly strengthPa: number;
  readonly strengthSeen: Wood["seen"];
  readonly useRatio: number;
  /** Mean pressure of the strap on the bark; and at the running side of a strap through its own eye. */
  readonly barkPa: number;
  readonly barkPeakPa: number;
  readonly basis: Basis;
}

/**
 * What a hammock's pull does to a trunk: bending at the ground, and pressure on the bark.
 *
 *   σ = 32 F h / (π d³),   p = F / (d w),   at a strap through its own eye 2 p
 *
 * Shapes   scalars in, scalars out
 * Units    dbhM, heightM, strapWidthM [m], pullN [N] → pascals and a ratio
 * Holds    dbh 1 cm to 5 m, height to 10 m, strap 1 mm to 1 m wide, a listed species; anything else is
 *          refused by field name. A solid round stem
 * Error    strength varies by about 16 % (one standard deviation) between clear pieces of one species. Roots,
 *          decay, cracks and lean are not known to it: a large ratio speaks against a tree, a small one says
 *          nothing for it
 * Source   wood-handbook, lavers-1983; beam theory in handbook/statics.md
 */
export function trunk(input: TrunkInput): Outcome<Trunk> {
  const refusals = fieldRefusals(input);
  const wood = findWood(input.species);
  if (wood === undefined) return { ok: false, refusals: [unlisted(input.species), ...refusals] };
  const failure = refuseAll(refusals);
  if (failure !== undefined) return failure;
  const { dbhM, pullN, heightM, strapWidthM } = input;
  const bendingPa = (32 * pullN * heightM) / (Math.PI * dbhM ** 3);
  const barkPa = pullN / (dbhM * strapWidthM);
  const { strengthPa, seen: strengthSeen } = wood;
  const useRatio = bendingPa / strengthPa;
  return succeed({
    bendingPa,
    strengthPa,
    strengthSeen,
    useRatio,
    barkPa,
    barkPeakPa: 2 * barkPa,
    basis: BASIS,
  });
}

function unlisted(species: string): Refusal {
  return { field: "species", got: species, need: "a listed species, by scientific or English name" };
}

function fieldRefusals({ dbhM, pullN, heightM, strapWidthM }: TrunkInput): readonly Refusal[] {
  return [
    ...between("dbhM", dbhM, 0.01, 5),
    ...between("pullN", pullN, 0, 1e6),
    ...between("heightM", heightM, 0, 10),
    ...between("strapWidthM", strapWidthM, 0.001, 1),
  ];
}

const BASIS: Basis = {
  rule: "trunk",
  source: "wood-handbook",
  assumes: [
    "a solid, round, upright stem of clear wood",
    "all the pull acts level, at the strap",
    "roots, decay, cracks and lean are not known",
  ],
};
