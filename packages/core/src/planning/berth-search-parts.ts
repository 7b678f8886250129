import { orderedComponent, searchComponents } from "./berth-search-components.ts";
import { cheapestAtPlaces } from "./berth-search-deal.ts";
import { exactFrontier, type Frontier } from "./berth-search-frontier.ts";
import { leastSplit } from "./berth-search-knapsack.ts";
import type { SearchModel } from "./berth-search-model.ts";

/** The best that any people could do, were everybody of the class that suits each place best. */
export interface PartsOptimum {
  readonly placed: number;
  readonly cost: number;
  readonly places: readonly number[];
  /** Least cost of so many berths, at most `placed`. */
  readonly leastCost: (count: number) => number;
}

/**
 * Solves the wood part by part: exact frontiers of its components, joined by sharing the people out.
 *
 * With one class this is the optimum itself; with several it is a bound, and the optimum too wherever
 * its places can be dealt out to the classes at that cost.
 *
 * Holds    returns nothing once the budget of states is used up: largest components first, so that a
 *          wood too dense for it is given up early
 * Source   layout-search
 */
export function searchParts(model: SearchModel, statesAPlace: number): PartsOptimum | undefined {
  const cost = cheapestAtPlaces(model);
  const budget = { left: Math.min(MOST_STATES, statesAPlace * model.places) };
  const frontiers: Frontier[] = [];
  const components = searchComponents(model, LARGEST_PART);
  if (components === undefined) return undefined;
  const { members, links } = components;
  for (const places of members) {
    const frontier = exactFrontier(model, orderedComponent(places, links), cost, model.asked, budget);
    if (frontier === undefined) return undefined;
    frontiers.push(frontier);
  }
  const costs = frontiers.map((frontier) => frontier.cost);
  const most = costs.reduce((sum, list) => sum + list.length - 1, 0);
  const placed = Math.min(model.asked, most);
  const split = leastSplit(costs, placed);
  return {
    placed,
    cost: split.cost,
    places: placesOf(frontiers, split.counts),
    leastCost: (count) => leastSplit(costs, count).cost,
  };
}

/** States × counts in all, however many places there are. */
const MOST_STATES = 5_000_000;

/** A part of more places than this is not tried: it would need too many states. */
const LARGEST_PART = 500;

function placesOf(frontiers: readonly Frontier[], counts: Int32Array): number[] {
  const places: number[] = [];
  for (const [part, { chain }] of frontiers.entries()) {
    for (let link = chain[counts[part] ?? 0]; link !== undefined; link = link.rest) places.push(link.place);
  }
  return places.sort((a, b) => a - b);
}
