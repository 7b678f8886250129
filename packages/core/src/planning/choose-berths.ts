import type { BerthSearch, BerthSearchInput } from "./berth-search-types.ts";
import { searchBerths } from "./berth-search.ts";
import type { CampPlaces } from "./camp-places-types.ts";
import { dealBerths } from "./deal-berths.ts";
import type { DealtKit } from "./dealt-kit.ts";
import type { FitClass } from "./fit-classes.ts";
import type { HangDesk } from "./hang-desk.ts";
import type { LinearSolver } from "./linear-solver.ts";

/** One sleeper at one place. */
export interface Seat {
  readonly place: number;
  readonly classIndex: number;
  readonly kit: DealtKit;
}

export interface ChosenBerths {
  readonly search: BerthSearch;
  /** Sorted by place. */
  readonly seats: readonly Seat[];
}

export interface ChooseInput {
  readonly ground: CampPlaces;
  readonly capacity: number;
  readonly classes: readonly FitClass[];
  /** classes × places: whether the class may hang there as far as is known; refusals are added here. */
  readonly allowed: readonly Uint8Array[];
  /** One whole number ≥ 0 a place. */
  readonly costUnits: Float64Array;
  readonly desk: HangDesk;
  readonly solver?: LinearSolver;
  /** Told of layouts on the way; not above a hundred people, where working out their hangs costs more than the search. */
  readonly onIncumbent?: (chosen: ChosenBerths) => void;
}

/**
 * Chooses berths and who lies where, so that every hang was worked out in full and none is refused.
 *
 * The search runs on what nobody has refused yet: never less than what is true, so its bound holds for the truth.
 * The hangs of the berths it chooses are then worked out; a refusal is noted and the search runs again. When nothing
 * chosen is refused, what is best of the larger choice is best of the true one.
 */
export function chooseBerths(input: ChooseInput): ChosenBerths {
  for (;;) {
    const search = searchBerths(searchInput(input), {
      ...(input.solver === undefined ? {} : { solver: input.solver }),
      onIncumbent: (incumbent) => tell(input, incumbent),
    });
    const refusing = new Set<number>();
    const seats = seated(input, search, refusing);
    if (seats !== undefined) return { search, seats };
    askEverywhere(input, refusing);
  }
}

/** A class that was refused once may well be refused elsewhere: ask for all its places before the next search. */
function askEverywhere({ allowed, desk }: ChooseInput, classes: ReadonlySet<number>): void {
  for (const classIndex of classes) {
    allowed[classIndex]?.forEach((flag, place, row) => {
      row[place] = flag === 1 && desk.serves(classIndex, place) ? 1 : 0;
    });
  }
}

function tell(input: ChooseInput, search: BerthSearch): void {
  if (input.onIncumbent === undefined || search.placed > MOST_TOLD) return;
  const seats = seated(input, search, new Set());
  if (seats !== undefined) input.onIncumbent({ search, seats });
}

/** People up to whom layouts on the way are told. */
const MOST_TOLD = 100;

function searchInput({ ground, capacity, classes, allowed, costUnits }: ChooseInput): BerthSearchInput {
  return {
    trees: ground.anchors.length,
    places: ground.places,
    capacity,
    conflicts: ground.conflicts,
    classes: classes.map(({ members }, index) => ({
      people: members.length,
      costUnits: costUnits.map((cost, place) => (allowed[index]?.[place] === 1 ? cost : -1)),
    })),
  };
}

/** Deals the chosen berths; undefined where a hang is refused so that somebody would go without. */
function seated(input: ChooseInput, search: BerthSearch, refusing: Set<number>): Seat[] | undefined {
  const { desk, ground } = input;
  const places = search.chosen.map(({ place }) => place);
  const people = claimants(input, search);
  const classOf = (sleeper: number): number => people[sleeper]?.classIndex ?? -1;
  const berthOf = dealBerths({
    people: people.map(({ kit }) => kit.sleeper),
    places: places.flatMap((place) => ground.places[place] ?? []),
    serves: (sleeper, berth) => serves(input, classOf(sleeper), places[berth] ?? -1, refusing),
    highestStrapM: (sleeper, berth) => desk.highestStrapM(classOf(sleeper), places[berth] ?? -1),
  });
  if (berthOf === undefined) return undefined;
  const seats = people.map(({ classIndex, kit }, sleeper) => ({
    place: places[berthOf[sleeper] ?? -1] ?? -1,
    classIndex,
    kit,
  }));
  return allHang(input, seats, refusing) ? seats.sort((a, b) => a.place - b.place) : undefined;
}

/** Works out every hang in full; notes those that are refused after all. */
function allHang({ allowed, desk }: ChooseInput, seats: readonly Seat[], refusing: Set<number>): boolean {
  const refused = seats.filter(({ classIndex, place }) => !desk.hangOf(classIndex, place).ok);
  refused.forEach(({ classIndex, place }) => {
    allowed[classIndex]?.fill(0, place, place + 1);
    refusing.add(classIndex);
  });
  return refused.length === 0;
}

type Claimant = Omit<Seat, "place">;

/** Who of each class is given a berth: the first of its members; the heaviest claim first. */
function claimants({ classes }: ChooseInput, { chosen }: BerthSearch): Claimant[] {
  const counts = new Int32Array(classes.length);
  chosen.forEach(({ classIndex }) => (counts[classIndex] = (counts[classIndex] ?? 0) + 1));
  const people = classes.flatMap(({ members }, classIndex) =>
    members.slice(0, counts[classIndex]).map((kit) => ({ classIndex, kit })),
  );
  return people.sort((a, b) => b.kit.sleeper.massKg - a.kit.sleeper.massKg || a.classIndex - b.classIndex);
}

function serves(
  { allowed, desk }: ChooseInput,
  classIndex: number,
  place: number,
  refusing: Set<number>,
): boolean {
  const row = allowed[classIndex];
  if (row?.[place] !== 1) return false;
  if (desk.serves(classIndex, place)) return true;
  row[place] = 0;
  refusing.add(classIndex);
  return false;
}
