/** A root found, or the last bracket where the steps ran out. */
export interface Root {
  readonly x: number;
  readonly iterations: number;
  readonly converged: boolean;
}

/**
 * Root of a continuous function whose values at `low` and `high` have opposite signs (or are 0).
 *
 * Bisection sped up by the Illinois form of regula falsi: each step keeps the bracket, so it cannot run
 * away; a step of plain bisection follows whenever three steps have not halved the bracket.
 * Stops when the bracket is shorter than `relative` times its ends (or, for a root at 0, than `relative`
 * times a billionth of the first bracket), or the function is exactly 0.
 */
export function bracketedRoot(
  valueAt: (x: number) => number,
  low: number,
  high: number,
  relative = 4 * Number.EPSILON,
): Root {
  let [a, b] = [low, high];
  let [fa, fb] = [valueAt(a), valueAt(b)];
  if (fa === 0) return { x: a, iterations: 0, converged: true };
  if (fb === 0) return { x: b, iterations: 0, converged: true };
  if (!(fa * fb < 0)) return { x: Number.NaN, iterations: 0, converged: false };
  const floor = NEAR_ZERO * Math.abs(b - a);
  let halvingDue = Math.abs(b - a) / 2;
  for (let step = 1; step <= MOST_STEPS; step++) {
    const width = Math.abs(b - a);
    if (width <= relative * Math.max(Math.abs(a), Math.abs(b), floor))
      return { x: b, iterations: step, converged: true };
    const bisect = step % 3 === 0 && width > halvingDue;
    if (step % 3 === 0) halvingDue = width / 2;
    const x = bisect ? a + (b - a) / 2 : within(b - (fb * (b - a)) / (fb - fa), a, b);
    const fx = valueAt(x);
    if (fx === 0) return { x, iterations: step, converged: true };
    if (fx * fb < 0) {
      a = b;
      fa = fb;
    } else {
      fa /= 2;
    }
    b = x;
    fb = fx;
  }
  return { x: b, iterations: MOST_STEPS, converged: false };
}

const MOST_STEPS = 400;
const NEAR_ZERO = 1e-9;

/** `x` where it lies inside the bracket by more than rounding, else the bracket's middle. */
function within(x: number, a: number, b: number): number {
  const low = Math.min(a, b);
  const high = Math.max(a, b);
  return x > low && x < high ? x : low + (high - low) / 2;
}
