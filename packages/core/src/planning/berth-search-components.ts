import { listOf, listsOf, sizeOf, type Lists } from "./berth-search-lists.ts";
import type { SearchModel } from "./berth-search-model.ts";

/** A part of the wood whose choices do not touch the rest. */
export interface SearchComponent {
  /** Places in the order in which to decide them. */
  readonly places: Int32Array;
  /** For each place, by position, the positions of all that it is linked with. */
  readonly links: Lists;
}

export interface SearchComponents {
  /** Sorted places of each component, largest component first. */
  readonly members: readonly Int32Array[];
  readonly links: Lists;
}

/**
 * Splits the places into parts that cannot hinder one another.
 *
 * Two places are linked where they conflict, and where they share a tree that has more places than it
 * may carry hammocks: without those links a part would overload the tree of another.
 *
 * Holds    nothing is returned where a part has more places than `largest`
 * Source   layout-search
 */
export function searchComponents(model: SearchModel, largest: number): SearchComponents | undefined {
  const links = linksOf(model);
  const seen = new Uint8Array(model.places);
  const members: Int32Array[] = [];
  for (let place = 0; place < model.places; place++) {
    if (seen[place] === 1 || sizeOf(model.ofPlace, place) === 0) continue;
    const component = reached(links, place, seen);
    if (component.length > largest) return undefined;
    members.push(component);
  }
  members.sort((a, b) => b.length - a.length || (a[0] ?? 0) - (b[0] ?? 0));
  return { members, links };
}

/** Linked places of each place that somebody may use, each once. */
function linksOf(model: SearchModel): Lists {
  const used = Uint8Array.from({ length: model.places }, (_, place) =>
    sizeOf(model.ofPlace, place) > 0 ? 1 : 0,
  );
  const isScarce = Uint8Array.from({ length: model.trees }, (_, tree) => {
    let there = 0;
    for (const place of listOf(model.atTree, tree)) there += used[place] ?? 0;
    return there > (model.capacity[tree] ?? 0) ? 1 : 0;
  });
  const told = new Int32Array(model.places).fill(-1);
  return listsOf(model.places, (tell) => {
    told.fill(-1);
    for (let place = 0; place < model.places; place++) {
      if (used[place] === 0) continue;
      told[place] = place;
      const tellOnce = (other: number): void => {
        if (used[other] === 0 || told[other] === place) return;
        told[other] = place;
        tell(place, other);
      };
      listOf(model.conflicts, place).forEach(tellOnce);
      for (const tree of [model.first[place] ?? 0, model.second[place] ?? 0]) {
        if (isScarce[tree] === 1) listOf(model.atTree, tree).forEach(tellOnce);
      }
    }
  });
}

function reached(links: Lists, start: number, seen: Uint8Array): Int32Array {
  const found = [start];
  seen[start] = 1;
  for (let at = 0; at < found.length; at++) {
    for (const other of listOf(links, found[at] ?? 0)) {
      if (seen[other] === 1) continue;
      seen[other] = 1;
      found.push(other);
    }
  }
  return Int32Array.from(found).sort();
}

/**
 * The order that keeps few places open, that is decided while something linked with them is not: always
 * the place that leaves fewest open, lowest index first.
 */
export function orderedComponent(places: Int32Array, links: Lists): SearchComponent {
  const undecided = new Map(Array.from(places, (place) => [place, sizeOf(links, place)]));
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
