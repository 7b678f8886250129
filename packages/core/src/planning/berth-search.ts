import { simpleBounds } from "./berth-search-bounds.ts";
import { searchBySolver } from "./berth-search-by-solver.ts";
import { dealPlaces } from "./berth-search-deal.ts";
import { columnsByCost, takeInOrder } from "./berth-search-greedy.ts";
import { searchModel, type SearchModel } from "./berth-search-model.ts";
import { searchNearby } from "./berth-search-nearby.ts";
import { searchParts } from "./berth-search-parts.ts";
import { recheckLayout } from "./berth-search-recheck.ts";
import type { SearchBounds, SearchState } from "./berth-search-state.ts";
import type { BerthSearch, BerthSearchInput } from "./berth-search-types.ts";
import type { LinearSolver } from "./linear-solver.ts";

export interface BerthSearchTools {
  readonly solver?: LinearSolver;
  /** Told of the first layout and of each better one; the last is the answer. */
  readonly onIncumbent?: (search: BerthSearch) => void;
  /** Layouts that cost more are of no use: where a bound shows that all do, the search ends with the first one. */
  readonly ceilingUnits?: number;
}

/**
 * Chooses berths: as many sleepers as possible, then for the least total cost, with a proof or a gap.
 *
 *   most Σ x, then least Σ c·x   with x 0 or 1,
 *   Σ x ≤ 1 in each clique of places that exclude each other, Σ x ≤ capacity at each tree,
 *   Σ x ≤ people in each class
 *
 * Shapes   places × classes in, one (place, class) for each sleeper placed out, sorted by place
 * Units    costs in whole units of the caller's choice; all bounds are proven in those units
 * Holds    whole costs ≥ 0 (−1: not allowed), conflicts between two different places
 * Error    none where `proven`; else `bound` and `lowerBoundUnits` say how far at most
 * Source   layout-search (handbook/layout.md)
 */
export function searchBerths(input: BerthSearchInput, tools: BerthSearchTools = {}): BerthSearch {
  const model = searchModel(input);
  const tell = (state: SearchState): BerthSearch => {
    const search = resultOf(input, model, state);
    tools.onIncumbent?.(search);
    return search;
  };
  if (model.columns === 0 || model.asked === 0) {
    return tell({ columns: new Int32Array(0), bound: 0, lowerBound: 0, method: "nothing to place" });
  }
  const columns = takeInOrder(model, columnsByCost(model));
  tell({ columns, bound: Math.min(model.asked, model.places), lowerBound: 0, method: "local search" });
  return tell(searched(model, columns, tools));
}

function searched(
  model: SearchModel,
  start: Int32Array,
  { solver, ceilingUnits = Infinity }: BerthSearchTools,
): SearchState {
  const parts = searchParts(model, solver === undefined ? STATES_ALONE : STATES_BESIDE_SOLVER);
  const dealt = parts && dealPlaces(model, parts.places);
  if (parts !== undefined && dealt !== undefined) {
    return { columns: dealt, bound: parts.placed, lowerBound: parts.cost, method: "component search" };
  }
  if (parts !== undefined && parts.cost > ceilingUnits) {
    const lowerBound = parts.leastCost(start.length);
    return { columns: start, bound: parts.placed, lowerBound, method: "component search" };
  }
  const bounds =
    parts === undefined ? simpleBounds(model) : { most: parts.placed, leastCost: parts.leastCost };
  if (solver === undefined) return nearby(model, start, bounds);
  const solved = searchBySolver(model, start, bounds, solver);
  if (solved.method !== "local search") return solved;
  // The solver gave up: what it found is bettered, and what it proved still holds.
  const bettered = nearby(model, solved.columns, { ...bounds, most: solved.bound });
  return { ...bettered, lowerBound: Math.max(bettered.lowerBound, leastFor(solved, bettered)) };
}

/** The cost proven for as many as the solver placed holds for no other number. */
function leastFor(solved: SearchState, { columns }: SearchState): number {
  return solved.columns.length === columns.length ? solved.lowerBound : 0;
}

function nearby(model: SearchModel, start: Int32Array, bounds: SearchBounds): SearchState {
  const columns = searchNearby({
    model,
    start,
    byCost: columnsByCost(model),
    iterations: Math.min(MOST_STEPS, STEPS_A_COLUMN * model.columns),
    seed: 1,
    goal: { placed: bounds.most, cost: bounds.leastCost(bounds.most) },
  });
  return {
    columns,
    bound: bounds.most,
    lowerBound: bounds.leastCost(columns.length),
    method: "local search",
  };
}

/** Budget of the component search for each place: with a solver at hand it gives up sooner. */
const STATES_BESIDE_SOLVER = 150;
const STATES_ALONE = 2000;

const STEPS_A_COLUMN = 50;
const MOST_STEPS = 200_000;

function resultOf(input: BerthSearchInput, model: SearchModel, state: SearchState): BerthSearch {
  const counted = recheckLayout(model, state.columns);
  if (counted === undefined) throw new Error("the layout breaks a rule of the search");
  const lowerBoundUnits = Math.min(state.lowerBound, counted.cost);
  return {
    placed: counted.placed,
    bound: state.bound,
    costUnits: counted.cost,
    lowerBoundUnits,
    proven: counted.placed === state.bound && counted.cost === lowerBoundUnits,
    method: state.method,
    chosen: dealtOut(input, model, state.columns),
  };
}

/** Gives the places of each merged class to its members in turn. */
function dealtOut(input: BerthSearchInput, model: SearchModel, columns: Int32Array): BerthSearch["chosen"] {
  const left = input.classes.map(({ people }) => people);
  return Array.from(columns.slice().sort(), (column) => {
    const members = model.members[model.columnClass[column] ?? 0] ?? [];
    const classIndex = members.find((index) => (left[index] ?? 0) > 0) ?? -1;
    left[classIndex] = (left[classIndex] ?? 0) - 1;
    return { place: model.columnPlace[column] ?? 0, classIndex };
  });
}
