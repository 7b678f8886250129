/**
 * Which drops rain is made of: the share of its water in the air, by volume, in drops smaller than a diameter.
 */
export interface DropSpectrum {
  /** Share of the water in the air in drops below so many millimetres. */
  readonly shareBelow: (diameterMm: number) => number;
  /** Median by volume [mm]. */
  readonly medianMm: number;
}

/**
 * Drop sizes of rain of a given rate, after Best.
 *
 *   1 − F = exp(−(D/a)ⁿ),  a = 1.30 R^0.232 mm,  n = 2.25
 *
 * Shapes   scalar in, a distribution out
 * Units    rainMmH [mm/h] → millimetres
 * Holds    R > 0; drawn from steady rain, showers and mountains differ
 * Error    n is told to vary much in showery rain
 * Source   best-1950 (handbook/shelter.md)
 */
export function bestSpectrum(rainMmH: number): DropSpectrum {
  const a = BEST_A_MM * rainMmH ** BEST_P;
  return {
    shareBelow: (diameterMm) => -Math.expm1(-((diameterMm / a) ** BEST_N)),
    medianMm: a * Math.LN2 ** (1 / BEST_N),
  };
}

/** Source: best-1950, mean constants of the abstract. */
const BEST_A_MM = 1.3;
const BEST_P = 0.232;
const BEST_N = 2.25;

/**
 * The same after Marshall and Palmer: number per diameter falls off exponentially.
 *
 *   N(D) = N₀ exp(−Λ D),  Λ = 4.1 R^−0.21 per mm,  N₀ = 8000 per m³ and mm;  F = 1 − e^(−x)(1 + x + x²/2 + x³/6), x = Λ D
 *
 * Shapes   scalar in, a distribution out
 * Units    rainMmH [mm/h] → millimetres, per mm; waterRatio: volume of water per volume of air
 * Holds    R > 0
 * Error    too many small drops below 1 mm; the rate it carries differs from R by up to a fifth
 * Source   marshall-palmer-1948 (handbook/shelter.md)
 */
export function marshallPalmerSpectrum(rainMmH: number): DropSpectrum & {
  readonly slopePerMm: number;
  readonly waterRatio: number;
} {
  const slopePerMm = 4.1 * rainMmH ** -0.21;
  const shareBelow = (diameterMm: number) => {
    const x = slopePerMm * diameterMm;
    return 1 - Math.exp(-x) * (1 + x + (x * x) / 2 + (x * x * x) / 6);
  };
  const waterRatio = ((Math.PI * INTERCEPT) / slopePerMm ** 4) * MM3;
  return { shareBelow, slopePerMm, waterRatio, medianMm: MEDIAN_TURN / slopePerMm };
}

/** Drops per m³ of air and mm of diameter. Source: marshall-palmer-1948. */
const INTERCEPT = 8000;
const MM3 = 1e-9;
/** Root of e^x = 2 (1 + x + x²/2 + x³/6): the median of an exponential's volume. */
const MEDIAN_TURN = 3.6720607489;
