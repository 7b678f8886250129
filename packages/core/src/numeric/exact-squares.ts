/**
 * a² − b² − c² with the error of one rounding, however nearly the squares cancel.
 *
 * Each square is split into its rounded value and what rounding lost (Dekker's product with Veltkamp's
 * split), so the sum loses nothing before its end. Holds for |a|, |b|, |c| between 1e-100 and 1e100 or 0.
 */
export function squareLessSquares(a: number, b: number, c: number): number {
  const [aa, bb, cc] = [a * a, b * b, c * c];
  const lost = lostIn(a, aa) - lostIn(b, bb) - lostIn(c, cc);
  const [first, firstLost] = exactSum(aa, -bb);
  const [second, secondLost] = exactSum(first, -cc);
  return second + (firstLost + secondLost + lost);
}

const SPLIT = 2 ** 27 + 1;

function lostIn(x: number, square: number): number {
  const big = SPLIT * x;
  const high = big - (big - x);
  const low = x - high;
  return high * high - square + 2 * high * low + low * low;
}

function exactSum(a: number, b: number): readonly [sum: number, lost: number] {
  const sum = a + b;
  const other = sum - a;
  return [sum, a - (sum - other) + (b - other)];
}
