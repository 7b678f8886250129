/** Greatest whole number that divides both; of 0 and a number that number. */
export function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b);
}
