import type { ColumnTask, GroupColumn, MasterPrices } from "./group-column-types.ts";
import type { LinearProgram, LinearSolver } from "./linear-solver.ts";

/**
 * The program over whole groups:
 *
 *   least  Σ units · λ + Σ cost_b · x_b
 *   with   Σ λ = groups of each sort,   Σ x = people of no group,   and the rows of the search over all places used
 *
 * A group for which there is no column yet costs `lackUnits`.
 */
export function columnProgram(
  task: ColumnTask,
  columns: readonly GroupColumn[],
  lackUnits: number,
): LinearProgram {
  const { sorts, rules, free } = task;
  const single = free === 0 ? [] : [...task.cost.keys()].filter((place) => task.cost[place] !== Infinity);
  const rows: (readonly [column: number, times: number])[][] = Array.from(
    { length: rules.length + sorts.length + 1 },
    () => [],
  );
  columns.forEach(({ places, sort }, column) => {
    for (const [rule, times] of timesOf(task, places)) rows[rule]?.push([column, times]);
    rows[rules.length + sort]?.push([column, 1]);
  });
  sorts.forEach((_, sort) => rows[rules.length + sort]?.push([columns.length + sort, 1]));
  single.forEach((place, at) => {
    const column = columns.length + sorts.length + at;
    for (const rule of task.rulesOf[place] ?? []) rows[rule]?.push([column, 1]);
    rows.at(-1)?.push([column, 1]);
  });
  const groups = sorts.map((sort) => sort.groups.length);
  const starts = [0];
  for (const row of rows) starts.push((starts.at(-1) ?? 0) + row.length);
  return {
    sense: "least",
    columns: columns.length + sorts.length + single.length,
    rows: rows.length,
    cost: Float64Array.from([
      ...columns.map(({ units }) => units),
      ...sorts.map(() => lackUnits),
      ...single.map((place) => task.cost[place] ?? 0),
    ]),
    // No row lets a column be used twice; without a bound of its own no price hides in one.
    upper: Float64Array.from([...columns.map(() => UNBOUND), ...groups, ...single.map(() => UNBOUND)]),
    rowLower: Float64Array.from([...rules.map(() => -Infinity), ...groups, free]),
    rowUpper: Float64Array.from([...rules.map(({ upper }) => upper), ...groups, free]),
    starts: Int32Array.from(starts),
    indices: Int32Array.from(rows.flat(), ([column]) => column),
    values: Float64Array.from(rows.flat(), ([, times]) => times),
  };
}

const UNBOUND = 1e6;

/** How often each row is touched by some places. */
function timesOf({ rulesOf }: ColumnTask, places: readonly number[]): Map<number, number> {
  const times = new Map<number, number>();
  for (const place of places) {
    for (const rule of rulesOf[place] ?? []) times.set(rule, (times.get(rule) ?? 0) + 1);
  }
  return times;
}

/** Prices of the relaxation; undefined where the solver tells none. */
export function masterPrices(
  task: ColumnTask,
  columns: readonly GroupColumn[],
  lackUnits: number,
  solver: LinearSolver,
): MasterPrices | undefined {
  const solved = solver.solve(columnProgram(task, columns, lackUnits), { integral: false, presolve: false });
  if (!solved.ok || solved.value.status !== "optimal" || solved.value.duals === undefined) return undefined;
  const { objective, duals } = solved.value;
  const { length } = task.rules;
  return {
    units: objective,
    rules: duals.slice(0, length).map((price) => Math.min(0, price)),
    sorts: duals.slice(length, length + task.sorts.length),
  };
}

/** The best choice of columns in whole numbers; undefined where some group has none. */
export function wholeColumns(
  task: ColumnTask,
  columns: readonly GroupColumn[],
  lackUnits: number,
  solver: LinearSolver,
): readonly GroupColumn[] | undefined {
  const solved = solver.solve(columnProgram(task, columns, lackUnits), { integral: true, presolve: true });
  if (!solved.ok || solved.value.status !== "optimal") return undefined;
  const { x } = solved.value;
  const chosen = columns.filter((_, column) => (x[column] ?? 0) > 0.5);
  const wanted = task.sorts.reduce((sum, { groups }) => sum + groups.length, 0);
  return chosen.length === wanted ? chosen : undefined;
}
