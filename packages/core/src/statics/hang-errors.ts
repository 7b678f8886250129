/** One standard deviation of each thing that a person sets or measures, or that nobody measured. */
export interface HangErrors {
  readonly spanM: number;
  readonly strapHeightM: number;
  readonly strapLengthM: number;
  /** Ground at the foot tree against ground at the head tree. */
  readonly groundM: number;
  /** Ground under the hammock against the straight line between the trees. */
  readonly groundBetweenM: number;
  /** Natural logarithm of the stretch of straps and cloth over what was assumed. */
  readonly stretchLog: number;
  /** Sleeper's mass over what was said: clothes, a bottle, an old figure. */
  readonly massRatio: number;
}

/**
 * Errors where nobody states others [m, or ratio]. Source: common-practice, all estimates:
 * a taped span to 5 cm; strap heights set to the nearest 5 cm by a body mark read to 2 cm
 * (√(0.05²/12 + 0.02²)); straps let out to 2 cm; ground sighted to 5 cm, uneven by 3 cm; stretch half to
 * twice in nine cases of ten (ln 2/1.645); mass to 3 %.
 */
export const USUAL_ERRORS: HangErrors = {
  spanM: 0.05,
  strapHeightM: 0.025,
  strapLengthM: 0.02,
  groundM: 0.05,
  groundBetweenM: 0.03,
  stretchLog: 0.42,
  massRatio: 0.03,
};

/** Standard deviation of a span stepped out with a calibrated step, over the span. Source: common-practice. */
export const STEPPED_SPAN_ERROR_RATIO = 0.04;

/** Standard deviations from the middle to the end of the central 90 % of a normal distribution. */
export const CENTRAL_90 = 1.6448536269514722;
