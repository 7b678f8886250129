import { refuse, succeed, type LinearProgram, type LinearSolution, type LinearSolver } from "@nightspan/core";

/** What is used of the loaded package: the shape of `javascript-lp-solver`, so that this file stays pure. */
export interface TableauModule {
  Solve(model: TableauModel): unknown;
}

export interface TableauModel {
  readonly optimize: "cost";
  readonly opType: "min" | "max";
  readonly constraints: Record<string, { min?: number; max?: number; equal?: number }>;
  readonly variables: Record<string, Record<string, number>>;
  readonly ints: Record<string, 1>;
  readonly options: { readonly timeout: number };
}

/**
 * The linear solver of the planner where WebAssembly cannot run: whole-number programs of moderate size on a dense
 * tableau, in plain JavaScript.
 *
 * The package stops by a clock alone, and what it then returns may be a relaxation or no best. So an answer counts only
 * where the search ended before its time was up, is whole, and keeps every row when they are added up again; whatever
 * else comes back is a refusal, and the planner keeps the layout that it has. A slow machine may thus prove less, and
 * never something else.
 *
 * Shapes   `clock` → milliseconds, the same clock as the package's (`Date.now`)
 * Holds    whole-number programs whose tableau has a million entries at most; relaxations are refused, as it tells no
 *          prices and a bound without them would be its word alone
 * Error    costs are added up again from whole columns; rows are kept to 1e-6
 * Source   layout-search (handbook/layout.md: the second solver)
 */
export function tableauSolver(tableau: TableauModule, clock: () => number): LinearSolver {
  return {
    name: "tableau",
    solve: (program, { integral }) => {
      if (!integral)
        return refuse("integral", false, "a program of whole numbers: this solver tells no prices");
      const model = modelOf(program);
      const entries = Object.keys(model.constraints).length * program.columns;
      if (entries > MOST_ENTRIES)
        return refuse("program", entries, `a tableau of at most ${MOST_ENTRIES} entries`);
      const until = clock() + MOST_MS;
      const x = wholeAnswer(tableau, model, program.columns);
      if (clock() >= until) return refuse("program", MOST_MS, "a program that is solved in that time");
      if (x === undefined || !keepsRows(program, x)) {
        return refuse("program", "no whole answer", "a program that the solver can end");
      }
      return succeed(solutionOf(program, x));
    },
  };
}

/** Rows × columns; about a second of work. */
const MOST_ENTRIES = 1_000_000;

/** Time for one program [ms]. */
const MOST_MS = 4000;

function modelOf(program: LinearProgram): TableauModel {
  const model: TableauModel = {
    optimize: "cost",
    opType: program.sense === "least" ? "min" : "max",
    constraints: {},
    variables: {},
    ints: {},
    options: { timeout: MOST_MS },
  };
  const columns = Array.from({ length: program.columns }, (_, column) => {
    const own: Record<string, number> = { cost: program.cost[column] ?? 0 };
    model.variables[`x${column}`] = own;
    model.ints[`x${column}`] = 1;
    return own;
  });
  const isBounded = new Uint8Array(program.columns);
  for (let row = 0; row < program.rows; row++) addRow(model, program, row, columns, isBounded);
  for (const [column, own] of columns.entries()) {
    if (isBounded[column] === 1) continue;
    own[`u${column}`] = 1;
    model.constraints[`u${column}`] = { max: program.upper[column] ?? 0 };
  }
  return model;
}

/** A row; columns that it keeps within their upper bound by itself need no row of their own. */
function addRow(
  model: TableauModel,
  program: LinearProgram,
  row: number,
  columns: readonly Record<string, number>[],
  isBounded: Uint8Array,
): void {
  const [lower, upper] = [program.rowLower[row] ?? -Infinity, program.rowUpper[row] ?? Infinity];
  const [start, end] = [program.starts[row] ?? 0, program.starts[row + 1] ?? 0];
  const isPositive = program.values.subarray(start, end).every((value) => value >= 0);
  const key = `r${row}`;
  const limits = {
    ...(lower > -Infinity ? { min: lower } : {}),
    ...(upper < Infinity ? { max: upper } : {}),
  };
  model.constraints[key] = lower === upper ? { equal: lower } : limits;
  for (let at = start; at < end; at++) {
    const column = program.indices[at] ?? 0;
    const value = program.values[at] ?? 0;
    const own = columns[column];
    if (own !== undefined) own[key] = value;
    if (isPositive && value * (program.upper[column] ?? 0) >= upper) isBounded[column] = 1;
  }
}

function wholeAnswer(tableau: TableauModule, model: TableauModel, columns: number): Float64Array | undefined {
  const told = tableau.Solve(model);
  if (!isRecord(told) || told["feasible"] !== true || told["isIntegral"] !== true) return undefined;
  const x = new Float64Array(columns);
  for (let column = 0; column < columns; column++) {
    const value = told[`x${column}`] ?? 0;
    if (typeof value !== "number" || !(Math.abs(value - Math.round(value)) < ROW_SLACK)) return undefined;
    x[column] = Math.round(value);
  }
  return x;
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null;
}

function keepsRows(program: LinearProgram, x: Float64Array): boolean {
  if (x.some((value, column) => !(value >= 0 && value <= (program.upper[column] ?? 0)))) return false;
  for (let row = 0; row < program.rows; row++) {
    let sum = 0;
    const end = program.starts[row + 1] ?? 0;
    for (let at = program.starts[row] ?? 0; at < end; at++) {
      sum += (program.values[at] ?? 0) * (x[program.indices[at] ?? 0] ?? 0);
    }
    if (sum < (program.rowLower[row] ?? -Infinity) - ROW_SLACK) return false;
    if (sum > (program.rowUpper[row] ?? Infinity) + ROW_SLACK) return false;
  }
  return true;
}

const ROW_SLACK = 1e-6;

function solutionOf(program: LinearProgram, x: Float64Array): LinearSolution {
  const objective = x.reduce((sum, value, column) => sum + value * (program.cost[column] ?? 0), 0);
  return { status: "optimal", objective, bound: objective, x };
}
