/** A uniform cable in equilibrium between two supports; Irvine's law with 1/EA = 0 is the catenary. */
export interface CableForces {
  readonly horizontalN: number;
  /** Mean of the vertical pulls at both ends, up towards the right [N]. */
  readonly meanUpN: number;
  /** Weight of the whole cable [N]. */
  readonly weightN: number;
  readonly lengthM: number;
  readonly stretchPerN: number;
}

/** What follows from the forces; all of it free of cancellation for shallow, deep and steep cables. */
export interface CableFigures {
  readonly leftN: number;
  readonly rightN: number;
  /** Level and upward distance from the left support to the right one [m]. */
  readonly spanM: number;
  readonly riseM: number;
  readonly sagM: number;
  readonly lowM: number;
  readonly stretchedM: number;
}

/**
 * Sums and differences along the cable. With T₀, T₁ the end pulls, S their sum, W the weight:
 *
 *   Δθ = asinh(τ₁/H) − asinh(τ₀/H) = ln((S + W)/(S − W)),  T₁ − T₀ = 2 τₘ W/S
 *
 * S − W is summed from two positive parts, so nothing cancels when the cable hangs nearly straight down.
 */
export interface CableSums {
  readonly leftN: number;
  readonly rightN: number;
  readonly sumN: number;
  readonly sumLessWeightN: number;
  readonly turn: number;
}

export function cableSums({ horizontalN: h, meanUpN, weightN }: CableForces): CableSums {
  const [left, right] = [meanUpN - weightN / 2, meanUpN + weightN / 2];
  const [leftN, rightN] = [Math.hypot(h, left), Math.hypot(h, right)];
  const fromLeft = left >= 0 ? leftN + left : (h * h) / (leftN - left);
  const fromRight = right <= 0 ? rightN - right : (h * h) / (rightN + right);
  const sumLessWeightN = fromLeft + fromRight;
  const turn = Math.log1p((2 * weightN) / sumLessWeightN);
  return { leftN, rightN, sumN: leftN + rightN, sumLessWeightN, turn };
}

export function cableFigures(forces: CableForces): CableFigures {
  const { horizontalN, meanUpN, weightN, lengthM, stretchPerN } = forces;
  const { leftN, rightN, sumN, turn } = cableSums(forces);
  const spanM = horizontalN * lengthM * (turn / weightN + stretchPerN);
  const riseM = meanUpN * lengthM * (2 / sumN + stretchPerN);
  const energy = (2 * meanUpN * meanUpN) / sumN + sumN / 2 + (horizontalN * horizontalN * turn) / weightN;
  return {
    leftN,
    rightN,
    spanM,
    riseM,
    sagM: sagOf(forces, sumN, turn),
    lowM: lowOf(forces, leftN, rightN),
    stretchedM: lengthM + (lengthM * stretchPerN * energy) / 2,
  };
}

/**
 * Greatest vertical distance from the chord: where the cable runs along the chord, τ* = H · rise/span.
 * Measured from the upper support, where both terms have one sign:
 *
 *   w · sag = H [cosh θ* (cosh δ − 1) + sinh θ* (sinh δ − δ)] + (τ₁ − τ*)²/2EA
 */
function sagOf(forces: CableForces, sumN: number, turn: number): number {
  const { horizontalN, meanUpN, weightN, lengthM, stretchPerN } = forces;
  const perWeight = turn / weightN;
  const chordUpN = (meanUpN * (2 / sumN + stretchPerN)) / (perWeight + stretchPerN);
  const overChordN = (meanUpN * excess(weightN, sumN, turn)) / (weightN * (perWeight + stretchPerN));
  const toEndN = meanUpN >= 0 ? overChordN + weightN / 2 : overChordN - weightN / 2;
  const chordN = Math.hypot(horizontalN, chordUpN);
  const endN = Math.hypot(horizontalN, chordUpN + toEndN);
  const delta = turnTo(toEndN / (chordN + endN), (chordUpN + toEndN) / horizontalN, chordUpN / horizontalN);
  const half = Math.sinh(delta / 2);
  const hanging = chordN * 2 * half * half + chordUpN * sinhLess(delta);
  return ((hanging + (stretchPerN * toEndN * toEndN) / 2) * lengthM) / weightN;
}

/** asinh a − asinh b, from their tanh of half the difference where that is small. */
function turnTo(halfTanh: number, a: number, b: number): number {
  return Math.abs(halfTanh) < 0.5 ? 2 * Math.atanh(halfTanh) : Math.asinh(a) - Math.asinh(b);
}

/** Lowest point under the lower support; 0 where the cable falls all the way to it. */
function lowOf(
  { horizontalN, meanUpN, weightN, lengthM, stretchPerN }: CableForces,
  leftN: number,
  rightN: number,
) {
  const [left, right] = [meanUpN - weightN / 2, meanUpN + weightN / 2];
  if (!(left < 0 && right > 0)) return 0;
  const [endN, up] = meanUpN >= 0 ? [leftN, left] : [rightN, right];
  return ((up * up) / (endN + horizontalN) + (up * up * stretchPerN) / 2) * (lengthM / weightN);
}

/** Δθ − 2W/S: the turn of the cable beyond its first term. */
function excess(weightN: number, sumN: number, turn: number): number {
  const y = weightN / sumN;
  if (y > SMALL) return turn - 2 * y;
  const square = y * y;
  let sum = 0;
  for (let n = 15; n >= 3; n -= 2) sum = sum * square + 1 / n;
  return 2 * y * square * sum;
}

/** sinh x − x. */
function sinhLess(x: number): number {
  if (Math.abs(x) > 1) return Math.sinh(x) - x;
  const square = x * x;
  let sum = 0;
  for (let n = 17; n >= 3; n -= 2) sum = (sum * square) / ((n + 1) * (n + 2)) + 1;
  return (x * square * sum) / 6;
}

const SMALL = 0.1;
