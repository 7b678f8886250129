import type { Highs } from "highs";

/** One row of a program: entries by column, and what their sum lies between. */
export interface PlainRow {
  readonly entries: readonly (readonly [column: number, value: number])[];
  readonly least: number;
  readonly most: number;
}

export interface PlainProgram {
  readonly cost: readonly number[];
  readonly lower?: readonly number[];
  readonly upper: readonly number[];
  readonly whole: readonly boolean[];
  readonly rows: readonly PlainRow[];
}

export interface PlainAnswer {
  readonly seconds: number;
  readonly objective: number;
  readonly isOptimal: boolean;
  readonly values: Float64Array;
}

/** Model state of HiGHS: solved to optimality. */
const OPTIMAL: number = 7;

/** A least-cost program as HiGHS takes it by default, with a limit of time; building the model is not timed. */
export function solvePlainly(highs: Highs, program: PlainProgram, limitS: number): PlainAnswer {
  const { cost, upper, whole, rows } = program;
  const starts = [0];
  for (const { entries } of rows) starts.push((starts.at(-1) ?? 0) + entries.length);
  const entries = rows.flatMap((row) => row.entries);
  const model = highs.createModel({
    numCols: cost.length,
    numRows: rows.length,
    sense: highs.constants.objectiveSense.minimize,
    colCost: Float64Array.from(cost),
    colLower: Float64Array.from(program.lower ?? cost.map(() => 0)),
    colUpper: Float64Array.from(upper),
    rowLower: Float64Array.from(rows, ({ least }) => least),
    rowUpper: Float64Array.from(rows, ({ most }) => most),
    matrix: {
      format: "csr",
      numRows: rows.length,
      numCols: cost.length,
      starts: Int32Array.from(starts),
      indices: Int32Array.from(entries, ([column]) => column),
      values: Float64Array.from(entries, ([, value]) => value),
    },
    integrality: Int32Array.from(whole, Number),
  });
  try {
    model.options.set("output_flag", false);
    model.options.set("time_limit", limitS);
    const start = performance.now();
    const { modelStatus } = model.run();
    const seconds = (performance.now() - start) / 1000;
    return {
      seconds,
      objective: model.getObjectiveValue(),
      isOptimal: modelStatus === OPTIMAL,
      values: model.getSolution().colValue.slice(),
    };
  } finally {
    model.dispose();
  }
}
