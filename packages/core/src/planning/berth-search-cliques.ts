import { listOf, listsOf, type Lists } from "./berth-search-lists.ts";
import type { SearchModel } from "./berth-search-model.ts";

/**
 * A greedy cover of all "not both" pairs of places by cliques: groups of which one place at most can be
 * used. One row for a clique says more than one row for each of its pairs.
 *
 * Pairs are those in conflict, and those that share a tree of one hammock. Each pair not
 * yet covered grows by the place that covers most pairs still open, lowest index first, until no
 * place goes with all of it.
 *
 * Shapes   → lists of places, each of two or more, sorted
 * Source   layout-search (handbook/layout.md: clique rows)
 */
export function cliqueCover(model: SearchModel): readonly Int32Array[] {
  const graph = exclusions(model);
  const open = new Uint8Array(graph.items.length).fill(1);
  const gain = new Int32Array(model.places);
  const cliques: Int32Array[] = [];
  for (let a = 0; a < model.places; a++) {
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

function common(a: Int32Array, b: Int32Array): Int32Array {
  const both = new Int32Array(Math.min(a.length, b.length));
  let count = 0;
  for (let i = 0, j = 0; i < a.length && j < b.length;) {
    const left = a[i] ?? 0;
    const right = b[j] ?? 0;
    if (left === right) {
      both[count++] = left;
      i++;
      j++;
    } else if (left < right) i++;
    else j++;
  }
  return both.subarray(0, count);
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
