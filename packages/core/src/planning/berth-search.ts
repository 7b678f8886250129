import { columnsByCost, takeInOrder } from "./berth-search-greedy.ts";
import { searchModel, type SearchModel } from "./berth-search-model.ts";
import { searchNearby } from "./berth-search-nearby.ts";
import { peopleRows, ruleRows } from "./berth-search-program.ts";
import { recheckLayout } from "./berth-search-recheck.ts";
import { leastTotal } from "./berth-search-stages.ts";
import type { BerthSearch, BerthSearchInput } from "./berth-search-types.ts";
import type { LinearSolver } from "./linear-solver.ts";

export interface BerthSearchTools {
  readonly solver?: LinearSolver;
  /** Told of each layout that is better than the one before; the last is the answer. */
  readonly onIncumbent?: (search: BerthSearch) => void;
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
  const byCost = columnsByCost(model);
  const cheap = takeInOrder(model, byCost);
  const tell = (state: State): BerthSearch => {
    const search = resultOf(input, model, state);
    tools.onIncumbent?.(search);
    return search;
  };
  const most = Math.min(model.asked, model.places);
  tell({ columns: cheap, bound: most, lowerBound: 0, method: "local search" });
  const near = searchNearby({ model, start: cheap, byCost, iterations: 20 * model.columns, seed: 1 });
  const state: State = { columns: near, bound: most, lowerBound: 0, method: "local search" };
  return tell(tools.solver === undefined ? state : byStages(model, state, tools.solver));
}

interface State {
  readonly columns: Int32Array;
  readonly bound: number;
  readonly lowerBound: number;
  readonly method: string;
}

/** First how many, unless everybody has a place already; then for how little. */
function byStages(model: SearchModel, start: State, solver: LinearSolver): State {
  if (model.columns === 0 || model.asked === 0) return { ...start, bound: 0 };
  const rules = ruleRows(model);
  let { columns, bound } = start;
  if (columns.length < bound) {
    const count = leastTotal({
      cost: new Float64Array(model.columns).fill(-1),
      rows: [...rules, ...peopleRows(model, undefined)],
      incumbent: { columns, value: -columns.length },
      value: (chosen) => negated(recheckLayout(model, chosen)?.placed),
      solver,
    });
    columns = count.incumbent.columns;
    bound = Math.min(bound, -count.lowerBound);
  }
  const target = columns.length;
  const cost = leastTotal({
    cost: model.columnCost,
    rows: [...rules, ...peopleRows(model, target)],
    incumbent: { columns, value: recheckLayout(model, columns)?.cost ?? Infinity },
    value: (chosen) => {
      const counted = recheckLayout(model, chosen);
      return counted?.placed === target ? counted.cost : undefined;
    },
    solver,
  });
  return {
    columns: cost.incumbent.columns,
    bound,
    lowerBound: Math.max(0, cost.lowerBound),
    method: cost.method,
  };
}

function negated(value: number | undefined): number | undefined {
  return value === undefined ? undefined : -value;
}

function resultOf(input: BerthSearchInput, model: SearchModel, state: State): BerthSearch {
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
