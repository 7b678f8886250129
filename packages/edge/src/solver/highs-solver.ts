import { refuse, succeed, type LinearProgram, type LinearSolution, type LinearSolver } from "@nightspan/core";

/**
 * What is used of the loaded solver: the shape of the `highs` package, so that this file stays pure and
 * the command line and the worker each load the package in their own way.
 */
export interface HighsModule<Sense = unknown> {
  readonly constants: { readonly objectiveSense: { readonly minimize: Sense; readonly maximize: Sense } };
  createModel(data: HighsData<Sense>): HighsModel;
}

export interface HighsData<Sense> {
  readonly numCols: number;
  readonly numRows: number;
  readonly sense: Sense;
  readonly colCost: Float64Array;
  readonly colLower: Float64Array;
  readonly colUpper: Float64Array;
  readonly rowLower: Float64Array;
  readonly rowUpper: Float64Array;
  readonly matrix: {
    readonly format: "csr";
    readonly numRows: number;
    readonly numCols: number;
    readonly starts: Int32Array;
    readonly indices: Int32Array;
    readonly values: Float64Array;
  };
  readonly integrality: Int32Array;
}

export interface HighsModel {
  readonly options: { set(values: Readonly<Record<string, boolean | number | string>>): unknown };
  readonly info: { get(name: string): number | bigint };
  run(): { readonly modelStatus: number };
  getObjectiveValue(): number;
  getSolution(): { readonly colValue: Float64Array; readonly rowDual: Float64Array };
  dispose(): void;
}

/**
 * The linear solver of the planner on a loaded HiGHS.
 *
 * One thread, fixed seed, no clock: the same program gives the same answer. Gaps are zero, so "optimal"
 * means proven. The native model is given back whatever happens.
 *
 * Holds    whole costs; programs of one column or more
 * Error    what HiGHS throws becomes a refusal of `program`
 */
export function highsSolver<Sense>(highs: HighsModule<Sense>): LinearSolver {
  return {
    name: "highs",
    solve: (program, { integral, presolve }) => {
      try {
        return succeed(solveWith(highs, program, integral, presolve));
      } catch (error) {
        return refuse(
          "program",
          error instanceof Error ? error.message : String(error),
          "a program that HiGHS can solve",
        );
      }
    },
  };
}

function solveWith<Sense>(
  highs: HighsModule<Sense>,
  program: LinearProgram,
  integral: boolean,
  presolve: boolean,
): LinearSolution {
  const model = highs.createModel(dataOf(highs, program, integral));
  try {
    model.options.set({ ...FIXED_OPTIONS, presolve: presolve ? "on" : "off" });
    return solutionOf(model, model.run().modelStatus, integral);
  } finally {
    model.dispose();
  }
}

function dataOf<Sense>(
  highs: HighsModule<Sense>,
  program: LinearProgram,
  integral: boolean,
): HighsData<Sense> {
  const { minimize, maximize } = highs.constants.objectiveSense;
  return {
    numCols: program.columns,
    numRows: program.rows,
    sense: program.sense === "least" ? minimize : maximize,
    colCost: program.cost,
    colLower: new Float64Array(program.columns),
    colUpper: program.upper,
    rowLower: program.rowLower,
    rowUpper: program.rowUpper,
    matrix: {
      format: "csr",
      numRows: program.rows,
      numCols: program.columns,
      starts: program.starts,
      indices: program.indices,
      values: program.values,
    },
    integrality: new Int32Array(program.columns).fill(integral ? INTEGER : CONTINUOUS),
  };
}

function solutionOf(model: HighsModel, modelStatus: number, integral: boolean): LinearSolution {
  if (modelStatus === INFEASIBLE) {
    return { status: "infeasible", objective: NaN, bound: NaN, x: new Float64Array(0) };
  }
  const { colValue, rowDual } = model.getSolution();
  const objective = model.getObjectiveValue();
  const status = modelStatus === OPTIMAL || modelStatus === EMPTY ? "optimal" : "limit";
  if (!integral) return { status, objective, bound: objective, x: colValue, duals: rowDual };
  return { status, objective, bound: Number(model.info.get("mip_dual_bound")), x: colValue };
}

const FIXED_OPTIONS = {
  output_flag: false,
  random_seed: 0,
  mip_rel_gap: 0,
  mip_abs_gap: 0,
  mip_feasibility_tolerance: 1e-6,
} as const;

const CONTINUOUS = 0;
const INTEGER = 1;

// Model states of HiGHS.
const EMPTY = 6;
const OPTIMAL = 7;
const INFEASIBLE = 8;
