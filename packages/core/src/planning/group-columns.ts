import { ruleRows } from "./berth-search-program.ts";
import { searchModel } from "./berth-search-model.ts";
import { costOf, isNear, searchAroundHubs, spreadUnits, type Hub } from "./group-around-hubs.ts";
import { masterPrices, wholeColumns } from "./group-column-master.ts";
import { ballsOf, pricedColumns, type Ball } from "./group-column-pricing.ts";
import type { ColumnSort, ColumnTask, GroupColumn, MasterPrices } from "./group-column-types.ts";
import { hubKinds, layoutWorth, type GroupLayout } from "./group-layout.ts";
import { conflictLists } from "./group-part.ts";
import type { GroupSearchInput, GroupSeat } from "./group-types.ts";
import { leastCostAssignment } from "./least-cost-assignment.ts";
import type { LinearSolver } from "./linear-solver.ts";

export interface ColumnOptions {
  readonly solver: LinearSolver;
  readonly farUnits: number;
  /** Where to stop: no layout costs less. */
  readonly goal: number;
}

/** A layout, and what no layout with everybody within reach costs less than; and none with anybody out of it. */
export interface ColumnSearch {
  readonly layout: GroupLayout;
  readonly bound: number;
  readonly ofAll: number;
}

/**
 * The best layout of groups with small circles, by columns: each column is a whole group, hub and places. The program over
 * some columns prices the rows; at these prices the best group round each hub is searched by itself, and comes in as a column
 * where it pays less. When none does, the program's relaxation is that of all groups there could be.
 *
 *   bound at any prices y ≤ 0   Σ y · upper + Σ sorts (groups · least that one pays) + cheapest places of those of no group
 *
 * At the end the best of the columns is chosen in whole numbers, and the berths round its hubs are searched with the
 * names of groups and with who may lie where.
 *
 * Holds    prices between the last and the best so far are tried first; limited by the balls that are searched
 * Error    the bound is worked out from prices alone, each group with whoever of all people suits a place best
 * Source   layout-search (handbook/layout.md: groups)
 */
export function searchGroupColumns(
  input: GroupSearchInput,
  known: GroupLayout,
  options: ColumnOptions,
): ColumnSearch | undefined {
  const task = columnTask(input, known);
  const balls = ballsOfSorts(input, task);
  if (balls === undefined) return undefined;
  const columns = columnsOf(input, task, known);
  const bounds = generate(task, balls, columns, { ...options, worth: known.worth });
  if (bounds === undefined) return undefined;
  const { bound, ofAll } = bounds;
  if (bound >= known.worth) return { layout: known, bound: known.worth, ofAll: Math.min(ofAll, known.worth) };
  const chosen = wholeColumns(task, columns, lackOf(task, options), options.solver);
  const layout = chosen === undefined ? known : named(input, task, chosen, known, options);
  return { layout, bound: Math.min(bound, layout.worth), ofAll: Math.min(ofAll, layout.worth) };
}

/** Places within reach of a hub up to which balls are searched, on average, and how many balls in all. */
const MOST_IN_BALL = 30;
const MOST_SEARCHED = 25_000;
const MOST_ROUNDS = 60;

/** How far towards the prices with the best bound so far. */
const STEADY = 0.6;

/** More than any group could save by not being there. */
function lackOf({ sorts }: ColumnTask, { goal, farUnits }: Pick<ColumnOptions, "goal" | "farUnits">): number {
  const largest = sorts.reduce((most, { size }) => Math.max(most, size), 0);
  return 2 * (goal + farUnits * largest) + 1;
}

function columnTask(input: GroupSearchInput, known: GroupLayout): ColumnTask {
  const { search, kinds } = input;
  const classes = [...new Set(kinds.flatMap(({ classIndex, people }) => (people > 0 ? [classIndex] : [])))];
  const cost = Float64Array.from(search.places, (_, place) =>
    classes.reduce((least, one) => {
      const units = search.classes[one]?.costUnits[place] ?? -1;
      return units < 0 ? least : Math.min(least, units);
    }, Infinity),
  );
  const costUnits = cost.map((units) => (units === Infinity ? -1 : units));
  const model = searchModel({ ...search, classes: [{ people: known.seats.length, costUnits }] });
  const rules = ruleRows(model).map(({ columns, upper }) => ({
    columns: Array.from(columns, (column) => model.columnPlace[column] ?? -1),
    upper,
  }));
  // Two groups may want a place that nothing excludes, and that no clique therefore guards.
  const guarded = new Set(rules.flatMap(({ columns, upper }) => (upper <= 1 ? columns : [])));
  for (const place of search.places.keys())
    if (!guarded.has(place)) rules.push({ columns: [place], upper: 1 });
  const rulesOf: number[][] = search.places.map(() => []);
  rules.forEach(({ columns }, rule) => columns.forEach((place) => rulesOf[place]?.push(rule)));
  const present = new Set(known.hubs.map(({ group }) => group));
  const free = kinds.reduce((sum, { group, people }) => sum + (present.has(group) ? 0 : people), 0);
  return { sorts: sortsOf(input, [...present]), free, cost, rules, rulesOf };
}

function sortsOf({ groups, kinds }: GroupSearchInput, present: readonly number[]): ColumnSort[] {
  const sorts = new Map<string, { readonly groups: number[]; readonly size: number }>();
  for (const group of present) {
    const size = kinds.reduce((sum, kind) => sum + (kind.group === group ? kind.people : 0), 0);
    const key = `${groups[group]?.withinM ?? 0} ${size}`;
    const sort = sorts.get(key);
    if (sort === undefined) sorts.set(key, { groups: [group], size });
    else sort.groups.push(group);
  }
  return [...sorts.values()];
}

/** The balls of each sort; undefined where they are so large that each would take long. */
function ballsOfSorts(input: GroupSearchInput, { sorts, cost }: ColumnTask): Ball[][] | undefined {
  const links = conflictLists(input);
  const all = sorts.map(({ groups }) => {
    const [first = -1] = groups;
    const leading = groups.flatMap((group) => hubKinds(input, group));
    const hubs = [...cost.keys()].filter((place) => leading.some((kind) => costOf(input, kind, place) >= 0));
    const step = Math.max(1, Math.floor(hubs.length / LOOKED_AT));
    const some = hubs.filter((_, at) => at % step === 0);
    const near = some.map((hub) => [...cost.keys()].filter((place) => isNear(input, first, place, hub)));
    const mean = near.reduce((sum, { length }) => sum + length, 0) / Math.max(1, some.length);
    return mean > MOST_IN_BALL ? undefined : ballsOf(input, links, first, cost, hubs);
  });
  const balls = all.flatMap((one) => (one === undefined ? [] : [one]));
  return balls.length === all.length && all.length > 0 ? balls : undefined;
}

/** Hubs by which it is told how large balls are. */
const LOOKED_AT = 40;

/** The groups of the layout known that lie within reach of their hubs. */
function columnsOf(input: GroupSearchInput, task: ColumnTask, known: GroupLayout): GroupColumn[] {
  return known.hubs.flatMap(({ group, place: hub }): GroupColumn[] => {
    const sort = task.sorts.findIndex(({ groups }) => groups.includes(group));
    const own = known.seats.filter(({ kind }) => input.kinds[kind]?.group === group);
    if (!own.every(({ place }) => isNear(input, group, place, hub))) return [];
    const places = own.map(({ place }) => place);
    const units = places.reduce(
      (sum, place) => sum + (task.cost[place] ?? 0) + spreadUnits(input, place, hub),
      0,
    );
    return [{ sort, hub, places, units }];
  });
}

interface Bounds {
  readonly bound: number;
  readonly ofAll: number;
}

/** Adds columns for as long as some pay less; the best bounds of all prices tried. */
function generate(
  task: ColumnTask,
  balls: readonly (readonly Ball[])[],
  columns: GroupColumn[],
  { solver, farUnits, goal, worth }: ColumnOptions & { readonly worth: number },
): Bounds | undefined {
  const seen = new Set(columns.map(keyOf));
  let best: { readonly bound: number; readonly rules: Float64Array } | undefined;
  let ofAll = goal;
  let searched = 0;
  for (let round = 0; round < MOST_ROUNDS && searched < MOST_SEARCHED; round++) {
    const prices = masterPrices(task, columns, lackOf(task, { goal, farUnits }), solver);
    if (prices === undefined) return undefined;
    if (best !== undefined && prices.units - best.bound <= CLOSE * prices.units) break;
    let added = 0;
    for (const steady of best === undefined ? [0] : [STEADY, 0]) {
      const rules = between(prices.rules, best?.rules, steady);
      const looked = pricedAt(task, balls, { ...prices, rules }, { solver, farUnits });
      ofAll = Math.max(ofAll, Math.ceil(looked.ofAll - SLACK));
      searched += looked.searched;
      if (best === undefined || looked.bound > best.bound) best = { bound: looked.bound, rules };
      for (const column of looked.columns) {
        if (seen.has(keyOf(column))) continue;
        seen.add(keyOf(column));
        columns.push(column);
        added++;
      }
      if (added > 0) break;
    }
    if (added === 0 || (best !== undefined && best.bound >= worth)) break;
  }
  enrich(task, balls, columns, seen, { solver, farUnits, goal });
  return best === undefined ? undefined : { bound: Math.max(goal, Math.ceil(best.bound - SLACK)), ofAll };
}

/** More columns, that pay a little more: a whole choice may need them. */
function enrich(
  task: ColumnTask,
  balls: readonly (readonly Ball[])[],
  columns: GroupColumn[],
  seen: Set<string>,
  tools: ColumnOptions,
): void {
  const prices = masterPrices(task, columns, lackOf(task, tools), tools.solver);
  if (prices === undefined) return;
  const sorts = prices.sorts.map((paid) => paid + A_LITTLE * prices.units);
  for (const column of pricedAt(task, balls, { ...prices, sorts }, tools).columns) {
    if (seen.has(keyOf(column))) continue;
    seen.add(keyOf(column));
    columns.push(column);
  }
}

/** Share of the relaxation. */
const A_LITTLE = 0.01;

const SLACK = 1e-3;

/** Share of the relaxation by which the bound may fall short of it for no more columns to be looked for. */
const CLOSE = 0.001;

function keyOf({ sort, hub, places }: GroupColumn): string {
  return `${sort} ${hub} ${[...places].sort((a, b) => a - b).join(" ")}`;
}

function between(last: Float64Array, best: Float64Array | undefined, steady: number): Float64Array {
  return best === undefined ? last : last.map((price, at) => (1 - steady) * price + steady * (best[at] ?? 0));
}

/** New columns at these prices, and the bound that holds for any. */
function pricedAt(
  task: ColumnTask,
  balls: readonly (readonly Ball[])[],
  { rules, sorts }: MasterPrices,
  tools: Pick<ColumnOptions, "solver" | "farUnits">,
): Bounds & { readonly columns: readonly GroupColumn[]; readonly searched: number } {
  const priced = task.cost.map((units, place) =>
    Math.floor((task.rulesOf[place] ?? []).reduce((sum, rule) => sum - (rules[rule] ?? 0), units)),
  );
  const found = task.sorts.map((_, sort) =>
    pricedColumns(task, sort, balls[sort] ?? [], { ...tools, priced, paid: sorts[sort] ?? 0 }),
  );
  const ofRules = task.rules.reduce((sum, { upper }, rule) => sum + upper * (rules[rule] ?? 0), 0);
  const ofFree = priced
    .slice()
    .sort()
    .slice(0, task.free)
    .reduce((sum, units) => sum + units, 0);
  const count = (sort: number): number => task.sorts[sort]?.groups.length ?? 0;
  const ofSorts = found.reduce((sum, { least }, sort) => sum + least * count(sort), 0);
  const ofAllSorts = found.reduce((sum, { leastOfAll }, sort) => sum + leastOfAll * count(sort), 0);
  return {
    columns: found.flatMap((one) => one.columns),
    bound: ofRules + ofFree + ofSorts,
    ofAll: ofRules + ofFree + ofAllSorts,
    searched: found.reduce((sum, one) => sum + one.searched, 0),
  };
}

/** The columns with the names of groups, each sort in turn, and who lies there; the layout known where it is no better. */
function named(
  input: GroupSearchInput,
  { sorts }: ColumnTask,
  chosen: readonly GroupColumn[],
  known: GroupLayout,
  { solver, farUnits }: ColumnOptions,
): GroupLayout {
  const given = sorts.flatMap(({ groups }, sort) => {
    const own = chosen.filter((column) => column.sort === sort);
    return groups.map((group, at) => ({ group, column: own[at] }));
  });
  const hubs = given.flatMap(({ group, column }): Hub[] => {
    const place = column?.hub ?? -1;
    const kind = hubKinds(input, group).find((one) => costOf(input, one, place) >= 0);
    return kind === undefined ? [] : [{ group, place, kind }];
  });
  if (hubs.length < known.hubs.length) return known;
  const seats = given.flatMap(({ group, column }) => seatsIn(input, group, hubs, column?.places ?? []));
  const found = [searchAroundHubs(input, hubs, { solver }).seats, seats];
  const layouts = found
    .filter(({ length }) => length === known.seats.length)
    .map((own): GroupLayout => ({ hubs, seats: own, worth: layoutWorth(input, hubs, own, farUnits) }));
  return layouts.reduce((best, layout) => (layout.worth < best.worth ? layout : best), known);
}

/** The people of one group at the places of its column; nobody where they do not all suit. */
function seatsIn(
  input: GroupSearchInput,
  group: number,
  hubs: readonly Hub[],
  places: readonly number[],
): GroupSeat[] {
  const hub = hubs.find((one) => one.group === group);
  if (hub === undefined) return [];
  const beside = places.filter((place) => place !== hub.place);
  const people = [...input.kinds.keys()].flatMap((kind) => {
    const { group: of, people: count = 0 } = input.kinds[kind] ?? {};
    return of === group ? Array.from({ length: count - (kind === hub.kind ? 1 : 0) }, () => kind) : [];
  });
  const cost = (person: number, at: number): number => {
    const units = costOf(input, people[person] ?? -1, beside[at] ?? -1);
    return units < 0 ? Infinity : units;
  };
  const placeOf = leastCostAssignment({ rows: people.length, columns: beside.length, cost });
  if (placeOf === undefined) return [];
  return [
    { place: hub.place, kind: hub.kind },
    ...people.map((kind, person) => ({ kind, place: beside[placeOf[person] ?? -1] ?? -1 })),
  ];
}
