import type { Basis } from "../outcome/basis.ts";
import { refuseAll, succeed, type Outcome } from "../outcome/outcome.ts";
import { skinM2, type BodySize } from "./du-bois-area.ts";
import { KCAL_PER_DAY_W } from "./heat-units.ts";
import { within } from "./within.ts";

export interface Person extends BodySize {
  readonly ageYears: number;
  readonly sex: "f" | "m";
}

export interface RestingHeat {
  readonly heatW: number;
  /** Per area of skin. */
  readonly heatWM2: number;
  readonly basis: Basis;
}

/**
 * Heat that a person at rest makes.
 *
 *   P = 10 m + 6.25 · 100 h − 5 age + 5 (men) or − 161 (women)   in kcal a day
 *
 * Shapes   scalars in, scalars out
 * Units    massKg [kg], statureM [m], ageYears [a] → heatW [W], heatWM2 [W/m²]
 * Holds    20 to 300 kg, 1 to 2.5 m, 16 to 110 years, those under 19 as 19: it was fitted to 19 to 78; anything else is
 *          refused by field name. Children burn more than this and cool faster; no figure of it is used for them
 * Error    one person in three is more than 10 % off
 * Source   mifflin-1990 (handbook/heat.md)
 */
export function restingHeat(person: Person): Outcome<RestingHeat> {
  const failure = refuseAll(personRefusals(person));
  if (failure !== undefined) return failure;
  const heatW = KCAL_PER_DAY_W * kcalPerDay(person);
  return succeed({ heatW, heatWM2: heatW / skinM2(person), basis: BASIS });
}

/** Youngest for whom a balance of heat is valid. Source: iso-23537, which leaves children out. */
export const GROWN_YEARS = 16;

export function personRefusals({ massKg, statureM, ageYears }: Person) {
  return [
    ...within("massKg", massKg, 20, 300),
    ...within("statureM", statureM, 1, 2.5),
    ...within("ageYears", ageYears, GROWN_YEARS, 110),
  ];
}

/** The same per area of skin, of a person known to be in range [W/m²]. */
export function restingWM2(person: Person): number {
  return (KCAL_PER_DAY_W * kcalPerDay(person)) / skinM2(person);
}

/** The equation was fitted to people of 19 to 78; whoever is younger is reckoned as 19. Source: mifflin-1990. */
const FITTED_FROM_YEARS = 19;

function kcalPerDay({ massKg, statureM, ageYears, sex }: Person): number {
  const years = Math.max(ageYears, FITTED_FROM_YEARS);
  return 10 * massKg + 625 * statureM - 5 * years + (sex === "m" ? 5 : -161);
}

const BASIS: Basis = {
  rule: "resting-heat",
  source: "mifflin-1990",
  assumes: ["a healthy grown person, fed, at rest"],
};
