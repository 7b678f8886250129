import { refuse, succeed, type Outcome } from "@nightspan/core";

/** Pound [kg], exact by the agreement of 1959; a stone is 14. */
const POUND_KG = 0.45359237;

const FACTORS: Readonly<Record<string, number>> = {
  "": 1,
  kg: 1,
  lb: POUND_KG,
  lbs: POUND_KG,
  st: 14 * POUND_KG,
};
const MASS_TEXT = /^(\d+(?:\.\d+)?)\s*(kg|lbs?|st)?$/;

/** A mass as a person writes it, "80", "80 kg", "175lb", "12.5st" [kg]. */
export function parseMass(field: string, written: string): Outcome<number> {
  const match = MASS_TEXT.exec(written.trim().toLowerCase());
  const factor = match === null ? undefined : FACTORS[match[2] ?? ""];
  if (match === null || factor === undefined)
    return refuse(field, written, "a mass such as 80, 80kg or 175lb");
  return succeed(Number(match[1]) * factor);
}

/** Pounds, to the nearest one: "176 lb". */
export function formatPounds(massKg: number): string {
  return `${Math.round(massKg / POUND_KG)}\u00a0lb`;
}
