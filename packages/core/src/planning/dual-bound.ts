import type { LinearProgram } from "./linear-solver.ts";

export interface DualBound {
  /** Nothing that keeps the rows costs less. */
  readonly bound: number;
  /** Cost of each column less the worth of the rows it takes part in. */
  readonly reduced: Float64Array;
}

/**
 * A lower bound on a least-cost program, from row prices alone.
 *
 *   bound = Σ rows (y > 0 ? y·lower : y·upper) + Σ columns min(0, c − yᵀa)·upper
 *
 * True for any prices: a price that a row cannot have (positive without a lower limit, negative without
 * an upper one) counts as zero. So a solver's word is not needed, only its prices.
 *
 * Shapes   duals: one a row → bound, reduced: one a column
 * Holds    sense "least", columns from 0 to a finite upper
 * Error    rounding only
 * Source   layout-search (handbook/layout.md: weak duality)
 */
export function dualBound(program: LinearProgram, duals: Float64Array): DualBound {
  const reduced = program.cost.slice();
  let bound = 0;
  for (let row = 0; row < program.rows; row++) {
    const price = duals[row] ?? 0;
    const limit = (price > 0 ? program.rowLower[row] : program.rowUpper[row]) ?? 0;
    if (price === 0 || !Number.isFinite(limit)) continue;
    bound += price * limit;
    const end = program.starts[row + 1] ?? 0;
    for (let at = program.starts[row] ?? 0; at < end; at++) {
      const column = program.indices[at] ?? 0;
      reduced[column] = (reduced[column] ?? 0) - price * (program.values[at] ?? 0);
    }
  }
  for (let column = 0; column < program.columns; column++) {
    bound += Math.min(0, reduced[column] ?? 0) * (program.upper[column] ?? 0);
  }
  return { bound, reduced };
}
