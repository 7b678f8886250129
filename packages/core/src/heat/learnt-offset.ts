/** How one half of a sleeper was, in the sleeper's own word. Cold: woke of it. Warm: too warm, or opened up for it. */
export type Felt = "cold" | "cool" | "right" | "warm";

/** One night of one half: how it was, against what was reckoned. */
export interface NightFelt {
  /** Tonight's air above this half's comfort as reckoned [K]. */
  readonly marginK: number;
  readonly felt: Felt;
}

export interface LearntHalf {
  /** Nights that it was learnt from. */
  readonly nights: number;
  /** The sleeper needs air so much warmer than reckoned; below 0: sleeps warmer [K]. */
  readonly offsetK: number;
  /** Central 90 % of that, half as wide [K]. */
  readonly bandK: number;
}

/**
 * By how much one half of a sleeper needs warmer air than reckoned, from how nights were.
 *
 *   prior  δ ~ N(0, 4 K / 1.645);   a night's own margin  y = margin − δ + noise, logistic, 2.5 K
 *   cold: y < −3 K;   cool: −3 K ≤ y < 0;   right: y ≥ 0;   warm: y ≥ 4 K
 *   offset = mean of the posterior, never below −2 K; band = max(2.6 K, 1.645 · its deviation)
 *
 * An answer bounds the night, it does not measure it: whoever was right may have been warm and opened up. So a warm margin
 * and a right night teach next to nothing, and a cold back in good kit teaches much.
 *
 * Shapes   nights in → one offset and its band
 * Units    [K]
 * Holds    any number of nights, margins within ± 60 K (further is taken at the edge); no nights: 0 and 4 K
 * Error    0.01 K of quadrature. Prior and answers are log-concave, so the band is never wider than with no nights; an
 *          answer colder in word never makes the offset less. Cuts and noise are judgements
 * Source   house-convention (handbook/heat.md)
 */
export function learntOffset(nights: readonly NightFelt[]): LearntHalf {
  if (nights.length === 0) return { nights: 0, offsetK: 0, bandK: PRIOR_BAND_K };
  const sorted = [...nights].sort((a, b) => a.marginK - b.marginK || ORDER[a.felt] - ORDER[b.felt]);
  const logs = GRID.map((offsetK) =>
    sorted.reduce((sum, night) => sum + logLikely(night, offsetK), -((offsetK / PRIOR_K) ** 2) / 2),
  );
  const most = logs.reduce((a, b) => Math.max(a, b));
  let [mass, first, second] = [0, 0, 0];
  for (const [at, offsetK] of GRID.entries()) {
    const weight = Math.exp((logs[at] ?? -Infinity) - most);
    mass += weight;
    first += weight * offsetK;
    second += weight * offsetK * offsetK;
  }
  const meanK = first / mass;
  const deviationK = Math.sqrt(Math.max(0, second / mass - meanK * meanK));
  const bandK = Math.max(LEARNT_LEAST_BAND_K, NINE_TENTHS * deviationK);
  return { nights: nights.length, offsetK: Math.max(-MOST_CREDIT_K, meanK), bandK };
}

/** Logarithm of how likely an answer is, but for a constant. */
function logLikely({ marginK, felt }: NightFelt, offsetK: number): number {
  const reckonedK = Math.min(Math.max(marginK, -FURTHEST_K), FURTHEST_K) - offsetK;
  const { fromK, belowK } = SAYS[felt];
  const above = fromK === undefined ? 0 : logLogistic((reckonedK - fromK) / NOISE_K);
  return above + (belowK === undefined ? 0 : logLogistic((belowK - reckonedK) / NOISE_K));
}

/** ln(1 / (1 + e^−x)), without overflow. */
function logLogistic(x: number): number {
  return Math.min(x, 0) - Math.log1p(Math.exp(-Math.abs(x)));
}

/** What each answer says of the night [K]. Halfway from comfort to limit people wake. Source: house-convention. */
const SAYS: Readonly<Record<Felt, { readonly fromK?: number; readonly belowK?: number }>> = {
  cold: { belowK: -3 },
  cool: { fromK: -3, belowK: 0 },
  right: { fromK: 0 },
  warm: { fromK: 4 },
};

const ORDER: Readonly<Record<Felt, number>> = { cold: 0, cool: 1, right: 2, warm: 3 };

/** Of a normal distribution, 90 % lie within so many deviations. */
const NINE_TENTHS = 1.645;
const PRIOR_BAND_K = 4;
const PRIOR_K = PRIOR_BAND_K / NINE_TENTHS;

/**
 * No log makes it narrower [K]: the forecast's low is 2 K off as often as not, and the next bag of the same label 5 % of
 * its insulation, 1.7 K; √(2² + 1.7²). Source: kuklane-dejke-2010 (5 to 15 %), house-convention.
 */
export const LEARNT_LEAST_BAND_K = 2.6;

/** Scale of a logistic noise of 2.5 K deviation [K]. Source: house-convention. */
const NOISE_K = (2.5 * Math.sqrt(3)) / Math.PI;

const FURTHEST_K = 60;

/** Nights that were right promise nobody more than this [K]: a false credit is a cold night. Source: house-convention. */
const MOST_CREDIT_K = 2;

/** Offsets looked at [K]: eight deviations of the prior either way. */
const STEP_K = 0.05;
const GRID = Array.from({ length: 801 }, (_, at) => (at - 400) * STEP_K);
