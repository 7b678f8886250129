import type { GroundXY } from "../site/obstacle.ts";
import { chance } from "./berth-search-chance.ts";
import { listOf, type Lists } from "./berth-search-lists.ts";
import { wishScore, type WishPeople, type WishPrices } from "./wish-score.ts";

export interface WishSearchInput {
  readonly people: WishPeople;
  readonly prices: WishPrices;
  /** Place of each person to start from, all different and free of conflict. */
  readonly start: Int32Array;
  readonly spots: readonly (GroundXY | undefined)[];
  readonly costUnits: Float64Array;
  readonly first: Int32Array;
  readonly second: Int32Array;
  /** Conflicting places of each place. */
  readonly conflicts: Lists;
  readonly trees: number;
  /** Hammocks that a tree may carry. */
  readonly capacity: number;
  readonly serves: (person: number, place: number) => boolean;
  /** How well a person lies there, for choices that are alike otherwise: the less the better. */
  readonly burden: (person: number, place: number) => number;
}

/**
 * Betters who lies near whom: whoever misses a wish or their group changes places with somebody, or moves to a place
 * that is free, as long as that costs less in all. Where something is still amiss, people change places by chance,
 * at first also for the worse, and the best of that is bettered again.
 *
 *   Σ cost of places + price · (people out of reach, wishes not met, zones too near, metres of spread)
 *
 * Holds    seeded and limited by steps; proves nothing; never dearer than what it started from
 * Source   layout-search (handbook/layout.md: people)
 */
export function searchWishes(input: WishSearchInput): WishSearch {
  const state = startOf(input);
  let best = bettered(state);
  if (best.amiss === 0) return best;
  for (let round = 1; round <= ROUNDS && best.amiss > 0; round++) {
    restart(state, best.placeOf);
    wander(state, round);
    const next = bettered(state);
    if (next.units < best.units) best = next;
  }
  return best;
}

/** How often people change places by chance, and how often in each round. */
const ROUNDS = 4;
const STEPS = 400;

/** Steps down from where people lie, until there is none. */
function bettered(state: State): WishSearch {
  const { input, placeOf, score, budget } = state;
  for (let pass = 0; pass < MOST_PASSES; pass++) {
    let moved = false;
    for (let person = 0; person < placeOf.length && budget.left > 0; person++) {
      if (!score.isAmiss(person)) continue;
      const step = bestStep(input, state, person);
      if (step === undefined) continue;
      take(state, person, step);
      moved = true;
    }
    if (!moved) break;
  }
  const amiss = score.around([...placeOf.keys()]);
  const units = placeOf.reduce((sum, place) => sum + (input.costUnits[place] ?? 0), amiss);
  return { placeOf: placeOf.slice(), units, amiss };
}

/** Moves by chance, never for the worse by more than what sinks from the price of a wish to nothing. */
function wander(state: State, seed: number): void {
  const { input, placeOf, personAt } = state;
  const { below } = chance(seed);
  for (let step = 0; step < STEPS; step++) {
    const person = below(placeOf.length);
    const to = below(personAt.length);
    const from = placeOf[person] ?? -1;
    const other = personAt[to] ?? -1;
    if (to === from || (other === -1 && !isFree(state, from, to))) continue;
    const heat = input.prices.wishUnits * (1 - step / STEPS);
    if (change(state, person, to) > heat) continue;
    if (!input.serves(person, to) || (other >= 0 && !input.serves(other, from))) continue;
    take(state, person, to);
  }
}

export interface WishSearch {
  readonly placeOf: Int32Array;
  /** Cost of the places, with what is amiss among people [units]. */
  readonly units: number;
  readonly amiss: number;
}

const MOST_PASSES = 20;

/** Steps looked at in all. */
const MOST_LOOKS = 200_000;

interface State {
  readonly input: WishSearchInput;
  readonly placeOf: Int32Array;
  /** Who lies at each place, −1 for nobody. */
  readonly personAt: Int32Array;
  /** Hammocks on each tree. */
  readonly load: Int32Array;
  readonly score: ReturnType<typeof wishScore>;
  readonly budget: { left: number };
}

function startOf(input: WishSearchInput): State {
  const placeOf = input.start.slice();
  const personAt = new Int32Array(input.costUnits.length);
  const load = new Int32Array(input.trees);
  const score = wishScore(input.people, input.prices, placeOf, input.spots);
  const state: State = { input, placeOf, personAt, load, score, budget: { left: MOST_LOOKS } };
  restart(state, input.start);
  return state;
}

function restart({ input, placeOf, personAt, load }: State, start: Int32Array): void {
  personAt.fill(-1);
  load.fill(0);
  start.forEach((place, person) => {
    placeOf[person] = place;
    personAt[place] = person;
    addLoad(input, load, place, 1);
  });
}

function addLoad({ first, second }: WishSearchInput, load: Int32Array, place: number, by: 1 | -1): void {
  for (const tree of [first[place] ?? 0, second[place] ?? 0]) load[tree] = (load[tree] ?? 0) + by;
}

function bestStep(input: WishSearchInput, state: State, person: number): number | undefined {
  const { placeOf, personAt, budget } = state;
  const from = placeOf[person] ?? -1;
  let best: number | undefined;
  let least = { units: -MINDED, burden: 0 };
  for (let to = 0; to < personAt.length; to++) {
    if (to === from) continue;
    const other = personAt[to] ?? -1;
    if (other === -1 && !isFree(state, from, to)) continue;
    budget.left--;
    const units = change(state, person, to);
    if (units > least.units) continue;
    if (!input.serves(person, to) || (other >= 0 && !input.serves(other, from))) continue;
    const burden =
      input.burden(person, to) -
      input.burden(person, from) +
      (other < 0 ? 0 : input.burden(other, from) - input.burden(other, to));
    if (units === least.units && best !== undefined && burden >= least.burden) continue;
    best = to;
    least = { units, burden };
  }
  return best;
}

/** What a move would cost more [units]. */
function change(state: State, person: number, to: number): number {
  const { input, placeOf, personAt, score } = state;
  const from = placeOf[person] ?? -1;
  const other = personAt[to] ?? -1;
  const moved = other === -1 ? [person] : [person, other];
  const before = score.around(moved);
  take(state, person, to);
  const after = score.around(moved);
  take(state, person, from);
  const places = other === -1 ? (input.costUnits[to] ?? 0) - (input.costUnits[from] ?? 0) : 0;
  return after - before + places;
}

/** A step must save at least so much [units]. */
const MINDED = 1;

/** Moves a person to a place; whoever lies there changes with them. */
function take({ input, placeOf, personAt, load }: State, person: number, to: number): void {
  const from = placeOf[person] ?? -1;
  const other = personAt[to] ?? -1;
  placeOf[person] = to;
  personAt[to] = person;
  personAt[from] = other;
  if (other >= 0) {
    placeOf[other] = from;
    return;
  }
  addLoad(input, load, from, -1);
  addLoad(input, load, to, 1);
}

/** Whether a place could be used if `from` were not. */
function isFree({ input, personAt, load }: State, from: number, to: number): boolean {
  for (const other of listOf(input.conflicts, to)) {
    if (other !== from && (personAt[other] ?? -1) >= 0) return false;
  }
  const left = [input.first[from] ?? -1, input.second[from] ?? -1];
  return [input.first[to] ?? -1, input.second[to] ?? -1].every(
    (tree) => (load[tree] ?? 0) - (left.includes(tree) ? 1 : 0) < input.capacity,
  );
}
