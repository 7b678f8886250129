import { COST_WEIGHTS, type CostWeights } from "../plan/cost-weights.ts";
import type { PlanCostTerm } from "../plan/plan.ts";
import type { CampPlace } from "./camp-places-types.ts";
import { UNITS_PER_M, type CostTerm } from "./cost-terms.ts";
import type { Distance, PeopleDistances } from "./wish-measures.ts";

/**
 * The cost of a plan term by term, counted again from the chosen places and from who lies where.
 *
 * Units    measures as the term says; costs in metres of span off the ideal, in whole units of 0.1 mm
 * Source   layout-search (handbook/layout.md: cost)
 */
export function toldCostTerms(
  places: readonly CampPlace[],
  terms: readonly CostTerm[],
  people: PeopleDistances,
  weights: CostWeights = COST_WEIGHTS,
): PlanCostTerm[] {
  const ofPlaces = terms.map(({ name, weight, measure }) => {
    const measures = places.map(measure);
    const units = measures.reduce((sum, value) => sum + Math.round(weight * value), 0);
    return { name, weight: weight / UNITS_PER_M, measure: sumOf(measures), cost: units / UNITS_PER_M };
  });
  return [...ofPlaces, ...peopleTerms(people, weights)];
}

function peopleTerms(
  { groups, near, apart, zones, ages }: PeopleDistances,
  weights: CostWeights,
): PlanCostTerm[] {
  const members = groups.flatMap((group) => group.members);
  const spreadUnits = members.map(({ apartM }) => Math.round(weights.spread * UNITS_PER_M * apartM));
  const wishes = [...near, ...apart, ...zones, ...ages];
  const far = countedTerm("far", weights.far, members);
  const wish = countedTerm("wish", weights.wish, wishes);
  return [
    ...(weights.spread > 0
      ? [
          {
            name: "spread" as const,
            weight: weights.spread,
            measure: sumOf(members.map(({ apartM }) => apartM)),
            cost: sumOf(spreadUnits) / UNITS_PER_M,
          },
        ]
      : []),
    ...(members.length > 0 ? [far] : []),
    ...(wishes.length > 0 ? [wish] : []),
  ];
}

function countedTerm(name: "far" | "wish", weight: number, distances: readonly Distance[]): PlanCostTerm {
  const measure = distances.filter(({ met }) => !met).length;
  return { name, weight, measure, cost: (measure * Math.round(weight * UNITS_PER_M)) / UNITS_PER_M };
}

function sumOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}
