/**
 * A stream of whole numbers that look like chance and repeat exactly: xorshift on 32 bits.
 *
 * Shapes   `below(n)` gives 0 … n − 1; the small bias towards low numbers does not matter to a search
 * Holds    any seed; 0 is read as 1
 */
export function chance(seed: number): { readonly below: (n: number) => number } {
  let state = seed | 0 || 1;
  return {
    below: (n) => {
      state ^= state << 13;
      state ^= state >>> 17;
      state ^= state << 5;
      return (state >>> 0) % n;
    },
  };
}
