import { ruleRows, peopleRows, programOf, type SearchRow } from "./berth-search-program.ts";
import { searchModel, type SearchModel } from "./berth-search-model.ts";
import { dualBound } from "./dual-bound.ts";
import { costOf, isNear, searchAroundHubs, type Hub, type SubSearch } from "./group-around-hubs.ts";
import { diveForHubs, wholeHubs, type FoundHub } from "./group-hub-dive.ts";
import { hubColumns, type HubSort, type HubTask } from "./group-hub-program.ts";
import { hubKinds, layoutWorth, type GroupLayout } from "./group-layout.ts";
import type { GroupSearchInput } from "./group-types.ts";
import type { LinearSolver } from "./linear-solver.ts";

/** Some groups that look for hubs anew, where, and what they cost now. */
export interface HubPart {
  readonly part: SubSearch;
  readonly groups: readonly number[];
  /** What their seats cost now, people out of reach included. */
  readonly worth: number;
}

export interface HubSearch {
  /** No layout of these groups in this part costs less. */
  readonly bound: number;
  /** Cheaper hubs and seats of these groups, where some were found. */
  readonly better: Omit<GroupLayout, "worth"> | undefined;
  /** Columns over all programs that were solved: what it took. */
  readonly columns: number;
  readonly isTooLarge: boolean;
}

export interface HubSearchOptions {
  readonly solver: LinearSolver;
  readonly farUnits: number;
  /** Columns of a program up to which it is tried, and over all that are solved in turn. */
  readonly mostColumns: number;
  readonly mostWork: number;
  /** Solve a small program in whole numbers too, where the dive comes to nothing. */
  readonly wholeToo?: boolean;
}

/**
 * Looks for better hubs of some groups by the hub program; all else stays.
 *
 * First the places are left out that no cheaper layout can use, by the prices of the relaxation without groups.
 *
 * Holds    nothing is looked for where the program would have more columns than `mostColumns`
 * Source   layout-search (handbook/layout.md: groups)
 */
export function searchHubs(
  input: GroupSearchInput,
  { part, groups, worth }: HubPart,
  options: HubSearchOptions,
): HubSearch {
  const { solver } = options;
  const people = peopleOf(input, part);
  const cheapest = cheapestOf(input, part);
  const { model, rules } = oneClass(part, cheapest, people);
  const usable = usablePlaces(model, rules, worth, solver);
  const nothing = { bound: usable.bound, better: undefined, columns: 0, isTooLarge: false };
  if (usable.bound >= worth || usable.places === undefined) return nothing;
  const sorts = byRadius(input, groups);
  const task = taskOf(input, part, sorts, cheapest, { model, rules, places: usable.places });
  const size = hubColumns(task);
  if (size > options.mostColumns) return { ...nothing, isTooLarge: true };
  const mostSolves = Math.max(1, Math.floor(options.mostWork / size));
  const dive = diveForHubs(task, { ceilingUnits: worth, mostSolves, solver });
  const bound = Math.max(usable.bound, dive.bound);
  const looked = { ...nothing, bound, columns: size * dive.solves };
  if (bound >= worth) return looked;
  const better = laidOut(input, { part, worth, people }, named(input, part, sorts, dive.hubs), options);
  if (better !== undefined) return { ...looked, better };
  if (options.wholeToo !== true) return looked;
  let found: HubSearch = looked;
  for (const way of [sorts, bySize(input, sorts)]) {
    const whole = taskOf(input, part, way, cheapest, { model, rules, places: usable.places });
    const columns = found.columns + hubColumns(whole) * WHOLE_SOLVES;
    if (hubColumns(whole) > MOST_WHOLE_COLUMNS || columns > options.mostWork) break;
    const solved = wholeHubs(whole, solver);
    const hubs = named(input, part, way, solved.hubs);
    const bettered = laidOut(input, { part, worth, people }, hubs, options);
    found = { ...found, bound: Math.max(found.bound, solved.bound), better: bettered, columns };
    if (bettered !== undefined || found.bound >= worth) break;
  }
  return found;
}

/** Columns up to which a program is solved in whole numbers where the dive came to nothing: a few seconds. */
const MOST_WHOLE_COLUMNS = 1500;

/** How many relaxations a solve in whole numbers counts for. */
const WHOLE_SOLVES = 20;

interface Asked {
  readonly part: SubSearch;
  readonly worth: number;
  readonly people: number;
}

/** Who lies round these hubs, where all do and it costs less than now. */
function laidOut(
  input: GroupSearchInput,
  { part, worth, people }: Asked,
  hubs: readonly Hub[] | undefined,
  { solver, farUnits }: HubSearchOptions,
): HubSearch["better"] {
  if (hubs === undefined) return undefined;
  const { seats } = searchAroundHubs(input, hubs, { solver, within: part });
  const isBetter = seats.length === people && layoutWorth(input, hubs, seats, farUnits) < worth;
  return isBetter ? { hubs, seats } : undefined;
}

function placesOf({ search, places }: SubSearch): readonly number[] {
  return places ?? [...search.places.keys()];
}

function peopleOf({ kinds }: GroupSearchInput, part: SubSearch): number {
  return [...part.kinds].reduce((sum, kind) => sum + (kinds[kind]?.people ?? 0), 0);
}

/** For each place of the part what it costs whoever of the part it suits best; ∞ for nobody. */
function cheapestOf(input: GroupSearchInput, part: SubSearch): Float64Array {
  const classes = [...new Set([...part.kinds].map((kind) => input.kinds[kind]?.classIndex ?? -1))];
  return Float64Array.from(placesOf(part), (place) =>
    classes.reduce((least, one) => {
      const units = input.search.classes[one]?.costUnits[place] ?? -1;
      return units < 0 ? least : Math.min(least, units);
    }, Infinity),
  );
}

/** The part for people all alike, who can be wherever anybody of it can. */
function oneClass(
  part: SubSearch,
  cheapest: Float64Array,
  people: number,
): { readonly model: SearchModel; readonly rules: readonly SearchRow[] } {
  const costUnits = cheapest.map((units) => (units === Infinity ? -1 : units));
  const model = searchModel({ ...part.search, classes: [{ people, costUnits }] });
  return { model, rules: ruleRows(model) };
}

/** Places that a cheaper layout may use, and the bound of the relaxation without groups. */
function usablePlaces(
  model: SearchModel,
  rules: readonly SearchRow[],
  worth: number,
  solver: LinearSolver,
): { readonly bound: number; readonly places: ReadonlySet<number> | undefined } {
  const { program } = programOf(model.columnCost, [...rules, ...peopleRows(model, model.asked)]);
  const solved = solver.solve(program, { integral: false, presolve: false });
  if (!solved.ok || solved.value.status !== "optimal") return { bound: -Infinity, places: undefined };
  const dual = dualBound(program, solved.value.duals ?? new Float64Array(program.rows));
  const room = worth - 1 - dual.bound + BOUND_SLACK;
  const places = [...model.columnPlace].filter((_, column) => (dual.reduced[column] ?? 0) <= room);
  return { bound: Math.ceil(dual.bound - BOUND_SLACK), places: new Set(places) };
}

const BOUND_SLACK = 1e-6;

function taskOf(
  input: GroupSearchInput,
  part: SubSearch,
  sorts: readonly (readonly number[])[],
  cheapest: Float64Array,
  usable: {
    readonly model: SearchModel;
    readonly rules: readonly SearchRow[];
    readonly places: ReadonlySet<number>;
  },
): HubTask {
  const kept = [...usable.places].sort((a, b) => a - b);
  return {
    cost: cheapest.map((units, at) => (usable.places.has(at) ? units : Infinity)),
    sorts: sorts.map((groups) => sortOf(input, placesOf(part), groups, kept)),
    rules: usable.rules.map(({ columns, lower, upper }) => ({
      columns: columns.map((column) => usable.model.columnPlace[column] ?? -1),
      lower,
      upper,
    })),
    free: [...part.kinds].reduce((sum, kind) => {
      const { group = -1, people = 0 } = input.kinds[kind] ?? {};
      return sum + (group < 0 ? people : 0);
    }, 0),
  };
}

/** Groups of one radius. `kept`: which of the places of the part may be used. */
function sortOf(
  input: GroupSearchInput,
  all: readonly number[],
  groups: readonly number[],
  kept: readonly number[],
): HubSort {
  const [first = -1] = groups;
  const leading = groups.flatMap((group) => hubKinds(input, group));
  const reached: Int32Array[] = all.map(() => new Int32Array(0));
  for (const at of kept) {
    const hub = all[at] ?? -1;
    reached[at] = Int32Array.from(kept.filter((other) => isNear(input, first, all[other] ?? -1, hub)));
  }
  return {
    mayBeHub: Uint8Array.from(all, (place) =>
      leading.some((kind) => costOf(input, kind, place) >= 0) ? 1 : 0,
    ),
    reached,
    sizes: groups.map((group) => sizeOf(input, group)),
  };
}

/** Groups of one radius and one size together: sizes can then not be mixed, at the price of more columns. */
function bySize(input: GroupSearchInput, sorts: readonly (readonly number[])[]): number[][] {
  return sorts.flatMap((groups) => {
    const sizes = [...new Set(groups.map((group) => sizeOf(input, group)))];
    return sizes.map((size) => groups.filter((group) => sizeOf(input, group) === size));
  });
}

/** Groups of one radius together, in the order of the first of each. */
function byRadius({ groups: all }: GroupSearchInput, groups: readonly number[]): number[][] {
  const sorts = new Map<number, number[]>();
  for (const group of groups) {
    const radius = all[group]?.withinM ?? 0;
    const list = sorts.get(radius);
    if (list === undefined) sorts.set(radius, [group]);
    else list.push(group);
  }
  return [...sorts.values()];
}

function sizeOf({ kinds }: GroupSearchInput, group: number): number {
  return kinds.reduce((sum, kind) => sum + (kind.group === group ? kind.people : 0), 0);
}

/** Hubs with the names of groups: of each sort the largest group has the hub with most people round it, and so on. */
function named(
  input: GroupSearchInput,
  part: SubSearch,
  sorts: readonly (readonly number[])[],
  found: readonly FoundHub[] | undefined,
): Hub[] | undefined {
  if (found === undefined) return undefined;
  const all = placesOf(part);
  const hubs = sorts.flatMap((groups, sort) => {
    const own = found.filter((one) => one.sort === sort);
    const order = [...groups].sort((a, b) => sizeOf(input, b) - sizeOf(input, a) || a - b);
    return order.flatMap((group, at): Hub[] => {
      const place = all[own[at]?.place ?? -1];
      if (place === undefined) return [];
      const kind = hubKinds(input, group).find((one) => costOf(input, one, place) >= 0);
      return kind === undefined ? [] : [{ group, place, kind }];
    });
  });
  return hubs.length === sorts.flat().length ? hubs : undefined;
}
