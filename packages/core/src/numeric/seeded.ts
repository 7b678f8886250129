/** A stream of chance from a seed: the same seed gives the same numbers everywhere. */
export interface Chance {
  /** Even between 0 (included) and 1. */
  readonly even: () => number;
  /** Normal with mean 0 and standard deviation 1. */
  readonly normal: () => number;
}

/**
 * Numbers from a 32-bit counter stirred by multiplication and shifts (period 2³², whole-number arithmetic
 * alone, so equal on any machine). Normal numbers by Marsaglia's polar method.
 */
export function chanceFrom(seed: number): Chance {
  let state = seed >>> 0;
  const even = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  let spare: number | undefined;
  const normal = () => {
    if (spare !== undefined) {
      const kept = spare;
      spare = undefined;
      return kept;
    }
    for (;;) {
      const [u, v] = [2 * even() - 1, 2 * even() - 1];
      const square = u * u + v * v;
      if (square >= 1 || square === 0) continue;
      const scale = Math.sqrt((-2 * Math.log(square)) / square);
      spare = v * scale;
      return u * scale;
    }
  };
  return { even, normal };
}
