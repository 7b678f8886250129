import type { ComeQuantity } from "./hang-deviation.ts";

/**
 * A scale on which a quantity spreads evenly to both sides, and can never leave what it may be: pulls are
 * positive, a ridgeline pulls or is slack, a strap lies between level and upright.
 */
export interface BandScale {
  readonly to: (value: number, weightN: number) => number;
  /** Derivative of `to`. */
  readonly slope: (value: number, weightN: number) => number;
  readonly back: (scaled: number, weightN: number) => number;
}

const PLAIN: BandScale = { to: (value) => value, slope: () => 1, back: (scaled) => scaled };

const ANGLE: BandScale = { ...PLAIN, back: (scaled) => Math.max(0, Math.min(Math.PI / 2, scaled)) };

const PULL: BandScale = {
  to: (value) => Math.log(value),
  slope: (value) => 1 / value,
  back: (scaled) => Math.exp(scaled),
};

/** Added to a ridgeline's pull before its logarithm is taken, over the weight: a slack one pulls 0. */
const RIDGE_FROM = 0.25;
/** A ridgeline that pulls less than this over the weight is told as slack. */
const SLACK_RATIO = 0.001;

const RIDGE: BandScale = {
  to: (value, weightN) => Math.log(value + RIDGE_FROM * weightN),
  slope: (value, weightN) => 1 / (value + RIDGE_FROM * weightN),
  back: (scaled, weightN) => {
    const pullN = Math.exp(scaled) - RIDGE_FROM * weightN;
    return pullN > SLACK_RATIO * weightN ? pullN : 0;
  },
};

export const BAND_SCALES: Readonly<Record<ComeQuantity, BandScale>> = {
  "head.angle": ANGLE,
  "foot.angle": ANGLE,
  "head.pullN": PULL,
  "foot.pullN": PULL,
  seatHeightM: PLAIN,
  lowPointM: PLAIN,
  footRaiseM: PLAIN,
  ridgelinePullN: RIDGE,
};
