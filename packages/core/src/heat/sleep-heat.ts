import { restingWM2, type Person } from "./resting-heat.ts";
import { SLEEP_STATES, type SleepState, type SleepStateKey } from "./sleep-states.ts";

/** A person as a sleeper: who they are and how they say they sleep. */
export interface SleepingPerson extends Person {
  readonly sleeps: "cold" | "usual" | "warm";
}

/** The standard woman and man of the bag standard. Source: iso-23537. */
export const STANDARD_WOMAN: SleepingPerson = {
  massKg: 60,
  statureM: 1.6,
  ageYears: 25,
  sex: "f",
  sleeps: "usual",
};
export const STANDARD_MAN: SleepingPerson = {
  massKg: 73,
  statureM: 1.73,
  ageYears: 25,
  sex: "m",
  sleeps: "usual",
};

/**
 * The three states for one person: the standard's heat, times this person's resting heat over the standard person's,
 * and a little off for somebody who says that they sleep cold.
 *
 *   M = M_state · (Mifflin of the person / Mifflin of the standard person, within 0.8 and 1.2) ± 2 W/m²
 *
 * Units    [W/m²]
 * Holds    grown people in the range of `restingHeat`, under 19 never more than the standard woman; no person:
 *          the standard pair
 * Error    one person in three is more than 10 % off, and that is 3 to 4 K
 * Source   mifflin-1990, iso-23537; the ± 2 W/m² is common-practice (handbook/heat.md)
 */
export function sleepState(key: SleepStateKey, person?: SleepingPerson): SleepState {
  const state = SLEEP_STATES[key];
  if (person === undefined) return state;
  const isYoung = person.ageYears < YOUNG_ADULT_YEARS;
  const restWM2 = Math.min(restingWM2(person), isYoung ? STANDARD_WM2.comfort : Infinity);
  const ratio = restWM2 / STANDARD_WM2[key];
  const metabolicWM2 =
    state.metabolicWM2 * Math.min(Math.max(ratio, LEAST_RATIO), MOST_RATIO) + SAID_WM2[person.sleeps];
  return { ...state, metabolicWM2 };
}

const LEAST_RATIO = 0.8;
const MOST_RATIO = 1.2;
/** Younger people never make more than the standard woman: they are thin, and were not in the sample. Source: house-convention. */
const YOUNG_ADULT_YEARS = 19;
const SAID_WM2: Readonly<Record<SleepingPerson["sleeps"], number>> = { cold: -2, usual: 0, warm: 2 };

const STANDARD_WM2: Readonly<Record<SleepStateKey, number>> = {
  comfort: restingWM2(STANDARD_WOMAN),
  limit: restingWM2(STANDARD_MAN),
  extreme: restingWM2(STANDARD_WOMAN),
};
