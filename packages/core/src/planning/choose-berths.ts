import type { BerthSearch, BerthSearchInput } from "./berth-search-types.ts";
import { searchBerths } from "./berth-search.ts";
import type { CampPlaces } from "./camp-places-types.ts";
import {
  blocksOf,
  kindsOf,
  mindsMore,
  placesByWish,
  withPlaces,
  type Claimant,
  type DealBlock,
  type PeopleRules,
} from "./choose-berths-people.ts";
import { COST_WEIGHTS } from "../plan/cost-weights.ts";
import { UNITS_PER_M } from "./cost-terms.ts";
import { dealBerths } from "./deal-berths.ts";
import type { DealtKit } from "./dealt-kit.ts";
import type { FitClass } from "./fit-classes.ts";
import { searchGroups } from "./group-search.ts";
import { besidePinned, withoutPinned } from "./group-pinned.ts";
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
  /** Proven, where all ways to lie were tried: with what is amiss among people no layout of as many costs less. */
  readonly leastUnits?: number;
}

export interface ChooseInput {
  readonly ground: CampPlaces;
  readonly capacity: number;
  /** Hammocks that each tree may carry besides pinned ones, where those are fewer. */
  readonly capacities?: Int32Array;
  /** Who keeps a place: nobody of the classes, and no place allowed to any of them. */
  readonly pinned?: readonly Seat[];
  readonly classes: readonly FitClass[];
  /** classes × places: whether the class may hang there as far as is known; refusals are added here. */
  readonly allowed: readonly Uint8Array[];
  /** One whole number ≥ 0 a place. */
  readonly costUnits: Float64Array;
  readonly desk: HangDesk;
  /** How much each place asks of whoever lies there; nothing where nobody is a beginner. */
  readonly effortM?: Float64Array;
  /** Who belongs together; nothing where nobody minds. */
  readonly people?: PeopleRules;
  readonly solver?: LinearSolver;
  /** Told of layouts on the way; not above a hundred people, where working out their hangs costs more than the search. */
  readonly onIncumbent?: (chosen: ChosenBerths) => void;
  /** Told of the places of every layout on the way, however many people. */
  readonly onPlaces?: (places: readonly number[]) => void;
}

/**
 * Chooses berths and who lies where, so that every hang was worked out in full and none is refused.
 *
 * The search runs on what nobody has refused yet: never less than what is true, so its bound holds for the truth.
 * The hangs of the berths it chooses are then worked out; a refusal is noted and the search runs again. When nothing
 * chosen is refused, what is best of the larger choice is best of the true one. Groups and wishes come after: they
 * change the berths and who lies there, never how many are placed, and the bounds stay true.
 */
export function chooseBerths(input: ChooseInput): ChosenBerths {
  for (;;) {
    const search = searchBerths(searchInput(input), {
      ...(input.solver === undefined ? {} : { solver: input.solver }),
      onIncumbent: (incumbent) => tell(input, incumbent),
    });
    const refusing = new Set<number>();
    const chosen = seated(input, search, { refusing, quick: false });
    if (chosen !== undefined) return chosen;
    if (refusing.size === 0) throw new Error("berths that serve everybody could not be dealt out");
    askEverywhere(input, refusing);
  }
}

type Asked = Pick<ChooseInput, "allowed" | "desk">;

/** A class that was refused once may well be refused elsewhere: ask for all its places before the next search. */
export function askEverywhere({ allowed, desk }: Asked, classes: ReadonlySet<number>): void {
  for (const classIndex of classes) {
    allowed[classIndex]?.forEach((flag, place, row) => {
      row[place] = flag === 1 && desk.serves(classIndex, place) ? 1 : 0;
    });
  }
}

function tell(input: ChooseInput, search: BerthSearch): void {
  const { pinned = [] } = input;
  input.onPlaces?.([...search.chosen, ...pinned].map(({ place }) => place));
  if (input.onIncumbent === undefined || search.placed > MOST_TOLD) return;
  const chosen = seated(input, search, { refusing: new Set(), quick: true });
  if (chosen !== undefined) input.onIncumbent(chosen);
}

/** People up to whom layouts on the way are told. */
const MOST_TOLD = 100;

/** What a place costs one class, where it is not what it costs everybody. */
type CostOf = (costUnits: number, place: number, classIndex: number) => number;

/** What is asked of the search: every place that nobody has refused yet. */
export function searchInput(input: ChooseInput, costOf: CostOf = (units) => units): BerthSearchInput {
  const { ground, capacity, capacities, classes, allowed, costUnits } = input;
  return {
    trees: ground.anchors.length,
    places: ground.places,
    capacity,
    ...(capacities === undefined ? {} : { capacities }),
    conflicts: ground.conflicts,
    classes: classes.map(({ members }, index) => ({
      people: members.length,
      costUnits: costUnits.map((cost, place) =>
        allowed[index]?.[place] === 1 ? costOf(cost, place, index) : -1,
      ),
    })),
  };
}

interface Seating {
  /** Classes of which a hang was refused on the way. */
  readonly refusing: Set<number>;
  readonly quick: boolean;
}

/**
 * Deals the chosen berths; undefined where a hang is refused so that somebody would go without. Where people mind who
 * is near whom and are not many, groups are laid out in several ways and the cheapest in all is taken.
 */
function seated(input: ChooseInput, found: BerthSearch, seating: Seating): ChosenBerths | undefined {
  const people = claimants(input, found);
  const ways = seating.quick || people.length > MOST_TOLD || !mindsMore(people, input.people) ? 1 : WAYS;
  let best: Dealt | undefined;
  let atLeast = 0;
  for (let way = 0; way < ways; way++) {
    const dealt = dealtOut(input, found, people, { ...seating, way });
    if (dealt === undefined) return undefined;
    // Each way may have proven something; all of it holds for every layout.
    atLeast = Math.max(atLeast, dealt.search.lowerBoundUnits);
    if (best === undefined || dealt.units < best.units || dealt.isLeast) best = dealt;
    if (best.isLeast || best.units <= atLeast + unitsOf(input.pinned, input.costUnits)) break;
  }
  if (best === undefined) return undefined;
  const { placeOf } = best;
  const search = { ...best.search, lowerBoundUnits: atLeast };
  const seats = people.map(({ classIndex, kit }, person) => ({
    place: placeOf[person] ?? -1,
    classIndex,
    kit,
  }));
  if (!allHang(input, seats, seating.refusing)) return undefined;
  seats.sort((a, b) => a.place - b.place);
  const chosen = seats.map(({ place, classIndex }) => ({ place, classIndex }));
  const told = input.people === undefined ? search : withPlaces(search, chosen, input.costUnits);
  const isAll = people.length === input.classes.reduce((sum, { members }) => sum + members.length, 0);
  const layout = withPinned(told, seats, input);
  return best.isLeast && isAll ? { ...layout, leastUnits: best.units } : layout;
}

/** The layout with those who keep their places: they count in every figure. */
export function withPinned(
  search: BerthSearch,
  seats: readonly Seat[],
  input: Pick<ChooseInput, "pinned" | "costUnits">,
): ChosenBerths {
  const { pinned = [], costUnits } = input;
  if (pinned.length === 0) return { search, seats };
  const units = unitsOf(pinned, costUnits);
  const all = [...seats, ...pinned].sort((a, b) => a.place - b.place);
  return {
    search: {
      ...search,
      placed: search.placed + pinned.length,
      bound: search.bound + pinned.length,
      costUnits: search.costUnits + units,
      lowerBoundUnits: search.lowerBoundUnits + units,
      chosen: all.map(({ place, classIndex }) => ({ place, classIndex })),
    },
    seats: all,
  };
}

function unitsOf(seats: readonly Seat[] = [], costUnits: Float64Array): number {
  return seats.reduce((sum, { place }) => sum + (costUnits[place] ?? 0), 0);
}

/** Ways to lay groups out at first. */
const WAYS = 4;

interface Dealt {
  readonly search: BerthSearch;
  /** Place of each claimant. */
  readonly placeOf: Int32Array;
  /** What all that costs, with what is amiss among people. */
  readonly units: number;
  readonly isLeast: boolean;
}

function dealtOut(
  input: ChooseInput,
  found: BerthSearch,
  people: readonly Claimant[],
  seating: Seating & { readonly way: number },
): Dealt | undefined {
  const { search, blocks } = grouped(input, found, people, seating);
  const placeOf = new Int32Array(people.length).fill(-1);
  for (const block of blocks) {
    if (!dealBlock(input, people, block, placeOf, seating)) return undefined;
  }
  if (input.people === undefined) return { search, placeOf, units: search.costUnits, isLeast: false };
  // Who keeps a place is looked at with all others, and moved by nobody: no place is allowed to them.
  const { pinned = [] } = input;
  const everybody = [...people, ...pinned];
  const ofPinned = unitsOf(pinned, input.costUnits);
  const classOf = (person: number): number => everybody[person]?.classIndex ?? -1;
  const wished = placesByWish(
    {
      ...input,
      rules: input.people,
      people: everybody,
      serves: (person, place) => serves(input, classOf(person), place, seating.refusing),
      highestStrapM: (person, place) => input.desk.highestStrapM(classOf(person), place),
      ...(seating.quick ? {} : { atLeast: search.lowerBoundUnits + ofPinned }),
    },
    Int32Array.from([...placeOf, ...pinned.map(({ place }) => place)]),
  );
  return { search, ...wished, placeOf: wished.placeOf.slice(0, people.length) };
}

/** Who is dealt which berths together: everybody, or group by group. Whoever keeps a place counts in the group. */
function grouped(
  input: ChooseInput,
  found: BerthSearch,
  people: readonly Claimant[],
  { quick, way }: Seating & { readonly way: number },
): { readonly search: BerthSearch; readonly blocks: readonly DealBlock[] } {
  const groups = input.people?.groups ?? [];
  const { pinned = [], people: rules, ground, solver, classes } = input;
  const keeping = pinned.map(({ kit }, index) => ({ kit, classIndex: classes.length + index }));
  const { kinds, members } = kindsOf([...people, ...keeping], groups);
  if (!kinds.some(({ group }) => group >= 0)) {
    const everybody = { people: [...people.keys()], places: found.chosen.map(({ place }) => place), hub: -1 };
    return { search: found, blocks: [everybody] };
  }
  const spread = Math.round((rules?.weights?.spread ?? COST_WEIGHTS.spread) * UNITS_PER_M);
  const task = {
    ...besidePinned(searchInput(input), found, pinned, input.costUnits),
    kinds,
    groups,
    spots: ground.places.map(({ middle }) => middle),
    ...(spread > 0 ? { spreadUnitsPerM: spread } : {}),
  };
  const dealt = searchGroups(task, {
    quick: quick || way > 0,
    way,
    ...(solver === undefined ? {} : { solver }),
    ...(rules?.weights === undefined ? {} : { farUnits: Math.round(rules.weights.far * UNITS_PER_M) }),
  });
  const blocks = withoutPinned(blocksOf(task, dealt, members), people.length, pinned);
  const { method, lowerBoundUnits } = dealt.search;
  const ofPinned = task.base.costUnits - found.costUnits;
  return { search: { ...found, method, lowerBoundUnits: lowerBoundUnits - ofPinned }, blocks };
}

function dealBlock(
  input: ChooseInput,
  people: readonly Claimant[],
  block: DealBlock,
  placeOf: Int32Array,
  { refusing }: Seating,
): boolean {
  const { desk, ground } = input;
  const own = block.people.flatMap((person) => people[person] ?? []);
  const classOf = (person: number): number => own[person]?.classIndex ?? -1;
  const placeAt = (berth: number): number => block.places[berth] ?? -1;
  const mayBeThere = (person: number, berth: number): boolean =>
    placeAt(berth) !== block.hub || own[person]?.kit.sleeper.leads === true;
  const berthOf = dealBerths({
    people: own.map(({ kit }) => kit.sleeper),
    places: block.places.flatMap((place) => ground.places[place] ?? []),
    serves: (person, berth) =>
      mayBeThere(person, berth) && serves(input, classOf(person), placeAt(berth), refusing),
    highestStrapM: (person, berth) => desk.highestStrapM(classOf(person), placeAt(berth)),
    effortM: (berth) => input.effortM?.[placeAt(berth)] ?? 0,
  });
  berthOf?.forEach((berth, person) => (placeOf[block.people[person] ?? -1] = placeAt(berth)));
  return berthOf !== undefined;
}

/** Works out every hang in full; notes those that are refused after all. */
export function allHang({ allowed, desk }: Asked, seats: readonly Seat[], refusing: Set<number>): boolean {
  const refused = seats.filter(({ classIndex, place }) => !desk.hangOf(classIndex, place).ok);
  refused.forEach(({ classIndex, place }) => {
    allowed[classIndex]?.fill(0, place, place + 1);
    refusing.add(classIndex);
  });
  return refused.length === 0;
}

/** Who of each class is given a berth: the first of its members; the heaviest claim first. */
function claimants({ classes }: ChooseInput, { chosen }: BerthSearch): Claimant[] {
  const counts = new Int32Array(classes.length);
  chosen.forEach(({ classIndex }) => (counts[classIndex] = (counts[classIndex] ?? 0) + 1));
  const people = classes.flatMap(({ members }, classIndex) =>
    members.slice(0, counts[classIndex]).map((kit) => ({ classIndex, kit })),
  );
  return people.sort((a, b) => b.kit.sleeper.massKg - a.kit.sleeper.massKg || a.classIndex - b.classIndex);
}

export function serves(
  { allowed, desk }: Asked,
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
