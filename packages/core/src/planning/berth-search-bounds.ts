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
    most: Math.min(model.asked, berthsByTrees(model), cliquesNeeded(model)),
    leastCost: (placed) => sums[placed] ?? 0,
  };
}

/** Into how many groups of mutually exclusive places a greedy sweep sorts all places. */
function cliquesNeeded(model: SearchModel): number {
  const graph = exclusions(model);
  const taken = new Uint8Array(model.places);
  const within = new Int32Array(model.places);
  let groups = 0;
  for (let place = 0; place < model.places; place++) {
    if (taken[place] === 1 || sizeOf(model.ofPlace, place) === 0) continue;
    groups++;
    taken[place] = 1;
    // within: with how many members of this group a place excludes itself.
    const touched = [place];
    within[place] = 0;
    let size = 0;
    const join = (member: number): void => {
      size++;
      for (const other of listOf(graph, member)) {
        within[other] = (within[other] ?? 0) + 1;
        touched.push(other);
      }
    };
    join(place);
    for (const other of listOf(graph, place)) {
      if (taken[other] === 1 || within[other] !== size || sizeOf(model.ofPlace, other) === 0) continue;
      taken[other] = 1;
      join(other);
    }
    for (const other of touched) within[other] = 0;
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
