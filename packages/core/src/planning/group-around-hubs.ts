import type { GroundXY } from "../site/obstacle.ts";
import { LENGTH_SLACK_M } from "../quantity/constants.ts";
import { searchBerths } from "./berth-search.ts";
import type { BerthSearchInput, SearchClass } from "./berth-search-types.ts";
import type { GroupSearchInput, GroupSeat } from "./group-types.ts";
import type { LinearSolver } from "./linear-solver.ts";

/** Where the hub of a group is and who lies there. */
export interface Hub extends GroupSeat {
  readonly group: number;
}

export interface AroundHubs {
  readonly seats: readonly GroupSeat[];
  /** Cost of the places alone. */
  readonly costUnits: number;
  /** No more can lie there, and as many for no less, ways and reach priced. */
  readonly most: number;
  readonly leastUnits: number;
}

/**
 * The best berths for people of some groups when their hubs are given: a search like any other, in which each kind
 * has only the places within reach of its hub.
 *
 * `farUnits` lets people lie farther off at that price each; without it the number placed may fall short.
 *
 * Source   layout-search (handbook/layout.md: groups)
 */
export function searchAroundHubs(
  input: GroupSearchInput,
  hubs: readonly Hub[],
  options: AroundOptions = {},
): AroundHubs {
  const within = options.within ?? { search: input.search, places: undefined, kinds: input.kinds.keys() };
  const placeOf = (at: number): number => within.places?.[at] ?? at;
  const classes: { readonly kind: number; readonly of: SearchClass }[] = [];
  const hubPlaces = new Set(hubs.map(({ place }) => place));
  const count = within.search.places.length;
  for (const { place, kind } of hubs) {
    const own = Float64Array.from({ length: count }, (_, at) =>
      placeOf(at) === place ? costOf(input, kind, place) : -1,
    );
    classes.push({ kind, of: { people: 1, costUnits: own } });
  }
  for (const kind of within.kinds) {
    const { group = -1, people = 0 } = input.kinds[kind] ?? {};
    const hub = hubs.find((one) => one.group === group);
    const left = people - hubs.filter((one) => one.kind === kind).length;
    if (left <= 0) continue;
    const costUnits = Float64Array.from({ length: count }, (_, at) => {
      const place = placeOf(at);
      const alone = hubPlaces.has(place) ? -1 : costOf(input, kind, place);
      if (alone < 0 || hub === undefined) return alone;
      const cost = alone + spreadUnits(input, place, hub.place);
      if (isNear(input, group, place, hub.place)) return cost;
      return options.farUnits === undefined ? -1 : cost + options.farUnits;
    });
    classes.push({ kind, of: { people: left, costUnits } });
  }
  const found = searchBerths(
    { ...within.search, classes: classes.map((one) => one.of) },
    {
      ...(options.solver === undefined ? {} : { solver: options.solver }),
      ...(options.ceilingUnits === undefined ? {} : { ceilingUnits: options.ceilingUnits }),
    },
  );
  const seats = found.chosen.map(({ place, classIndex }) => ({
    place: placeOf(place),
    kind: classes[classIndex]?.kind ?? -1,
  }));
  const { bound: most, lowerBoundUnits: leastUnits } = found;
  return { seats, costUnits: seatsCost(input, seats), most, leastUnits };
}

export interface AroundOptions {
  readonly solver?: LinearSolver;
  readonly farUnits?: number;
  /** Layouts that cost more, with who lies too far off, are of no use. */
  readonly ceilingUnits?: number;
  readonly within?: SubSearch;
}

/** A part of the search: some of its places, and the kinds that look for a berth there. */
export interface SubSearch {
  readonly search: Omit<BerthSearchInput, "classes">;
  /** For each place of the part its index in the whole; nothing where it is the whole. */
  readonly places: readonly number[] | undefined;
  readonly kinds: Iterable<number>;
}

export function costOf({ search, kinds }: GroupSearchInput, kind: number, place: number): number {
  return search.classes[kinds[kind]?.classIndex ?? -1]?.costUnits[place] ?? -1;
}

export function seatsCost(input: GroupSearchInput, seats: readonly GroupSeat[]): number {
  return seats.reduce((sum, { kind, place }) => sum + costOf(input, kind, place), 0);
}

/** Whether a place is within the radius of a group of its hub; always where nobody knows where one of them is. */
export function isNear(
  { groups, spots }: GroupSearchInput,
  group: number,
  place: number,
  hub: number,
): boolean {
  const reachM = (groups[group]?.withinM ?? Infinity) + LENGTH_SLACK_M;
  return !(squareBetween(spots[place], spots[hub]) > reachM * reachM);
}

/** Price of the way between a place and a hub; nothing where nobody knows how far it is. */
export function spreadUnits(
  { spots, spreadUnitsPerM = 0 }: GroupSearchInput,
  place: number,
  hub: number | undefined,
): number {
  if (hub === undefined || spreadUnitsPerM === 0) return 0;
  const squared = squareBetween(spots[place], spots[hub]);
  return squared > 0 ? Math.round(spreadUnitsPerM * Math.sqrt(squared)) : 0;
}

/** NaN where one of the two is not known. */
export function squareBetween(a: GroundXY | undefined, b: GroundXY | undefined): number {
  const east = (a?.[0] ?? NaN) - (b?.[0] ?? NaN);
  const north = (a?.[1] ?? NaN) - (b?.[1] ?? NaN);
  return east * east + north * north;
}
