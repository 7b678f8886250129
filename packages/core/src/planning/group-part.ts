import { listOf, listsOf, type Lists } from "./berth-search-lists.ts";
import { squareBetween, type Hub, type SubSearch } from "./group-around-hubs.ts";
import type { GroupSearchInput, GroupSeat } from "./group-types.ts";

/** Conflicting places of each place. */
export function conflictLists({ search }: GroupSearchInput): Lists {
  return listsOf(search.places.length, (tell) => {
    for (const [a, b] of search.conflicts) {
      tell(a, b);
      tell(b, a);
    }
  });
}

/** The search with the seats that stay taken out of it: their places, what these exclude, and their share of trees. */
export function freePart(
  input: GroupSearchInput,
  links: Lists,
  freed: ReadonlySet<number>,
  hubs: readonly Hub[],
  stay: readonly GroupSeat[],
): SubSearch & { readonly places: readonly number[] } {
  const { search, kinds } = input;
  const capacities = search.capacities?.slice() ?? new Int32Array(search.trees).fill(search.capacity);
  const closed = new Uint8Array(search.places.length);
  for (const { place } of stay) {
    closed[place] = 1;
    for (const other of listOf(links, place)) closed[other] = 1;
    const { first = -1, second = -1 } = search.places[place] ?? {};
    capacities[first] = (capacities[first] ?? 0) - 1;
    capacities[second] = (capacities[second] ?? 0) - 1;
  }
  const around = hubs.filter(({ group }) => freed.has(group));
  const places = [...search.places.keys()].filter((place) => {
    const { first = -1, second = -1 } = search.places[place] ?? {};
    const room = Math.min(capacities[first] ?? 0, capacities[second] ?? 0);
    return closed[place] === 0 && room > 0 && around.some((hub) => isBeside(input, hub, place));
  });
  return { ...partOf(search, links, places, capacities), places, kinds: kindsOf(kinds, freed) };
}

function kindsOf(kinds: GroupSearchInput["kinds"], freed: ReadonlySet<number>): number[] {
  return [...kinds.keys()].filter((kind) => freed.has(kinds[kind]?.group ?? -1));
}

/** The search over some places and their trees alone. */
export function partOf(
  { places: all, capacity }: GroupSearchInput["search"],
  links: Lists,
  places: readonly number[],
  capacities: Int32Array,
): Pick<SubSearch, "search"> {
  const position = new Map(places.map((place, at) => [place, at]));
  const conflicts = places.flatMap((place, at) => {
    const later = [...listOf(links, place)].flatMap((other) => position.get(other) ?? []);
    return later
      .filter((other) => other > at)
      .sort((a, b) => a - b)
      .map((other) => [at, other] as const);
  });
  const pairs = places.flatMap((place) => all[place] ?? []);
  const trees = [...new Set(pairs.flatMap(({ first, second }) => [first, second]))].sort((a, b) => a - b);
  const treeAt = new Map(trees.map((tree, at) => [tree, at]));
  return {
    search: {
      trees: trees.length,
      capacity,
      capacities: Int32Array.from(trees, (tree) => capacities[tree] ?? 0),
      places: pairs.map(({ first, second }) => ({
        first: treeAt.get(first) ?? -1,
        second: treeAt.get(second) ?? -1,
      })),
      conflicts,
    },
  };
}

function isBeside({ spots, groups }: GroupSearchInput, hub: Hub, place: number): boolean {
  const reachM = RADII * (groups[hub.group]?.withinM ?? Infinity);
  return !(squareBetween(spots[place], spots[hub.place]) > reachM * reachM);
}

/** Places farther from every freed hub than this many radii are left alone. */
const RADII = 1.5;
