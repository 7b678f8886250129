import type { BerthSearch } from "../berth-search-types.ts";
import { searchBerths } from "../berth-search.ts";
import {
  allHang,
  askEverywhere,
  serves,
  withPinned,
  type ChooseInput,
  type ChosenBerths,
  type Seat,
  searchInput,
} from "../choose-berths.ts";
import { dealBerths } from "../deal-berths.ts";
import type { DealtKit } from "../dealt-kit.ts";

export interface RepairChoice extends ChosenBerths {
  /** Whether with as many placed nobody fewer can be moved. */
  readonly fewest: boolean;
}

/**
 * Chooses berths so that as many are placed as can be, fewest of those who had a berth move, and then for least cost.
 *
 *   least Σ cost + move · (places not held by somebody of the class)   at the most that can be placed
 *
 * People of a class may lie at the same places, so whoever held a place that their class keeps lies there still: the
 * search runs on classes all the same, and a class keeps a place exactly where a person does. A move costs more than
 * all places together.
 *
 * Shapes   `held`: place before, by sleeper; classes × places as in the search → seats sorted by place
 * Holds    costs of the layout without the price of moving; groups and wishes are not looked at
 * Error    none where `fewest` and `proven`
 * Source   layout-search (handbook/planning.md: repair)
 */
export function chooseRepair(input: ChooseInput, held: ReadonlyMap<string, number>): RepairChoice {
  const keeps = heldByClass(input, held);
  for (;;) {
    const people = input.classes.reduce((sum, { members }) => sum + members.length, 0);
    const moveUnits = 1 + people * input.costUnits.reduce((most, cost) => Math.max(most, cost), 0);
    const search = searchBerths(
      searchInput(input, (units, place, index) =>
        keeps[index]?.has(place) === true ? units : units + moveUnits,
      ),
      input.solver === undefined ? {} : { solver: input.solver },
    );
    const refusing = new Set<number>();
    const seats = seated(input, search, keeps, refusing);
    if (seats !== undefined && allHang(input, seats, refusing)) {
      const fewest =
        search.placed === search.bound &&
        Math.floor(search.lowerBoundUnits / moveUnits) === Math.floor(search.costUnits / moveUnits);
      return { ...withPinned(costed(input, search, seats), seats, input), fewest };
    }
    if (refusing.size === 0) throw new Error("berths that serve everybody could not be dealt out");
    askEverywhere(input, refusing);
  }
}

/** Who of each class held which place. */
type Keeps = readonly ReadonlyMap<number, DealtKit>[];

function heldByClass({ classes }: ChooseInput, held: ReadonlyMap<string, number>): Keeps {
  return classes.map(
    ({ members }) =>
      new Map(
        members.flatMap((kit) => {
          const place = held.get(kit.sleeper.id);
          return place === undefined ? [] : [[place, kit] as const];
        }),
      ),
  );
}

/** Whoever keeps a place first; the others are dealt what is left, those first who had a berth before. */
function seated(
  input: ChooseInput,
  search: BerthSearch,
  keeps: Keeps,
  refusing: Set<number>,
): Seat[] | undefined {
  const kept: Seat[] = [];
  const open: number[] = [];
  const wanting = new Int32Array(input.classes.length);
  for (const { place, classIndex } of search.chosen) {
    const kit = keeps[classIndex]?.get(place);
    if (kit !== undefined) kept.push({ place, classIndex, kit });
    else {
      open.push(place);
      wanting[classIndex] = (wanting[classIndex] ?? 0) + 1;
    }
  }
  const staying = new Set(kept.map(({ kit }) => kit));
  const movers = input.classes.flatMap(({ members }, classIndex) => {
    const had = new Set(keeps[classIndex]?.values());
    const left = members.filter((kit) => !staying.has(kit));
    const inTurn = [...left.filter((kit) => had.has(kit)), ...left.filter((kit) => !had.has(kit))];
    return inTurn.slice(0, wanting[classIndex]).map((kit) => ({ classIndex, kit }));
  });
  const classOf = (mover: number): number => movers[mover]?.classIndex ?? -1;
  const berthOf = dealBerths({
    people: movers.map(({ kit }) => kit.sleeper),
    places: open.flatMap((place) => input.ground.places[place] ?? []),
    serves: (mover, berth) => serves(input, classOf(mover), open[berth] ?? -1, refusing),
    highestStrapM: (mover, berth) => input.desk.highestStrapM(classOf(mover), open[berth] ?? -1),
    effortM: (berth) => input.effortM?.[open[berth] ?? -1] ?? 0,
  });
  if (berthOf === undefined) return undefined;
  const dealt = movers.map((mover, at) => ({ ...mover, place: open[berthOf[at] ?? -1] ?? -1 }));
  return [...kept, ...dealt].sort((a, b) => a.place - b.place);
}

/** The search without the price of moving. */
function costed({ costUnits }: ChooseInput, search: BerthSearch, seats: readonly Seat[]): BerthSearch {
  const cost = seats.reduce((sum, { place }) => sum + (costUnits[place] ?? 0), 0);
  return {
    ...search,
    costUnits: cost,
    lowerBoundUnits: 0,
    proven: false,
    chosen: seats.map(({ place, classIndex }) => ({ place, classIndex })),
  };
}
