import type { PlanCostTerm } from "../plan/plan.ts";
import type { ChosenBerths } from "./choose-berths.ts";

/** How a layout was found, and whether its lower bound leaves out what people wish of each other, where a gap is left. */
export function layoutMethod(
  { search, leastUnits }: ChosenBerths,
  terms: readonly PlanCostTerm[],
  hasGap: boolean,
): string {
  if (leastUnits !== undefined) return `${search.method}, every way tried`;
  const hasWishes = terms.some(({ name }) => PEOPLE_TERMS.has(name));
  return hasGap && hasWishes ? `${search.method}, bound without wishes` : search.method;
}

const PEOPLE_TERMS: ReadonlySet<string> = new Set(["spread", "far", "wish"]);
