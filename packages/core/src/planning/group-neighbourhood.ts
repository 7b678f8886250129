import { chance } from "./berth-search-chance.ts";
import { listOf, listsOf, type Lists } from "./berth-search-lists.ts";
import {
  costOf,
  isNear,
  searchAroundHubs,
  squareBetween,
  type Hub,
  type SubSearch,
} from "./group-around-hubs.ts";
import type { GroupSearchInput, GroupSeat } from "./group-types.ts";
import type { LinearSolver } from "./linear-solver.ts";

/** A whole layout of groups. */
export interface GroupLayout {
  readonly hubs: readonly Hub[];
  readonly seats: readonly GroupSeat[];
  readonly worth: number;
}

export interface NeighbourhoodOptions {
  readonly steps: number;
  /** Price of one who lies out of reach. */
  readonly farUnits: number;
  /** Where to stop: nothing can be better. */
  readonly goal: number;
  readonly solver?: LinearSolver;
}

/**
 * Betters a layout of groups: the hub of one group moves to another place near it, and its people and those of the
 * groups beside it look for the best berths anew, while all others stay.
 *
 * Holds    seeded and limited by steps; proves nothing
 * Source   layout-search (handbook/layout.md: groups)
 */
export function searchNeighbourhoods(
  input: GroupSearchInput,
  start: GroupLayout,
  options: NeighbourhoodOptions,
): GroupLayout {
  const { below } = chance(1);
  const links = conflictLists(input);
  let best = start;
  let since = 0;
  for (let step = 0; step < options.steps && best.worth > options.goal && since < GIVE_UP; step++) {
    since++;
    const hub = best.hubs[below(best.hubs.length)];
    if (hub === undefined) break;
    const freed = besideHub(input, best.hubs, hub, 1 + below(MOST_BESIDE));
    const stay = best.seats.filter(({ kind }) => !freed.has(input.kinds[kind]?.group ?? -1));
    const part = freePart(input, links, freed, best.hubs, stay);
    const moved = movedHub(input, hub, part, best.hubs, below);
    if (moved === undefined) continue;
    const hubs = best.hubs.flatMap((one) => (one.group === hub.group ? [moved] : [one]));
    const own = hubs.filter(({ group }) => freed.has(group));
    const { solver } = options;
    const found = searchAroundHubs(input, own, {
      within: part,
      farUnits: options.farUnits,
      ...(solver === undefined ? {} : { solver }),
    });
    const seats = [...stay, ...found.seats];
    if (seats.length < best.seats.length) continue;
    const worth = layoutWorth(input, hubs, seats, options.farUnits);
    if (worth < best.worth) since = 0;
    if (worth <= best.worth) best = { hubs, seats, worth };
  }
  return best;
}

/** Steps without gain after which it ends. */
const GIVE_UP = 200;

/** Most groups that look anew beside the one whose hub moves. */
const MOST_BESIDE = 2;

/** Places farther from every freed hub than this many radii are left alone. */
const RADII = 1.5;

/** What a layout costs, people out of reach included. */
export function layoutWorth(
  input: GroupSearchInput,
  hubs: readonly Hub[],
  seats: readonly GroupSeat[],
  farUnits: number,
): number {
  const hubOf = new Map(hubs.map((hub) => [hub.group, hub.place]));
  return seats.reduce((sum, { kind, place }) => {
    const group = input.kinds[kind]?.group ?? -1;
    const hub = hubOf.get(group);
    const far = hub !== undefined && !isNear(input, group, place, hub);
    return sum + costOf(input, kind, place) + (far ? farUnits : 0);
  }, 0);
}

function conflictLists({ search }: GroupSearchInput): Lists {
  return listsOf(search.places.length, (tell) => {
    for (const [a, b] of search.conflicts) {
      tell(a, b);
      tell(b, a);
    }
  });
}

/** A group and those whose hubs are nearest to its own. */
function besideHub(
  { spots }: GroupSearchInput,
  hubs: readonly Hub[],
  hub: Hub,
  count: number,
): ReadonlySet<number> {
  const away = ({ place }: Hub): number => {
    const squared = squareBetween(spots[place], spots[hub.place]);
    return Number.isNaN(squared) ? Infinity : squared;
  };
  const others = hubs.filter(({ group }) => group !== hub.group);
  const sorted = others.map((one) => ({ one, squared: away(one) })).sort(byDistance);
  return new Set([hub.group, ...sorted.slice(0, count).map(({ one }) => one.group)]);
}

function byDistance(
  a: { readonly one: Hub; readonly squared: number },
  b: { readonly one: Hub; readonly squared: number },
): number {
  return a.squared < b.squared ? -1 : a.squared > b.squared ? 1 : a.one.group - b.one.group;
}

/** The search with the seats that stay taken out of it: their places, what these exclude, and their share of trees. */
function freePart(
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
function partOf(
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

/** Another place for a hub, near the one it has. */
function movedHub(
  input: GroupSearchInput,
  hub: Hub,
  part: { readonly places: readonly number[] },
  hubs: readonly Hub[],
  below: (n: number) => number,
): Hub | undefined {
  if (part.places.length === 0) return undefined;
  for (let draw = 0; draw < DRAWS; draw++) {
    const place = part.places[below(part.places.length)] ?? -1;
    if (hubs.some((one) => one.place === place) || !isNear(input, hub.group, place, hub.place)) continue;
    const kinds = hubKinds(input, hub.group).filter((kind) => costOf(input, kind, place) >= 0);
    const kind = kinds[below(Math.max(1, kinds.length))];
    if (kind !== undefined) return { group: hub.group, place, kind };
  }
  return undefined;
}

const DRAWS = 20;

/** Kinds whose berth may be the hub of a group. */
export function hubKinds({ kinds }: GroupSearchInput, group: number): number[] {
  const own = [...kinds.keys()].filter((kind) => {
    const { group: of, people = 0 } = kinds[kind] ?? {};
    return of === group && people > 0;
  });
  const leading = own.filter((kind) => kinds[kind]?.leads);
  return leading.length > 0 ? leading : own;
}
