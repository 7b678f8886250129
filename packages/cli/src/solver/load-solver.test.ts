import {
  dualBound,
  type LinearProgram,
  type LinearSolution,
  type LinearSolver,
  type SolveOptions,
} from "@nightspan/core";
import { beforeAll, describe, expect, it } from "vitest";
import { loadSolver } from "./load-solver.ts";

let solver: LinearSolver;
beforeAll(async () => {
  solver = await loadSolver();
});

/** Three columns that exclude each other in pairs: half of each is 1.5 for the relaxation, one for whole numbers. */
const TRIANGLE: LinearProgram = {
  sense: "least",
  columns: 3,
  rows: 3,
  cost: Float64Array.of(-1, -1, -1),
  upper: Float64Array.of(1, 1, 1),
  rowLower: new Float64Array(3).fill(-Infinity),
  rowUpper: new Float64Array(3).fill(1),
  starts: Int32Array.of(0, 2, 4, 6),
  indices: Int32Array.of(0, 1, 1, 2, 0, 2),
  values: new Float64Array(6).fill(1),
};

function solved(program: LinearProgram, options: SolveOptions): LinearSolution {
  const outcome = solver.solve(program, options);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.refusals));
  return outcome.value;
}

describe("the solver that the command line loads", () => {
  it("solves the relaxation, and its prices prove the bound again", () => {
    const relaxed = solved(TRIANGLE, { integral: false, presolve: false });
    expect(relaxed.objective).toBeCloseTo(-1.5, 9);
    expect(dualBound(TRIANGLE, relaxed.duals ?? new Float64Array(3)).bound).toBeCloseTo(-1.5, 9);
  });

  it("solves whole numbers with a proven bound, presolved or not", () => {
    for (const presolve of [true, false]) {
      expect(solved(TRIANGLE, { integral: true, presolve })).toMatchObject({
        status: "optimal",
        objective: -1,
        bound: -1,
      });
    }
  });

  it("says when nothing keeps the rows", () => {
    const impossible = { ...TRIANGLE, rowLower: new Float64Array(3).fill(1) };
    expect(solved(impossible, { integral: true, presolve: false }).status).toBe("infeasible");
  });

  it("turns a program that does not hang together into a refusal", () => {
    const outcome = solver.solve(
      { ...TRIANGLE, indices: Int32Array.of(0, 1, 1, 2, 0, 9) },
      { integral: true, presolve: true },
    );
    expect(outcome.ok).toBe(false);
  });
});
