import type { Ground, Night } from "../plan/camp.ts";
import { COST_WEIGHTS, type CostWeights } from "../plan/cost-weights.ts";
import type { CampPlace } from "./camp-places-types.ts";

/** One term of what a place costs. Weights are in whole units for each unit of the measure. */
export interface CostTerm {
  readonly name: PlaceTerm;
  readonly weight: number;
  readonly measure: (place: CampPlace) => number;
}

/** Terms that a place has by itself, whoever lies there. */
export type PlaceTerm = "span" | "wind" | "slope" | "walk";

/** Cost units to the metre of span off the ideal: one unit is a tenth of a millimetre. */
export const UNITS_PER_M = 10_000;

/** What the terms beside the span look at. */
export interface CostContext {
  readonly weights?: CostWeights;
  readonly night?: Pick<Night, "windFromRad">;
  readonly ground?: Pick<Ground, "slope" | "meetingPoint">;
}

/**
 * The terms of the cost that have a weight, all visible. A place at which a measure is not known counts as 0 there.
 *
 *   span   metres off the ideal
 *   wind   how far the berth lies along the wind: 0 across it, 1 along it
 *   slope  rise for each metre, along the berth and across it, added
 *   walk   metres from the meeting point
 *
 * Source   layout-search (handbook/layout.md: cost)
 */
export function costTerms(spanIdealM: number, context: CostContext = {}): readonly CostTerm[] {
  const weights = context.weights ?? COST_WEIGHTS;
  const measures: Readonly<Record<PlaceTerm, CostTerm["measure"]>> = {
    span: ({ spanM }) => Math.abs(spanM - spanIdealM),
    wind: (place) => alongWind(place, context.night?.windFromRad),
    slope: (place) => slopeOf(place, context.ground?.slope),
    walk: (place) => walkM(place, context.ground?.meetingPoint),
  };
  return PLACE_TERMS.flatMap((name) =>
    weights[name] > 0 ? [{ name, weight: weights[name] * UNITS_PER_M, measure: measures[name] }] : [],
  );
}

const PLACE_TERMS: readonly PlaceTerm[] = ["span", "wind", "slope", "walk"];

/** What each place costs, in whole units so that a proof is exact. */
export function placeCosts(places: readonly CampPlace[], terms: readonly CostTerm[]): Float64Array {
  return Float64Array.from(places, (place) =>
    terms.reduce((sum, { weight, measure }) => sum + Math.round(weight * measure(place)), 0),
  );
}

function alongWind({ bearingRad }: CampPlace, windFromRad: number | undefined): number {
  if (bearingRad === undefined || windFromRad === undefined) return 0;
  return Math.abs(rounded(Math.cos(bearingRad - windFromRad)));
}

/** Along the berth by the ground at its trees, across it by the slope of the site. */
function slopeOf({ fallM, spanM, bearingRad }: CampPlace, slope: Ground["slope"]): number {
  const along = spanM > 0 ? Math.abs(fallM ?? 0) / spanM : 0;
  if (slope === undefined || bearingRad === undefined) return along;
  return along + slope.riseRatio * Math.abs(rounded(Math.sin(bearingRad - slope.downhillRad)));
}

function walkM({ middle }: CampPlace, hub: Ground["meetingPoint"]): number {
  if (middle === undefined || hub?.at === undefined) return 0;
  const [east, north] = [middle[0] - hub.at[0], middle[1] - hub.at[1]];
  return Math.sqrt(east * east + north * north);
}

/** A sine's value that decides is rounded first, the same on every machine. */
function rounded(value: number): number {
  return Math.round(value * PER_TENTH_MICRON) / PER_TENTH_MICRON;
}

const PER_TENTH_MICRON = 1e7;
