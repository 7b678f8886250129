import type { Outcome } from "../outcome/outcome.ts";

/**
 * A linear or mixed-integer program in compressed sparse rows.
 * Shapes: `cost`, `upper`, `integral` one entry a column (lower bounds are 0); `rowLower`, `rowUpper` one a row;
 * `starts` rows + 1; `indices`, `values` one an entry. Costs are whole numbers so that a proof is exact.
 */
export interface LinearProgram {
  readonly sense: "least" | "most";
  readonly columns: number;
  readonly rows: number;
  readonly cost: Float64Array;
  readonly upper: Float64Array;
  readonly rowLower: Float64Array;
  readonly rowUpper: Float64Array;
  readonly starts: Int32Array;
  readonly indices: Int32Array;
  readonly values: Float64Array;
}

export interface SolveOptions {
  /** False: the linear relaxation. */
  readonly integral: boolean;
  readonly presolve: boolean;
}

export interface LinearSolution {
  readonly status: "optimal" | "infeasible" | "limit";
  readonly objective: number;
  /** Proven bound on the objective. */
  readonly bound: number;
  readonly x: Float64Array;
  /** Row duals, for a relaxation. */
  readonly duals?: Float64Array;
}

/** The port through which planning asks for a solve. `cli` and `web/worker` supply one. */
export interface LinearSolver {
  readonly name: string;
  solve(program: LinearProgram, options: SolveOptions): Outcome<LinearSolution>;
}
