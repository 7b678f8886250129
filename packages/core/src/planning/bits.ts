/** How many bits of a whole number of 32 bits are set. */
export function onesIn(bits: number): number {
  const pairs = bits - ((bits >>> 1) & 0x55555555);
  const fours = (pairs & 0x33333333) + ((pairs >>> 2) & 0x33333333);
  return Math.imul((fours + (fours >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24;
}

/** Position of the lowest bit set; 32 for none. */
export function lowestOf(bits: number): number {
  return bits === 0 ? 32 : 31 - Math.clz32(bits & -bits);
}
