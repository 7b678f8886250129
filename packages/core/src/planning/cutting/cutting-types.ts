import type { Basis } from "../../outcome/basis.ts";

/** What to cut from what, in whole millimetres. */
export interface CuttingInput {
  /** A line without a count is to be had as often as wanted. */
  readonly stock: readonly { readonly lengthMm: number; readonly count?: number }[];
  readonly pieces: readonly { readonly lengthMm: number; readonly count: number }[];
  /** Lost at each cut: n pieces cost n − 1 of them. */
  readonly kerfMm: number;
}

export interface Cutting {
  readonly stocksUsed: number;
  /** One stock length: number of stocks; several: their total length [mm]. */
  readonly objective: number;
  /** Proven least objective, in its unit. */
  readonly bound: number;
  readonly proven: boolean;
  /** The longest stock first; cuts the longest first. */
  readonly patterns: readonly CuttingPattern[];
  readonly basis: Basis;
}

export interface CuttingPattern {
  readonly stockMm: number;
  readonly times: number;
  readonly cuts: readonly { readonly lengthMm: number; readonly count: number }[];
}

/**
 * Cutting in whole units: the kerf added to each piece and once to each stock, all measured in the pieces' greatest
 * common divisor, lines alike put together.
 */
export interface CutProblem {
  /** Widest first, each once. */
  readonly widths: Int32Array;
  readonly demand: Int32Array;
  readonly stocks: readonly CutStock[];
}

export interface CutStock {
  readonly capacity: number;
  readonly cost: number;
  /** How many must be begun at least, and may be at most. */
  readonly least: number;
  readonly most: number;
}

/** A pattern: so many of each width from one stock. */
export interface CutColumn {
  readonly stock: number;
  readonly cuts: Int32Array;
}

export interface CutUse extends CutColumn {
  readonly times: number;
}
