import type { CampPlace } from "./camp-places-types.ts";

/** One term of what a place costs. Weights are in whole units for each unit of the measure. */
export interface CostTerm {
  readonly name: string;
  readonly weight: number;
  readonly measure: (place: CampPlace) => number;
}

/** Cost units to the metre of span off the ideal: one unit is a tenth of a millimetre. */
export const UNITS_PER_M = 10_000;

/** The terms of the cost, all visible. Source: layout-search. */
export function costTerms(spanIdealM: number): readonly CostTerm[] {
  return [{ name: "span", weight: UNITS_PER_M, measure: ({ spanM }) => Math.abs(spanM - spanIdealM) }];
}

/** What each place costs, in whole units so that a proof is exact. */
export function placeCosts(places: readonly CampPlace[], terms: readonly CostTerm[]): Float64Array {
  return Float64Array.from(places, (place) =>
    terms.reduce((sum, { weight, measure }) => sum + Math.round(weight * measure(place)), 0),
  );
}
