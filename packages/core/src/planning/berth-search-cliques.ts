import { listOf, listsOf, type Lists } from "./berth-search-lists.ts";
import { common, maximalCliques } from "./maximal-cliques.ts";
import type { SearchModel } from "./berth-search-model.ts";

/**
 * Cliques that between them hold every "not both" pair of places: groups of which one place at most can
 * be used. One row for a clique says more than one row for each of its pairs.
 *
 * Pairs are those in conflict, and those that share a tree of one hammock. All cliques that cannot grow
 * are taken; in a wood there are few of them. Where they are more than a few for each place, as in
 * tangles that no wood has, a greedy cover is taken instead.
 *
 * Shapes   → lists of places, each of two or more, sorted
 * Source   layout-search (handbook/layout.md: clique rows)
 */
export function exclusionCliques(model: SearchModel): readonly Int32Array[] {
  const graph = exclusions(model);
  return (
    maximalCliques(graph, model.places, CLIQUES_A_PLACE * model.places) ?? greedyCover(graph, model.places)
  );
}

const CLIQUES_A_PLACE = 4;

/**
 * Each pair not yet covered grows by the place that covers most pairs still open, lowest index first,
 * until no place goes with all of it.
 */
export function greedyCover(graph: Lists, places: number): readonly Int32Array[] {
  const open = new Uint8Array(graph.items.length).fill(1);
  const gain = new Int32Array(places);
  const cliques: Int32Array[] = [];
  for (let a = 0; a < places; a++) {
    const end = graph.starts[a + 1] ?? 0;
    for (let at = graph.starts[a] ?? 0; at < end; at++) {
      const b = graph.items[at] ?? 0;
      if (b < a || open[at] === 0) continue;
      cliques.push(grow(graph, open, gain, a, b).sort());
    }
  }
  return cliques;
}

/** Who excludes whom, each list sorted and without repeats. */
export function exclusions(model: SearchModel): Lists {
  if (model.capacity.every((hammocks) => hammocks > 1)) return sorted(model.conflicts, model.places);
  const neighbours = Array.from({ length: model.places }, (_, place) => {
    const all = new Set(listOf(model.conflicts, place));
    for (const tree of [model.first[place] ?? 0, model.second[place] ?? 0]) {
      if (model.capacity[tree] !== 1) continue;
      for (const other of listOf(model.atTree, tree)) if (other !== place) all.add(other);
    }
    return Int32Array.from(all).sort();
  });
  return listsOf(model.places, (tell) =>
    neighbours.forEach((list, place) => list.forEach((other) => tell(place, other))),
  );
}

function sorted(lists: Lists, count: number): Lists {
  const items = lists.items.slice();
  for (let i = 0; i < count; i++) items.subarray(lists.starts[i] ?? 0, lists.starts[i + 1] ?? 0).sort();
  return { starts: lists.starts, items };
}

function grow(graph: Lists, open: Uint8Array, gain: Int32Array, a: number, b: number): Int32Array {
  const clique = [a, b];
  cover(graph, open, a, b);
  let candidates = common(listOf(graph, a), listOf(graph, b));
  for (const place of candidates) gain[place] = isOpen(graph, open, place, a) + isOpen(graph, open, place, b);
  while (candidates.length > 0) {
    let best = candidates[0] ?? 0;
    for (const place of candidates) if ((gain[place] ?? 0) > (gain[best] ?? 0)) best = place;
    for (const member of clique) cover(graph, open, best, member);
    clique.push(best);
    candidates = common(candidates, listOf(graph, best));
    for (const place of candidates) gain[place] = (gain[place] ?? 0) + isOpen(graph, open, place, best);
  }
  return Int32Array.from(clique);
}

function isOpen(graph: Lists, open: Uint8Array, a: number, b: number): number {
  return open[positionOf(graph, a, b)] ?? 0;
}

function cover(graph: Lists, open: Uint8Array, a: number, b: number): void {
  open[positionOf(graph, a, b)] = 0;
  open[positionOf(graph, b, a)] = 0;
}

/** Where `item` stands in the sorted list of `owner`. */
function positionOf(graph: Lists, owner: number, item: number): number {
  let low = graph.starts[owner] ?? 0;
  let high = (graph.starts[owner + 1] ?? 0) - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((graph.items[middle] ?? 0) < item) low = middle + 1;
    else high = middle;
  }
  return low;
}
