import type { GroundXY } from "../site/obstacle.ts";
import { listOf, type Lists } from "./berth-search-lists.ts";
import { placesNear } from "./places-near.ts";
import { wishScore, type WishPeople, type WishPrices, type WishScore } from "./wish-score.ts";

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

/** Who lies where while the search for wishes goes on. */
export interface WishState {
  readonly input: WishSearchInput;
  readonly placeOf: Int32Array;
  /** Who lies at each place, −1 for nobody. */
  readonly personAt: Int32Array;
  /** Hammocks on each tree. */
  readonly load: Int32Array;
  readonly score: WishScore;
  /** Places within calling distance of each place. */
  readonly near: Lists;
  readonly budget: { left: number };
}

/** One person who goes to a place; whoever lies there takes theirs. */
export type Move = readonly [person: number, to: number];

export function wishState(input: WishSearchInput): WishState {
  const placeOf = input.start.slice();
  const state: WishState = {
    input,
    placeOf,
    personAt: new Int32Array(input.costUnits.length),
    load: new Int32Array(input.trees),
    score: wishScore(input.people, input.prices, placeOf, input.spots),
    near: placesNear(input.spots, input.prices.nearM),
    budget: { left: 0 },
  };
  restart(state, input.start);
  return state;
}

export function restart({ input, placeOf, personAt, load }: WishState, start: Int32Array): void {
  personAt.fill(-1);
  load.fill(0);
  start.forEach((place, person) => {
    placeOf[person] = place;
    personAt[place] = person;
    addLoad(input, load, place, 1);
  });
}

function addLoad({ first, second }: WishSearchInput, load: Int32Array, place: number, by: 1 | -1): void {
  const [one = 0, other = 0] = [first[place], second[place]];
  load[one] = (load[one] ?? 0) + by;
  load[other] = (load[other] ?? 0) + by;
}

/**
 * What some moves one after the other would cost more [units]; undefined where one of them cannot be. All stays as
 * it was.
 */
export function costOfMoves(state: WishState, moves: readonly Move[]): number | undefined {
  const { input, placeOf, personAt, score, budget } = state;
  budget.left--;
  const moved = new Set(moves.map(([person]) => person));
  for (const [, to] of moves) if ((personAt[to] ?? -1) >= 0) moved.add(personAt[to] ?? -1);
  const people = [...moved];
  const placesCost = (): number =>
    people.reduce((sum, person) => sum + (input.costUnits[placeOf[person] ?? -1] ?? 0), 0);
  const before = score.around(people) + placesCost();
  const back: Move[] = [];
  for (const [person, to] of moves) {
    const from = placeOf[person] ?? -1;
    if (from === to || !isPossible(state, person, to)) break;
    back.unshift([person, from]);
    take(state, person, to);
  }
  const after = back.length < moves.length ? undefined : score.around(people) + placesCost();
  for (const [person, from] of back) take(state, person, from);
  return after === undefined ? undefined : after - before;
}

/** What one move would cost more [units]; undefined where it cannot be. All stays as it was. */
export function costOfMove(state: WishState, person: number, to: number): number | undefined {
  const { input, placeOf, personAt, score, budget } = state;
  budget.left--;
  const from = placeOf[person] ?? -1;
  if (from === to || !isPossible(state, person, to)) return undefined;
  const other = personAt[to] ?? -1;
  const people = other < 0 ? [person] : [person, other];
  const before = score.around(people);
  take(state, person, to);
  const after = score.around(people);
  take(state, person, from);
  const places = other < 0 ? (input.costUnits[to] ?? 0) - (input.costUnits[from] ?? 0) : 0;
  return after - before + places;
}

function isPossible(state: WishState, person: number, to: number): boolean {
  const other = state.personAt[to] ?? -1;
  return other >= 0 || isFree(state, state.placeOf[person] ?? -1, to);
}

/** Whether all of these serve those who would lie there afterwards. */
export function allServed(state: WishState, moves: readonly Move[]): boolean {
  const { input, placeOf, personAt } = state;
  const back: Move[] = [];
  const people = new Set<number>();
  for (const [person, to] of moves) {
    people.add(person);
    if ((personAt[to] ?? -1) >= 0) people.add(personAt[to] ?? -1);
    back.unshift([person, placeOf[person] ?? -1]);
    take(state, person, to);
  }
  const served = [...people].every((person) => input.serves(person, placeOf[person] ?? -1));
  for (const [person, from] of back) take(state, person, from);
  return served;
}

/** How much worse these moves make how well people lie. */
export function burdenOfMoves(state: WishState, moves: readonly Move[]): number {
  const { input, placeOf, personAt } = state;
  return moves.reduce((sum, [person, to]) => {
    const from = placeOf[person] ?? -1;
    const other = personAt[to] ?? -1;
    const ofOther = other < 0 ? 0 : input.burden(other, from) - input.burden(other, to);
    return sum + input.burden(person, to) - input.burden(person, from) + ofOther;
  }, 0);
}

/** Moves a person to a place; whoever lies there changes with them. */
export function take({ input, placeOf, personAt, load }: WishState, person: number, to: number): void {
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
function isFree({ input, personAt, load }: WishState, from: number, to: number): boolean {
  for (const other of listOf(input.conflicts, to)) {
    if (other !== from && (personAt[other] ?? -1) >= 0) return false;
  }
  const left = (tree: number): number =>
    (load[tree] ?? 0) - (tree === input.first[from] || tree === input.second[from] ? 1 : 0);
  return left(input.first[to] ?? -1) < input.capacity && left(input.second[to] ?? -1) < input.capacity;
}
