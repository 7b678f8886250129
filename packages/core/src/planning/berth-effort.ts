import type { Camp } from "../plan/camp.ts";
import type { CampPlace } from "./camp-places-types.ts";
import { costTerms, UNITS_PER_M } from "./cost-terms.ts";

/**
 * How much each place asks of whoever lies there, whatever the weights of the cost say: the span off the ideal, uneven
 * ground, and the way to the meeting point in the dark.
 *
 *   effort = |span − ideal| + 5 · (rise along + rise across) + 0.02 · way
 *
 * Units    in metres of span off the ideal: ten in a hundred of slope, and 25 m of way, count as half a metre each
 * Holds    a measure that nobody knows counts as 0
 * Source   common-practice (handbook/layout.md: people)
 */
export function berthEffortM(
  places: readonly CampPlace[],
  camp: Pick<Camp, "rules" | "ground">,
): Float64Array {
  const { ground, rules } = camp;
  const weights = { span: 1, wind: 0, slope: 5, walk: 0.02, spread: 0, far: 0, wish: 0 };
  const terms = costTerms(rules.spanIdealM.value, { weights, ...(ground === undefined ? {} : { ground }) });
  return Float64Array.from(
    places,
    (place) => terms.reduce((sum, { weight, measure }) => sum + weight * measure(place), 0) / UNITS_PER_M,
  );
}
