import type { Basis } from "../outcome/basis.ts";
import { refuseAll, succeed, type Outcome, type Refusal } from "../outcome/outcome.ts";
import { squareLessSquares } from "../numeric/exact-squares.ts";
import { cableFigures } from "./cable-figures.ts";
import { cableRefusals } from "./cable-input.ts";

export interface CatenaryInput {
  readonly spanM: number;
  readonly lengthM: number;
  /** Right support above the left one. */
  readonly riseM: number;
  readonly weightNPerM: number;
}

export interface Catenary {
  /** Greatest vertical distance from the chord down to the cable. */
  readonly sagM: number;
  /** Lowest point below the lower support. */
  readonly lowM: number;
  readonly horizontalN: number;
  readonly leftN: number;
  readonly rightN: number;
  readonly residual: number;
  readonly iterations: number;
  readonly basis: Basis;
}

/**
 * A heavy cable that does not stretch, hung between two points.
 *
 *   sinh x / x = √(L² − h²)/d,  H = w d/2x,  T₀ + T₁ = 2 H cosh x · L/√(L² − h²)
 *
 * Shapes   scalars in, scalars out
 * Units    spanM, lengthM, riseM [m], weightNPerM [N/m] → metres, newtons
 * Holds    span > 0, length > √(span² + rise²), length ≤ 10⁶ chords; anything else is refused by field name
 * Error    1e-12 relative for all but lowM, which has 1e-12 of the sag. L² − h² − d² is taken without
 *          cancellation, so a cable a hair longer than its chord keeps its figures
 * Source   catenary (handbook/statics.md)
 */
export function catenary(input: CatenaryInput): Outcome<Catenary> {
  const failure = refuseAll([...cableRefusals(input), ...tooShort(input)]);
  if (failure !== undefined) return failure;
  const { spanM, lengthM, riseM, weightNPerM } = input;
  const { x, level2M2, residual, iterations } = catenaryShape(input);
  const horizontalN = (weightNPerM * spanM) / (2 * x);
  const sumN = (2 * horizontalN * Math.cosh(x) * lengthM) / Math.sqrt(level2M2);
  const meanUpN = (riseM * sumN) / (2 * lengthM);
  const weightN = weightNPerM * lengthM;
  const { sagM, lowM, leftN, rightN } = cableFigures({
    horizontalN,
    meanUpN,
    weightN,
    lengthM,
    stretchPerN: 0,
  });
  return succeed({ sagM, lowM, horizontalN, leftN, rightN, residual, iterations, basis: BASIS });
}

/** The half turn x of the cable, 0 for one no longer than its chord; and L² − h² [m²]. */
export function catenaryShape({ spanM, lengthM, riseM }: Omit<CatenaryInput, "weightNPerM">) {
  const beyond = squareLessSquares(lengthM, riseM, spanM);
  const level2M2 = beyond + spanM * spanM;
  if (!(beyond > 0)) return { x: 0, residual: 0, iterations: 0, level2M2 };
  return { ...halfTurn(beyond / (spanM * spanM)), level2M2 };
}

/**
 * x of (sinh x / x)² − 1 = q. Small q: Newton in x² on the series, nearly a straight line.
 * Large q: Newton on ln(sinh x / x), convex and never overflowing.
 */
function halfTurn(q: number): { x: number; residual: number; iterations: number } {
  return q < 1 ? shallowTurn(q) : deepTurn(Math.log1p(q) / 2);
}

function shallowTurn(q: number) {
  let square = 3 * q;
  let iterations = 0;
  let step = Infinity;
  while (iterations < MOST_STEPS && Math.abs(step) > 1e-15 * square) {
    const { value, slope } = series(square);
    step = (value - q) / slope;
    square -= step;
    iterations++;
  }
  return { x: Math.sqrt(square), residual: Math.abs(series(square).value - q) / q, iterations };
}

function deepTurn(logRatio: number) {
  let x = logRatio + Math.log(2 * (logRatio + 1));
  let iterations = 0;
  let step = Infinity;
  while (iterations < MOST_STEPS && Math.abs(step) > 1e-15 * x) {
    step = (logSinhRatio(x) - logRatio) / (1 / Math.tanh(x) - 1 / x);
    x -= step;
    iterations++;
  }
  return { x, residual: Math.abs(logSinhRatio(x) - logRatio) / logRatio, iterations };
}

/** (sinh x / x)² − 1 = Σ 2^(2k+1) x^(2k)/(2k+2)! and its derivative, by y = x². */
function series(y: number): { value: number; slope: number } {
  let term = 1;
  let [value, slope] = [0, 0];
  for (let k = 1; k <= 24; k++) {
    slope += (term * 4 * k) / ((2 * k + 1) * (2 * k + 2));
    term *= (4 * y) / ((2 * k + 1) * (2 * k + 2));
    value += term;
  }
  return { value, slope };
}

function logSinhRatio(x: number): number {
  return x + Math.log1p(-Math.exp(-2 * x)) - Math.log(2 * x);
}

const MOST_STEPS = 60;

function tooShort({ spanM, lengthM, riseM }: CatenaryInput): readonly Refusal[] {
  if (!(spanM > 0 && lengthM > 0 && Number.isFinite(riseM)) || squareLessSquares(lengthM, riseM, spanM) > 0)
    return [];
  return [{ field: "lengthM", got: lengthM, need: "more than the straight distance between the supports" }];
}

const BASIS: Basis = {
  rule: "catenary",
  source: "catenary",
  assumes: ["the cable is uniform and bends freely", "the cable does not stretch"],
};
