import type { Sleeper } from "../plan/camp.ts";
import type { CampPlace } from "./camp-places-types.ts";
import { leastCostAssignment } from "./least-cost-assignment.ts";
import { seatSleepers } from "./seat-sleepers.ts";

export interface DealBerthsInput {
  /** In the order of their claim. */
  readonly people: readonly Sleeper[];
  /** As many places as people. */
  readonly places: readonly CampPlace[];
  readonly serves: (sleeper: number, berth: number) => boolean;
  /** The higher strap of that sleeper's hang there, above its tree's own ground [m]. */
  readonly highestStrapM: (sleeper: number, berth: number) => number;
  /** How much is asked of whoever lies at each place; see `berthEffortM`. */
  readonly effortM: (berth: number) => number;
}

/**
 * Who of those placed takes which of the chosen berths.
 *
 * First of all nobody should need a taller person to set the straps; where somebody must, the less the strap is above
 * the own reach the better. Then beginners get the easiest berths. Then heavier people go to stouter trees: Σ mass / thinner trunk is least, trunks in
 * classes of 5 cm. Where all that is equal the shorter people get the nearer pairs, whose straps hang lower:
 * Σ (tallest − stature) · span is least. Above a hundred people beginners take the easiest, the others the stoutest, the
 * heaviest choosing first.
 *
 * Shapes   n people, n places → for each sleeper the index of a place; undefined where not all can lie
 * Units    kg, m; costs in whole units
 * Source   common-practice (handbook/planning.md)
 */
export function dealBerths(input: DealBerthsInput): Int32Array | undefined {
  const { people, places, serves } = input;
  if (people.length <= MOST_WEIGHED) {
    return leastCostAssignment({
      rows: people.length,
      columns: places.length,
      cost: table(input),
    });
  }
  const stoutest = stoutestFirst(places);
  const easiest = stoutest.slice().sort((a, b) => input.effortM(a) - input.effortM(b) || a - b);
  const berthOf = seatSleepers({
    sleepers: people.length,
    berths: places.length,
    preferred: (sleeper) => (people[sleeper]?.beginner === true ? easiest : stoutest),
    serves,
  });
  return berthOf.includes(-1) ? undefined : berthOf;
}

/** People up to whom every sleeper is weighed against every berth. */
export const MOST_WEIGHED = 100;

/** One who needs help costs this much, and one more for each centimetre out of reach. */
const HELP_UNITS = 10_000;
const HELP_UNITS_PER_M = 100;

/** A metre of effort outweighs a beginner's weight on any trunk, and nothing that is asked of one outweighs help. */
const EFFORT_UNITS_PER_M = 1000;
const MOST_EFFORT_M = 9;

/** Trunks are told apart by so much [m]: what bends them is far off on any that the house rules allow. */
const TRUNK_CLASS_M = 0.05;

/** So much that no tie outweighs one unit: 100 people × 100 cm × 1000 cm. */
const TIE_UNITS = 1e7;

function table(input: DealBerthsInput): (sleeper: number, berth: number) => number {
  const tallestM = input.people.reduce((most, { statureM }) => Math.max(most, statureM), 0);
  const rows = input.people.map((_, sleeper) =>
    Float64Array.from(input.places, (_place, berth) => costOf(input, { sleeper, berth, tallestM })),
  );
  return (sleeper, berth) => rows[sleeper]?.[berth] ?? Infinity;
}

interface Pairing {
  readonly sleeper: number;
  readonly berth: number;
  readonly tallestM: number;
}

function costOf(input: DealBerthsInput, { sleeper, berth, tallestM }: Pairing): number {
  const person = input.people[sleeper];
  const place = input.places[berth];
  if (person === undefined || place === undefined || !input.serves(sleeper, berth)) return Infinity;
  const units = berthBurden(person, place, input.highestStrapM(sleeper, berth), input.effortM(berth));
  return units * TIE_UNITS + Math.round((tallestM - person.statureM) * 100) * Math.round(place.spanM * 100);
}

/**
 * How ill a person and a berth go together: help needed with the straps, then what it asks of a beginner, then weight
 * on thin trunks [units].
 */
export function berthBurden(
  person: Sleeper,
  place: CampPlace,
  highestStrapM: number,
  effortM: number,
): number {
  const aboveM = highestStrapM - person.reachM;
  const help = aboveM > 0 ? HELP_UNITS + Math.round(aboveM * HELP_UNITS_PER_M) : 0;
  const effort =
    person.beginner === true ? Math.round(Math.min(effortM, MOST_EFFORT_M) * EFFORT_UNITS_PER_M) : 0;
  return help + effort + Math.round(person.massKg / trunkClassM(thinnerM(place)));
}

/** The middle of the trunk's class. */
function trunkClassM(dbhM: number): number {
  return (Math.floor(dbhM / TRUNK_CLASS_M + 1e-9) + 0.5) * TRUNK_CLASS_M;
}

function stoutestFirst(places: readonly CampPlace[]): Int32Array {
  const thinner = places.map(thinnerM);
  const order = Int32Array.from(places, (_, index) => index);
  return order.sort((a, b) => (thinner[b] ?? 0) - (thinner[a] ?? 0) || a - b);
}

function thinnerM({ dbhM }: CampPlace): number {
  return Math.min(...dbhM);
}
