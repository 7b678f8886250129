import { chance } from "./berth-search-chance.ts";
import { listOf } from "./berth-search-lists.ts";
import { bestStep, type StepReach } from "./wish-steps.ts";
import { allServed, costOfMove, restart, take, wishState } from "./wish-state.ts";
import type { WishSearchInput, WishState } from "./wish-state.ts";

export interface WishSearch {
  readonly placeOf: Int32Array;
  /** Cost of the places, with what is amiss among people [units]. */
  readonly units: number;
  readonly amiss: number;
}

/**
 * Betters who lies near whom: whoever misses a wish or their group changes places with somebody, or two who miss each
 * other go to places near each other; where that does not do, people move to places that are free, as long as that
 * costs less in all. Where something is still amiss, people change places by chance, at first also for the worse, and
 * the best of that is bettered again.
 *
 *   Σ cost of places + price · (people out of reach, wishes not met, zones too near, metres of spread)
 *
 * Shapes   from where people lie, and what no layout costs less than → where they lie then
 * Holds    seeded and limited by steps; proves nothing; never dearer than what it started from
 * Source   layout-search (handbook/layout.md: people)
 */
export function searchWishes(input: WishSearchInput, goalUnits = 0): WishSearch {
  const state = wishState(input);
  const asDealt = input.start.reduce((sum, place) => sum + (input.costUnits[place] ?? 0), 0);
  let best = bettered(state, MOST_LOOKS);
  // Whom the wishes cost nothing more are left where they are.
  const goal = Math.max(goalUnits, asDealt);
  for (let round = 1; round <= ROUNDS && best.units > goal; round++) {
    restart(state, best.placeOf);
    wander(state, round);
    const next = bettered(state, MOST_LOOKS / ROUNDS);
    if (next.units < best.units) best = next;
  }
  return best;
}

/** Only what people come to by changing places with each other. */
export function changedPlaces(input: WishSearchInput): WishSearch {
  return bettered(wishState(input), MOST_LOOKS, ["changes"]);
}

/** How often people change places by chance, and how often in each round. */
const ROUNDS = 4;
const STEPS_A_PERSON = 400;
const MOST_STEPS = 24_000;

/** Share of the price of a wish by which a step may be worse at first. */
const HEAT = 0.25;

/** Steps after which those who miss something are counted anew. */
const STEPS_A_LOOK = 100;

const MOST_PASSES = 20;

/** Steps looked at before people change places by chance; as many again after it. */
const MOST_LOOKS = 120_000;

/** Steps down from where people lie, until there is none. */
function bettered(state: WishState, mostLooks: number, reaches: readonly StepReach[] = REACHES): WishSearch {
  const { input, placeOf, score, budget } = state;
  for (const reach of reaches) {
    budget.left = mostLooks / REACHES.length;
    for (let pass = 0; pass < MOST_PASSES; pass++) if (!passOnce(state, reach)) break;
  }
  const amiss = score.around([...placeOf.keys()]);
  const units = placeOf.reduce((sum, place) => sum + (input.costUnits[place] ?? 0), amiss);
  return { placeOf: placeOf.slice(), units, amiss };
}

/** Changes cost nothing but what is amiss, so they go first. */
const REACHES: readonly StepReach[] = ["changes", "free places too"];

function passOnce(state: WishState, reach: StepReach): boolean {
  const { placeOf, score, budget } = state;
  let moved = false;
  for (let person = 0; person < placeOf.length && budget.left > 0; person++) {
    if (!score.isAmiss(person)) continue;
    const step = bestStep(state, person, reach);
    if (step === undefined) continue;
    for (const [one, to] of step) take(state, one, to);
    moved = true;
  }
  return moved;
}

/**
 * Moves by chance, near where a person lies, near whom they miss, or within their group, never for the worse by more than
 * what sinks from a share of the price of a wish to nothing.
 */
function wander(state: WishState, seed: number): void {
  const { input, placeOf, personAt, near, score } = state;
  const { below } = chance(seed);
  const steps = Math.min(MOST_STEPS, STEPS_A_PERSON * placeOf.length);
  const oneOf = (list: ArrayLike<number>): number => list[below(Math.max(1, list.length))] ?? -1;
  const target = (person: number): number => {
    const draw = below(4);
    const missed = draw < 2 ? score.missedNear(person) : [];
    if (missed.length > 0) return oneOf(listOf(near, placeOf[oneOf(missed)] ?? -1));
    if (draw < 3) return oneOf(listOf(near, placeOf[person] ?? -1));
    const group = input.people.groups[input.people.groupOf[person] ?? -1];
    return group === undefined ? below(personAt.length) : (placeOf[oneOf(group.members)] ?? -1);
  };
  let amiss: readonly number[] = [];
  for (let step = 0; step < steps; step++) {
    if (step % STEPS_A_LOOK === 0) amiss = [...placeOf.keys()].filter((person) => score.isAmiss(person));
    const person = amiss.length > 0 && below(2) === 0 ? oneOf(amiss) : below(placeOf.length);
    const to = target(person);
    if (to < 0 || to === placeOf[person]) continue;
    const heat = input.prices.wishUnits * HEAT * (1 - step / steps) ** 2;
    const units = costOfMove(state, person, to);
    if (units === undefined || units > heat || !allServed(state, [[person, to]])) continue;
    take(state, person, to);
  }
}
