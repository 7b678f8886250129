import { dualBound, type DualBound } from "./dual-bound.ts";
import { FREE, LEFT_OUT, programOf, TAKEN, type SearchRow } from "./berth-search-program.ts";
import type { SearchMethod } from "./berth-search-state.ts";
import type { LinearSolution, LinearSolver } from "./linear-solver.ts";

export interface StageInput {
  /** One whole number a column. */
  readonly cost: Float64Array;
  readonly rows: readonly SearchRow[];
  /** Columns of the best layout known and what they add up to. */
  readonly incumbent: Incumbent;
  /** Checks a layout and adds it up; nothing where it breaks a rule or misses the stage's target. */
  readonly value: (columns: Int32Array) => number | undefined;
  /** A layout made from the shares of a relaxation that is not whole; it may miss the target. */
  readonly rounded: (shares: Float64Array) => Int32Array;
  /** Finds the best layout left once columns are fixed, by other means than the solver; see there. */
  readonly settled?: (fixed: Int8Array) => Int32Array | "none" | undefined;
  /** Whether the solver may simplify the whole-number program first: worth it for the number, not for the cost. */
  readonly presolve: boolean;
  readonly solver: LinearSolver;
}

export interface Incumbent {
  readonly columns: Int32Array;
  readonly value: number;
}

export interface Stage {
  readonly incumbent: Incumbent;
  /** No layout adds up to less. */
  readonly lowerBound: number;
  readonly method: StageMethod;
}

export type StageMethod = Extract<SearchMethod, "linear relaxation" | "branch and bound" | "local search">;

/**
 * Finds the least total over all layouts that keep the rows, or says how far the best may be from it.
 *
 * First the linear relaxation. Its prices give a bound (totals are whole, so it is rounded up); where
 * the incumbent meets it, or the relaxation is whole itself, that is the proof. Else columns are fixed
 * that no better layout can have otherwise, and branch and bound decides over the rest.
 *
 * Error    exact in whole units; bounds are rounded up after taking off 1e-6
 * Source   layout-search
 */
export function leastTotal(input: StageInput): Stage {
  const { program } = programOf(input.cost, input.rows);
  const relaxed = input.solver.solve(program, { integral: false, presolve: false });
  if (!relaxed.ok || relaxed.value.status !== "optimal") return branch(input, input.incumbent, -Infinity);
  const dual = dualBound(program, relaxed.value.duals ?? new Float64Array(program.rows));
  const lowerBound = roundUp(dual.bound);
  const shares = relaxed.value.x;
  const incumbent = betterOf(input, input.incumbent, wholeColumns(shares) ?? input.rounded(shares));
  if (incumbent.value <= lowerBound) return { incumbent, lowerBound, method: "linear relaxation" };
  const fixed = fixedBy(dual, incumbent.value);
  const settled = input.settled?.(fixed);
  if (settled === undefined) return branch(input, incumbent, lowerBound, fixed);
  const best = settled === "none" ? incumbent : betterOf(input, incumbent, settled);
  return { incumbent: best, lowerBound: best.value, method: "linear relaxation" };
}

function branch(input: StageInput, incumbent: Incumbent, known: number, fixed?: Int8Array): Stage {
  const { program, columns } = programOf(input.cost, input.rows, fixed);
  const taken = takenColumns(fixed);
  if (columns.length === 0) {
    // One layout alone could be better.
    const best = betterOf(input, incumbent, Int32Array.from(taken));
    return { incumbent: best, lowerBound: best.value, method: "linear relaxation" };
  }
  const solved = input.solver.solve(program, { integral: true, presolve: input.presolve });
  if (!solved.ok) return { incumbent, lowerBound: known, method: "local search" };
  const solution = solved.value;
  if (solution.status === "infeasible") {
    // Nothing better than the incumbent is left once columns are fixed.
    return {
      incumbent,
      lowerBound: fixed === undefined ? known : incumbent.value,
      method: "branch and bound",
    };
  }
  const base = taken.reduce((sum, column) => sum + (input.cost[column] ?? 0), 0);
  const whole = wholeColumns(solution.x);
  const all = whole && Int32Array.from([...taken, ...whole.map((at) => columns[at] ?? 0)]).sort();
  const best = betterOf(input, incumbent, all);
  const proven = Math.min(best.value, roundUp(base + provenBelow(solution)));
  return { incumbent: best, lowerBound: Math.max(known, proven), method: "branch and bound" };
}

function provenBelow({ status, objective, bound }: LinearSolution): number {
  return status === "optimal" ? Math.min(objective, bound) : bound;
}

function betterOf(input: StageInput, incumbent: Incumbent, columns: Int32Array | undefined): Incumbent {
  if (columns === undefined) return incumbent;
  const value = input.value(columns);
  return value !== undefined && value < incumbent.value ? { columns, value } : incumbent;
}

/** Columns at one where every column is at zero or one. */
function wholeColumns(x: Float64Array): Int32Array | undefined {
  const chosen: number[] = [];
  for (const [column, share] of x.entries()) {
    if (!(Math.abs(share - Math.round(share)) < WHOLE_SLACK)) return undefined;
    if (share > 0.5) chosen.push(column);
  }
  return Int32Array.from(chosen);
}

/** Columns that every layout better than `value` leaves out, or takes. */
function fixedBy({ bound, reduced }: DualBound, value: number): Int8Array {
  const room = value - 1 - bound + BOUND_SLACK;
  return Int8Array.from(reduced, (worth) => (worth > room ? LEFT_OUT : -worth > room ? TAKEN : FREE));
}

function takenColumns(fixed: Int8Array | undefined): number[] {
  const taken: number[] = [];
  fixed?.forEach((state, column) => {
    if (state === TAKEN) taken.push(column);
  });
  return taken;
}

function roundUp(bound: number): number {
  return Math.ceil(bound - BOUND_SLACK);
}

const BOUND_SLACK = 1e-6;
const WHOLE_SLACK = 1e-5;
