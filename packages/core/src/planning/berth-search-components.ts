import { listOf, listsOf, sizeOf, type Lists } from "./berth-search-lists.ts";
import type { SearchModel } from "./berth-search-model.ts";

/** A part of the wood whose choices do not touch the rest: places in the order in which to decide them. */
export interface SearchComponent {
  readonly places: Int32Array;
  /** For each place, by position, the positions of all that it is linked with. */
  readonly links: Lists;
}

/**
 * Splits the places into parts that cannot hinder one another, largest first.
 *
 * Two places are linked where they conflict, and where they share a tree that has more places than it
 * may carry hammocks: without those links a part would overload the tree of another.
 *
 * Source   layout-search
 */
export function searchComponents(model: SearchModel): readonly SearchComponent[] {
  const links = linksOf(model);
  const seen = new Uint8Array(model.places);
  const components: SearchComponent[] = [];
  for (let place = 0; place < model.places; place++) {
    if (seen[place] === 1 || sizeOf(model.ofPlace, place) === 0) continue;
    components.push(ordered(reached(links, place, seen), links));
  }
  return components.sort(
    (a, b) => b.places.length - a.places.length || (a.places[0] ?? 0) - (b.places[0] ?? 0),
  );
}

/** Linked places of each place that somebody may use, each once. */
function linksOf(model: SearchModel): Lists {
  const neighbours: Int32Array[] = [];
  for (let place = 0; place < model.places; place++) {
    const all = new Set<number>();
    if (sizeOf(model.ofPlace, place) > 0) {
      for (const other of listOf(model.conflicts, place)) all.add(other);
      for (const tree of [model.first[place] ?? 0, model.second[place] ?? 0]) {
        const there = listOf(model.atTree, tree).filter((other) => sizeOf(model.ofPlace, other) > 0);
        if (there.length > model.capacity) there.forEach((other) => all.add(other));
      }
      all.delete(place);
    }
    neighbours.push(Int32Array.from(all).filter((other) => sizeOf(model.ofPlace, other) > 0));
  }
  return listsOf(model.places, (tell) =>
    neighbours.forEach((list, place) => list.forEach((other) => tell(place, other))),
  );
}

function reached(links: Lists, start: number, seen: Uint8Array): number[] {
  const found = [start];
  seen[start] = 1;
  for (let at = 0; at < found.length; at++) {
    for (const other of listOf(links, found[at] ?? 0)) {
      if (seen[other] === 1) continue;
      seen[other] = 1;
      found.push(other);
    }
  }
  return found.sort((a, b) => a - b);
}

/**
 * The order that keeps few places open, that is decided while something linked with them is not: always
 * the place that leaves fewest open, lowest index first.
 */
function ordered(places: readonly number[], links: Lists): SearchComponent {
  const undecided = new Map(places.map((place) => [place, sizeOf(links, place)]));
  const position = new Map<number, number>();
  const fringe = new Set<number>();
  for (let at = 0; at < places.length; at++) {
    const place = leastOpening(fringe.size > 0 ? fringe : undecided.keys(), undecided, links, position);
    position.set(place, at);
    fringe.delete(place);
    for (const other of listOf(links, place)) {
      undecided.set(other, (undecided.get(other) ?? 0) - 1);
      if (!position.has(other)) fringe.add(other);
    }
  }
  const order = Int32Array.from(position.keys());
  return {
    places: order,
    links: listsOf(order.length, (tell) =>
      order.forEach((place, at) =>
        listOf(links, place).forEach((other) => tell(at, position.get(other) ?? -1)),
      ),
    ),
  };
}

function leastOpening(
  candidates: Iterable<number>,
  undecided: ReadonlyMap<number, number>,
  links: Lists,
  position: ReadonlyMap<number, number>,
): number {
  let best = -1;
  let least = Infinity;
  for (const place of candidates) {
    let opens = (undecided.get(place) ?? 0) > 0 ? 1 : 0;
    for (const other of listOf(links, place)) {
      if (position.has(other) && undecided.get(other) === 1) opens--;
    }
    if (opens < least || (opens === least && place < best)) {
      least = opens;
      best = place;
    }
  }
  return best;
}
