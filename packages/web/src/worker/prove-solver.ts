import type { LinearProgram } from "@nightspan/core";
import { loadSolver } from "./lazy-solver.ts";

export interface SolverProof {
  readonly solver: string;
  readonly objective: number;
}

/**
 * Solves a small program through the solver that plans use.
 *
 *   most 3 a + 4 b + 5 c   with a + b ≤ 1, b + c ≤ 1, a + c ≤ 1, each 0 or 1
 *
 * The relaxation reaches 6 with all at one half; whole numbers reach 5, with c alone.
 */
export async function proveSolver(): Promise<SolverProof> {
  const solver = await loadSolver();
  if (solver === undefined) throw new Error("the solver could not be loaded");
  const outcome = solver.solve(TRIANGLE, { integral: true, presolve: false });
  if (!outcome.ok) throw new Error(`the solver refused: ${JSON.stringify(outcome.refusals)}`);
  return { solver: solver.name, objective: outcome.value.objective };
}

const TRIANGLE: LinearProgram = {
  sense: "most",
  columns: 3,
  rows: 3,
  cost: Float64Array.of(3, 4, 5),
  upper: Float64Array.of(1, 1, 1),
  rowLower: Float64Array.of(0, 0, 0),
  rowUpper: Float64Array.of(1, 1, 1),
  starts: Int32Array.of(0, 2, 4, 6),
  indices: Int32Array.of(0, 1, 1, 2, 0, 2),
  values: Float64Array.of(1, 1, 1, 1, 1, 1),
};
