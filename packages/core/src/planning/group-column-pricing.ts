import { listOf, type Lists } from "./berth-search-lists.ts";
import { searchBerths } from "./berth-search.ts";
import type { BerthSearchInput } from "./berth-search-types.ts";
import type { ColumnTask, GroupColumn } from "./group-column-types.ts";
import { isNear, spreadUnits } from "./group-around-hubs.ts";
import { partOf } from "./group-part.ts";
import type { GroupSearchInput } from "./group-types.ts";
import type { LinearSolver } from "./linear-solver.ts";

/** The places that may be used beside a hub, and the search over them. */
export interface Ball {
  readonly hub: number;
  readonly places: readonly number[];
  readonly search: Omit<BerthSearchInput, "classes">;
  /** Ways to the hub [units]. */
  readonly ways: readonly number[];
}

/** One ball for each place that may be the hub of a group, with all within its reach that goes together with it. */
export function ballsOf(
  input: GroupSearchInput,
  links: Lists,
  group: number,
  cost: Float64Array,
  hubs: readonly number[],
): Ball[] {
  const { search } = input;
  const usable = [...cost.keys()].filter((place) => cost[place] !== Infinity);
  return hubs.map((hub) => {
    const excluded = new Set(listOf(links, hub));
    const places = usable.filter(
      (place) => place !== hub && !excluded.has(place) && isNear(input, group, place, hub),
    );
    const capacities = search.capacities?.slice() ?? new Int32Array(search.trees).fill(search.capacity);
    const { first = -1, second = -1 } = search.places[hub] ?? {};
    for (const tree of [first, second]) capacities[tree] = (capacities[tree] ?? 0) - 1;
    const part = partOf(search, links, places, capacities).search;
    return { hub, places, search: part, ways: places.map((place) => spreadUnits(input, place, hub)) };
  });
}

export interface Priced {
  readonly columns: readonly GroupColumn[];
  /** No group of the sort pays less at these prices, with all within reach; and with some out of it at their price. */
  readonly least: number;
  readonly leastOfAll: number;
  /** How many balls were searched. */
  readonly searched: number;
}

/**
 * Columns of one sort that pay less at these prices than `paid`, and the least that any pays.
 *
 * Balls are taken in order of their cheapest places, whatever excludes what, as long as that pays less.
 */
export function pricedColumns(task: ColumnTask, sort: number, balls: readonly Ball[], at: PricedAt): Priced {
  const beside = (task.sorts[sort]?.size ?? 1) - 1;
  const guessed = balls
    .map((ball) => ({ ball, units: guess(ball, beside, at.priced) }))
    .filter(({ units }) => units < Infinity)
    .sort((a, b) => a.units - b.units || a.ball.hub - b.ball.hub);
  let least = Infinity;
  let searched = 0;
  const columns: GroupColumn[] = [];
  for (const { ball, units } of guessed) {
    if (units >= at.paid || searched === MOST_A_ROUND) {
      least = Math.min(least, units);
      break;
    }
    searched++;
    const found = bestIn(task, sort, ball, beside, at);
    if (found === undefined) continue;
    least = Math.min(least, found.least);
    if (found.column !== undefined) columns.push(found.column);
  }
  return { columns, searched, least, leastOfAll: Math.min(least, leastBeyond(balls, beside, at)) };
}

export interface PricedAt {
  /** Of each place [units]. */
  readonly priced: Float64Array;
  /** What a group of the sort pays. */
  readonly paid: number;
  /** Price of one who lies out of reach. */
  readonly farUnits: number;
  readonly solver: LinearSolver;
}

/** Balls searched for one sort at one set of prices. */
const MOST_A_ROUND = 2000;

/** The least of a group of whom somebody lies out of reach, at the cheapest place there is: whatever excludes what. */
function leastBeyond(balls: readonly Ball[], beside: number, { priced, farUnits }: PricedAt): number {
  const cheapest = priced.reduce((least, units) => Math.min(least, units), Infinity);
  let least = Infinity;
  for (let within = beside - 1; within >= 0; within--) {
    const beyond = (beside - within) * (farUnits + cheapest);
    for (const ball of balls) least = Math.min(least, beyond + guess(ball, within, priced));
  }
  return least;
}

/** The hub and the cheapest places beside it; ∞ where there are too few. */
function guess({ hub, places, ways }: Ball, beside: number, priced: Float64Array): number {
  if (places.length < beside) return Infinity;
  const costs = Float64Array.from(places, (place, at) => (priced[place] ?? 0) + (ways[at] ?? 0)).sort();
  let units = priced[hub] ?? 0;
  for (let at = 0; at < beside; at++) units += costs[at] ?? 0;
  return units;
}

/** The best group round one hub at these prices; undefined where it has no room. */
function bestIn(
  task: ColumnTask,
  sort: number,
  { hub, places, search, ways }: Ball,
  beside: number,
  { priced, solver }: PricedAt,
): { readonly least: number; readonly column: GroupColumn | undefined } | undefined {
  const costUnits = Float64Array.from(places, (place, at) => (priced[place] ?? 0) + (ways[at] ?? 0));
  const found = searchBerths({ ...search, classes: [{ people: beside, costUnits }] }, { solver });
  if (found.bound < beside) return undefined;
  const least = (priced[hub] ?? 0) + found.lowerBoundUnits;
  if (found.placed < beside) return { least, column: undefined };
  const own = found.chosen.map(({ place }) => place);
  const units = own.reduce(
    (sum, at) => sum + (task.cost[places[at] ?? -1] ?? 0) + (ways[at] ?? 0),
    task.cost[hub] ?? 0,
  );
  return { least, column: { sort, hub, places: [hub, ...own.map((at) => places[at] ?? -1)], units } };
}
