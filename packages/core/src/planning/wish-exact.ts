import { listOf } from "./berth-search-lists.ts";
import { wishScore } from "./wish-score.ts";
import type { WishSearch } from "./wish-search.ts";
import type { WishSearchInput } from "./wish-state.ts";

/**
 * The least of all ways to lie, where people are few enough to try them all: one after the other is given each place
 * that is free, cheapest first, and a way is left as soon as it cannot be cheaper than the best one known.
 *
 *   what a way costs at least = places and things amiss so far + cheapest place of each who has none yet
 *
 * Shapes   the best way known → the best of all ways; undefined where that would take too many steps
 * Holds    everybody keeps a berth; who may lie nowhere else stays where they start
 * Error    none
 * Source   layout-search (handbook/layout.md: people)
 */
export function leastByTrying(input: WishSearchInput, known: WishSearch): WishSearch | undefined {
  const people = known.placeOf.length;
  if (people > MOST_PEOPLE) return undefined;
  const choices = Array.from({ length: people }, (_, person) => placesOf(input, person));
  const cheapest = choices.map(([place = -1]) => input.costUnits[place] ?? 0);
  // Those with the fewest places first.
  const order = [...choices.keys()].sort(
    (a, b) => (choices[a]?.length ?? 0) - (choices[b]?.length ?? 0) || a - b,
  );
  const after = order.map((_, at) => order.slice(at + 1).reduce((sum, one) => sum + (cheapest[one] ?? 0), 0));
  const placeOf = new Int32Array(people).fill(-1);
  const score = wishScore(input.people, input.prices, placeOf, input.spots);
  const load = new Int32Array(input.trees);
  const everybody = [...placeOf.keys()];
  let [best, steps] = [known, 0];
  const visit = (at: number, cost: number): boolean => {
    const person = order[at];
    if (person === undefined) {
      const amiss = score.around(everybody);
      if (cost + amiss < best.units) best = { placeOf: placeOf.slice(), units: cost + amiss, amiss };
      return true;
    }
    for (const place of choices[person] ?? []) {
      if (++steps > MOST_STEPS) return false;
      const units = cost + (input.costUnits[place] ?? 0);
      // Dearer places follow.
      if (units + (after[at] ?? 0) >= best.units) break;
      if (!isFree(input, placeOf, load, place)) continue;
      put(input, placeOf, load, person, place);
      const isOpen = units + score.around(everybody) + (after[at] ?? 0) < best.units;
      const isDone = !isOpen || visit(at + 1, units);
      take(input, placeOf, load, person, place);
      if (!isDone) return false;
    }
    return true;
  };
  return visit(0, 0) ? best : undefined;
}

const MOST_PEOPLE = 10;

/** A fraction of a second. */
const MOST_STEPS = 15_000;

/** The places that serve somebody, cheapest first; of those who may lie nowhere, the one they have. */
function placesOf({ costUnits, serves, start }: WishSearchInput, person: number): number[] {
  const own = [...costUnits.keys()].filter((place) => place === start[person] || serves(person, place));
  return own.sort((a, b) => (costUnits[a] ?? 0) - (costUnits[b] ?? 0) || a - b);
}

function isFree(
  { conflicts, first, second, capacity }: WishSearchInput,
  placeOf: Int32Array,
  load: Int32Array,
  place: number,
): boolean {
  const isFull = [first[place] ?? -1, second[place] ?? -1].some((tree) => (load[tree] ?? 0) >= capacity);
  if (isFull || placeOf.includes(place)) return false;
  return !listOf(conflicts, place).some((other) => placeOf.includes(other));
}

function put(
  input: WishSearchInput,
  placeOf: Int32Array,
  load: Int32Array,
  person: number,
  place: number,
): void {
  placeOf[person] = place;
  addLoad(input, load, place, 1);
}

function take(
  input: WishSearchInput,
  placeOf: Int32Array,
  load: Int32Array,
  person: number,
  place: number,
): void {
  placeOf[person] = -1;
  addLoad(input, load, place, -1);
}

function addLoad({ first, second }: WishSearchInput, load: Int32Array, place: number, by: 1 | -1): void {
  for (const tree of [first[place] ?? -1, second[place] ?? -1]) load[tree] = (load[tree] ?? 0) + by;
}
