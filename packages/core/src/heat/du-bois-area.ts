import { refuseAll, succeed, type Outcome } from "../outcome/outcome.ts";
import { within } from "./within.ts";
import type { Basis } from "../outcome/basis.ts";

export interface BodySize {
  readonly massKg: number;
  readonly statureM: number;
}

export interface DuBoisArea {
  readonly areaM2: number;
  readonly basis: Basis;
}

/**
 * Skin of a body, to which all heat flows of a person are referred.
 *
 *   A = 0.007184 · m^0.425 · (100 h)^0.725
 *
 * Shapes   scalars in, scalar out
 * Units    massKg [kg], statureM [m] → areaM2 [m²]
 * Holds    20 to 300 kg, 1 to 2.5 m; anything else is refused by field name
 * Error    a few per cent of a measured skin; less than that matters nowhere here
 * Source   du-bois-1916 (handbook/heat.md)
 */
export function duBoisArea(body: BodySize): Outcome<DuBoisArea> {
  const failure = refuseAll([
    ...within("massKg", body.massKg, 20, 300),
    ...within("statureM", body.statureM, 1, 2.5),
  ]);
  return failure ?? succeed({ areaM2: skinM2(body), basis: BASIS });
}

/** The same of a body known to be in range. */
export function skinM2({ massKg, statureM }: BodySize): number {
  return 0.007184 * massKg ** 0.425 * (100 * statureM) ** 0.725;
}

const BASIS: Basis = {
  rule: "du-bois-area",
  source: "du-bois-1916",
  assumes: ["a grown body of usual build"],
};
