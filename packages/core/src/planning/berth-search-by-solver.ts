import { columnsByCost, takeInOrder } from "./berth-search-greedy.ts";
import type { SearchModel } from "./berth-search-model.ts";
import { searchNearby } from "./berth-search-nearby.ts";
import { peopleRows, ruleRows, type SearchRow } from "./berth-search-program.ts";
import { recheckLayout } from "./berth-search-recheck.ts";
import { leastTotal, type Stage } from "./berth-search-stages.ts";
import { settleResidual } from "./berth-search-residual.ts";
import type { SearchBounds, SearchState } from "./berth-search-state.ts";
import type { LinearSolver } from "./linear-solver.ts";

/**
 * The two stages with a linear solver: how many can be placed at all, then for how little.
 *
 * The first is passed over where the layout to start from already places as many as any could.
 *
 * Source   layout-search
 */
export function searchBySolver(
  model: SearchModel,
  start: Int32Array,
  known: SearchBounds,
  solver: LinearSolver,
): SearchState {
  const task: Task = { model, rules: ruleRows(model), byCost: columnsByCost(model), solver };
  let columns = start;
  let bound = known.most;
  if (columns.length < bound) {
    const stage = countStage(task, columns);
    columns = stage.incumbent.columns;
    bound = Math.min(bound, -stage.lowerBound);
  }
  const stage = costStage(task, columns);
  return {
    columns: stage.incumbent.columns,
    bound,
    lowerBound: Math.max(known.leastCost(columns.length), stage.lowerBound),
    method: stage.method,
  };
}

interface Task {
  readonly model: SearchModel;
  readonly rules: readonly SearchRow[];
  readonly byCost: Int32Array;
  readonly solver: LinearSolver;
}

function countStage(task: Task, columns: Int32Array): Stage {
  const { model, rules, solver } = task;
  return leastTotal({
    cost: new Float64Array(model.columns).fill(-1),
    rows: [...rules, ...peopleRows(model, undefined)],
    incumbent: { columns, value: -columns.length },
    value: (chosen) => {
      const counted = recheckLayout(model, chosen);
      return counted && -counted.placed;
    },
    rounded: (shares) => rounded(task, shares),
    presolve: true,
    solver,
  });
}

function costStage(task: Task, columns: Int32Array): Stage {
  const { model, rules, solver } = task;
  const target = columns.length;
  return leastTotal({
    cost: model.columnCost,
    rows: [...rules, ...peopleRows(model, target)],
    incumbent: { columns, value: recheckLayout(model, columns)?.cost ?? Infinity },
    value: (chosen) => {
      const counted = recheckLayout(model, chosen);
      return counted?.placed === target ? counted.cost : undefined;
    },
    settled: (fixed) => settleResidual(model, fixed, target),
    rounded: (shares) => rounded(task, shares),
    presolve: false,
    solver,
  });
}

/** Columns by falling share as far as they go together, then bettered nearby. */
function rounded({ model, byCost }: Task, shares: Float64Array): Int32Array {
  const order = byCost.slice().sort((a, b) => (shares[b] ?? 0) - (shares[a] ?? 0));
  return searchNearby({
    model,
    start: takeInOrder(model, order),
    byCost,
    iterations: ROUNDED_STEPS,
    seed: 1,
  });
}

/** Steps of the nearby search after rounding. */
const ROUNDED_STEPS = 4000;
