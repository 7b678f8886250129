import { exclusions } from "./berth-search-cliques.ts";
import { cheapestAtPlaces } from "./berth-search-deal.ts";
import { listOf, sizeOf } from "./berth-search-lists.ts";
import type { SearchModel } from "./berth-search-model.ts";
import type { SearchBounds } from "./berth-search-state.ts";

/**
 * Bounds that cost next to nothing: places fall into groups of which one at most can be used, trees carry
 * only so many hammocks, and no layout is cheaper than as many of the cheapest places.
 *
 * Source   layout-search
 */
export function simpleBounds(model: SearchModel): SearchBounds {
  const least = cheapestAtPlaces(model)
    .filter((cost) => cost < Infinity)
    .sort();
  const sums = [0];
  for (const cost of least) sums.push((sums.at(-1) ?? 0) + cost);
  return {
    most: Math.min(model.asked, cliquesNeeded(model), berthsByTrees(model)),
    leastCost: (placed) => sums[placed] ?? 0,
  };
}

/** Into how many groups of mutually exclusive places a greedy sweep sorts all places. */
function cliquesNeeded(model: SearchModel): number {
  const graph = exclusions(model);
  const taken = new Uint8Array(model.places);
  let groups = 0;
  for (let place = 0; place < model.places; place++) {
    if (taken[place] === 1 || sizeOf(model.ofPlace, place) === 0) continue;
    groups++;
    taken[place] = 1;
    const group = [place];
    for (const other of listOf(graph, place)) {
      if (taken[other] === 1 || sizeOf(model.ofPlace, other) === 0) continue;
      const excludes = new Set(listOf(graph, other));
      if (!group.every((member) => excludes.has(member))) continue;
      taken[other] = 1;
      group.push(other);
    }
  }
  return groups;
}

function berthsByTrees(model: SearchModel): number {
  let ends = 0;
  for (let tree = 0; tree < model.trees; tree++) {
    const there = listOf(model.atTree, tree).filter((place) => sizeOf(model.ofPlace, place) > 0);
    ends += Math.min(model.capacity[tree] ?? 0, there.length);
  }
  return Math.floor(ends / 2);
}
