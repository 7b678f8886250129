import type { LinearProgram, LinearSolver, SolveOptions } from "@nightspan/core";
import { describe, expect, it } from "vitest";
import { tableauSolver, type TableauModel } from "./tableau-solver.ts";

/** Two columns, the first alone in a row of its own kind: least 3 a + 5 b with a + b ≥ 1. */
const PROGRAM: LinearProgram = {
  sense: "least",
  columns: 2,
  rows: 2,
  cost: Float64Array.of(3, 5),
  upper: Float64Array.of(1, 1),
  rowLower: Float64Array.of(1, -Infinity),
  rowUpper: Float64Array.of(Infinity, 1),
  starts: Int32Array.of(0, 2, 3),
  indices: Int32Array.of(0, 1, 0),
  values: Float64Array.of(1, 1, 1),
};

const WHOLE: SolveOptions = { integral: true, presolve: false };

/** A package that answers as told, after so many milliseconds. */
function standIn(
  told: unknown,
  tookMs = 1,
): { readonly solver: LinearSolver; readonly seen: TableauModel[] } {
  let now = 0;
  const seen: TableauModel[] = [];
  const tableau = {
    Solve: (model: TableauModel): unknown => {
      seen.push(model);
      now += tookMs;
      return told;
    },
  };
  return { solver: tableauSolver(tableau, () => now), seen };
}

const BEST = { feasible: true, isIntegral: true, result: 3, x0: 1 };

describe("the solver on a tableau", () => {
  it("hands over every row, a bound only for columns that no row bounds, and always a time limit", () => {
    const { solver, seen } = standIn(BEST);
    solver.solve(PROGRAM, WHOLE);
    expect(seen[0]).toEqual({
      optimize: "cost",
      opType: "min",
      constraints: { r0: { min: 1 }, r1: { max: 1 }, u1: { max: 1 } },
      variables: { x0: { cost: 3, r0: 1, r1: 1 }, x1: { cost: 5, r0: 1, u1: 1 } },
      ints: { x0: 1, x1: 1 },
      options: { timeout: 4000 },
    });
  });

  it("adds the cost up again and takes what ended as proven", () => {
    const { solver } = standIn({ ...BEST, result: -99 });
    expect(solver.solve(PROGRAM, WHOLE)).toMatchObject({
      ok: true,
      value: { status: "optimal", objective: 3, bound: 3, x: Float64Array.of(1, 0) },
    });
  });

  it.each([
    [
      "a relaxation that it returns when its time is up",
      { feasible: true, result: 2.5, x0: 0.5, x1: 0.5 },
      1,
    ],
    ["a whole answer that came too late to be proven", BEST, 4000],
    ["an answer that is not whole though it says so", { ...BEST, x0: 0.5, x1: 0.5 }, 1],
    ["an answer that breaks a row", { ...BEST, x0: 0 }, 1],
    ["an answer beyond a column's bound", { ...BEST, x1: 2 }, 1],
    ["no answer", { feasible: false, result: 0 }, 1],
    ["nothing", undefined, 1],
  ])("does not believe %s", (_, told, tookMs) => {
    expect(standIn(told, tookMs).solver.solve(PROGRAM, WHOLE).ok).toBe(false);
  });

  it("refuses relaxations and tableaux too large for it without trying", () => {
    const { solver, seen } = standIn(BEST);
    expect(solver.solve(PROGRAM, { integral: false, presolve: false }).ok).toBe(false);
    const columns = 1100;
    const wide: LinearProgram = {
      ...PROGRAM,
      columns,
      cost: new Float64Array(columns),
      upper: new Float64Array(columns).fill(1),
    };
    expect(solver.solve(wide, WHOLE).ok).toBe(false);
    expect(seen).toEqual([]);
  });
});
