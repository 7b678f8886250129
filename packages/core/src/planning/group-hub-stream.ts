import type { Lists } from "./berth-search-lists.ts";
import { costOf, isNear, searchAroundHubs, spreadUnits, type Hub } from "./group-around-hubs.ts";
import { hubKinds } from "./group-layout.ts";
import { partOf } from "./group-part.ts";
import type { GroupSearchInput } from "./group-types.ts";
import type { LinearSolver } from "./linear-solver.ts";

/** A hub of one group, and what the group costs there at least. */
export interface HubChoice {
  readonly hub: Hub;
  /** Places within reach. */
  readonly places: readonly number[];
  readonly units: number;
}

/** The hubs of one group by what it costs round each, as if nobody else were there: the first, the second, … */
export type HubStream = (index: number) => HubChoice | undefined;

/**
 * Hubs are first put in order by their cheapest places, whatever excludes what; only those that come to the front are
 * searched.
 *
 * Holds    `units` is never more than what the group costs there in any layout
 * Source   layout-search (handbook/layout.md: groups)
 */
export function hubStream(
  input: GroupSearchInput,
  links: Lists,
  group: number,
  solver: LinearSolver | undefined,
): HubStream {
  const own = [...input.kinds.keys()].filter((kind) => input.kinds[kind]?.group === group);
  const size = own.reduce((sum, kind) => sum + (input.kinds[kind]?.people ?? 0), 0);
  const guessed = unlikeKinds(input, hubKinds(input, group)).flatMap((kind) =>
    [...input.search.places.keys()].flatMap((place) => guess(input, { group, place, kind }, own, size) ?? []),
  );
  // The cheapest last.
  guessed.sort((a, b) => b.units - a.units || b.hub.place - a.hub.place || b.hub.kind - a.hub.kind);
  const searched: HubChoice[] = [];
  const told: HubChoice[] = [];
  const next = (): HubChoice | undefined => {
    for (;;) {
      const [front] = searched;
      const guess = guessed.at(-1);
      if (guess === undefined || (front !== undefined && front.units <= guess.units)) return searched.shift();
      guessed.pop();
      const found = searchedAt(input, links, guess, own, size, solver);
      if (found === undefined) continue;
      searched.push(found);
      searched.sort((a, b) => a.units - b.units || a.hub.place - b.hub.place || a.hub.kind - b.hub.kind);
    }
  };
  return (index) => {
    while (told.length <= index) {
      const one = next();
      if (one === undefined) return undefined;
      told.push(one);
    }
    return told[index];
  };
}

/** One of all kinds that may lie at the same places at the same cost. */
function unlikeKinds(input: GroupSearchInput, kinds: readonly number[]): number[] {
  const places = [...input.search.places.keys()];
  const keys = kinds.map((kind) => places.map((place) => costOf(input, kind, place)).join(" "));
  return kinds.filter((_, at) => keys.indexOf(keys[at] ?? "") === at);
}

/** The hub and the cheapest places within reach; nothing where there are too few. */
function guess(
  input: GroupSearchInput,
  hub: Hub,
  own: readonly number[],
  size: number,
): HubChoice | undefined {
  const atHub = costOf(input, hub.kind, hub.place);
  if (atHub < 0) return undefined;
  const places: number[] = [];
  const costs: number[] = [];
  for (const place of input.search.places.keys()) {
    if (!isNear(input, hub.group, place, hub.place)) continue;
    const cost = cheapestOf(input, own, place);
    if (place === hub.place || cost < Infinity) places.push(place);
    if (place !== hub.place && cost < Infinity) costs.push(cost + spreadUnits(input, place, hub.place));
  }
  if (costs.length < size - 1) return undefined;
  costs.sort((a, b) => a - b);
  const units = costs.slice(0, size - 1).reduce((sum, cost) => sum + cost, atHub);
  return { hub, places, units };
}

function cheapestOf(input: GroupSearchInput, kinds: readonly number[], place: number): number {
  let least = Infinity;
  for (const kind of kinds) {
    const cost = costOf(input, kind, place);
    if (cost >= 0 && cost < least) least = cost;
  }
  return least;
}

/** What the group costs there alone; nothing where not all of it can lie there. */
function searchedAt(
  input: GroupSearchInput,
  links: Lists,
  guess: HubChoice,
  own: readonly number[],
  size: number,
  solver: LinearSolver | undefined,
): HubChoice | undefined {
  const { search } = input;
  const capacities = search.capacities ?? new Int32Array(search.trees).fill(search.capacity);
  const within = {
    ...partOf(search, links, guess.places, capacities),
    places: guess.places,
    kinds: own,
  };
  const tools = solver === undefined ? {} : { solver };
  const { most, leastUnits, seats } = searchAroundHubs(input, [guess.hub], { ...tools, within });
  if (most < size) return undefined;
  return seats.length < size ? guess : { ...guess, units: Math.max(guess.units, leastUnits) };
}
