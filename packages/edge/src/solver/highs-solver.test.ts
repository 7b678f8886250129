import type { LinearProgram, SolveOptions } from "@nightspan/core";
import { describe, expect, it } from "vitest";
import { highsSolver, type HighsData, type HighsModule } from "./highs-solver.ts";

const PROGRAM: LinearProgram = {
  sense: "least",
  columns: 2,
  rows: 1,
  cost: Float64Array.of(3, 5),
  upper: Float64Array.of(1, 1),
  rowLower: Float64Array.of(1),
  rowUpper: Float64Array.of(1),
  starts: Int32Array.of(0, 2),
  indices: Int32Array.of(0, 1),
  values: Float64Array.of(1, 1),
};

interface Seen {
  data?: HighsData<"low" | "high">;
  options: Record<string, unknown>;
  disposed: number;
}

/** A solver that answers as told, and notes what it was given. */
function standIn(modelStatus: number, fail?: string): { module: HighsModule<"low" | "high">; seen: Seen } {
  const seen: Seen = { options: {}, disposed: 0 };
  return {
    seen,
    module: {
      constants: { objectiveSense: { minimize: "low", maximize: "high" } },
      createModel: (data) => {
        seen.data = data;
        return {
          options: { set: (values) => Object.assign(seen.options, values) },
          info: { get: () => 2.5 },
          run: () => {
            if (fail !== undefined) throw new Error(fail);
            return { modelStatus };
          },
          getObjectiveValue: () => 3,
          getSolution: () => ({ colValue: Float64Array.of(1, 0), rowDual: Float64Array.of(3) }),
          dispose: () => seen.disposed++,
        };
      },
    },
  };
}

const WHOLE: SolveOptions = { integral: true, presolve: false };

describe("the HiGHS solver", () => {
  it("hands over the program and fixed options: no output, one seed, no gap", () => {
    const { module, seen } = standIn(7);
    highsSolver(module).solve(PROGRAM, WHOLE);
    expect(seen.data).toMatchObject({ numCols: 2, numRows: 1, sense: "low", colCost: PROGRAM.cost });
    expect(seen.data?.matrix).toMatchObject({
      format: "csr",
      numCols: 2,
      numRows: 1,
      starts: PROGRAM.starts,
    });
    expect(Array.from(seen.data?.integrality ?? [])).toEqual([1, 1]);
    expect(seen.options).toMatchObject({
      output_flag: false,
      random_seed: 0,
      mip_rel_gap: 0,
      mip_abs_gap: 0,
      presolve: "off",
    });
    highsSolver(module).solve({ ...PROGRAM, sense: "most" }, { integral: false, presolve: true });
    expect(seen.data?.sense).toBe("high");
    expect(Array.from(seen.data?.integrality ?? [])).toEqual([0, 0]);
    expect(seen.options["presolve"]).toBe("on");
  });

  it("sets no limit that a clock decides", () => {
    const { module, seen } = standIn(7);
    highsSolver(module).solve(PROGRAM, WHOLE);
    expect(Object.keys(seen.options)).not.toContain("time_limit");
  });

  it("tells the proven bound of whole programs and the prices of relaxed ones", () => {
    const whole = highsSolver(standIn(7).module).solve(PROGRAM, WHOLE);
    expect(whole).toMatchObject({ ok: true, value: { status: "optimal", objective: 3, bound: 2.5 } });
    const relaxed = highsSolver(standIn(7).module).solve(PROGRAM, { integral: false, presolve: false });
    expect(relaxed).toMatchObject({ ok: true, value: { bound: 3, duals: Float64Array.of(3) } });
  });

  it("tells infeasible from stopped", () => {
    const status = (code: number): unknown => {
      const outcome = highsSolver(standIn(code).module).solve(PROGRAM, WHOLE);
      return outcome.ok ? outcome.value.status : outcome.refusals;
    };
    expect([8, 13, 14, 17].map(status)).toEqual(["infeasible", "limit", "limit", "limit"]);
  });

  it("gives the native model back whatever happens", () => {
    const { module, seen } = standIn(7);
    highsSolver(module).solve(PROGRAM, WHOLE);
    expect(seen.disposed).toBe(1);
    const broken = standIn(7, "out of memory");
    const outcome = highsSolver(broken.module).solve(PROGRAM, WHOLE);
    expect(outcome).toMatchObject({ ok: false, refusals: [{ field: "program", got: "out of memory" }] });
    expect(broken.seen.disposed).toBe(1);
  });
});
