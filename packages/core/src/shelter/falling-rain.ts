import { fallSpeedMS } from "./drop-speed.ts";
import { bestSpectrum, type DropSpectrum } from "./drop-spectrum.ts";

/**
 * Rain as it falls through a level plane: how much of it falls slower than a speed.
 * Tables over `STEPS` equal steps of speed from 0 to `TOP_MS`.
 */
export interface FallingRain {
  /** Rate through a level plane [m/s]. */
  readonly rateMS: number;
  /** Share of the falling water slower than step × TOP_MS / STEPS: STEPS + 1. */
  readonly slower: Float64Array;
  /** ∫ 1/V over the same water [s/m]: STEPS + 1. */
  readonly slowness: Float64Array;
}

export const STEPS = 256;
/** No drop falls faster than the largest [m/s]. */
export const TOP_MS = 9.2;

/**
 * Water of a spectrum weighted by how it falls: each drop's share of the water in the air times its speed.
 *
 *   dG ∝ V(D) dF(D)
 *
 * Shapes   a distribution by diameter → tables by speed
 * Units    rainMmH [mm/h] → m/s, s/m
 * Holds    R > 0
 * Error    midpoints of 1 % steps of diameter to 12 mm: below 1e-4 of the water
 * Source   best-1950, gunn-kinzer-1949 (handbook/shelter.md)
 */
export function fallingRain(rainMmH: number, spectrum: DropSpectrum = bestSpectrum(rainMmH)): FallingRain {
  const water = new Float64Array(STEPS + 1);
  const slow = new Float64Array(STEPS + 1);
  let sum = 0;
  let below = spectrum.shareBelow(CUTS[0]?.diameterMm ?? 0);
  for (const { diameterMm, speedMS } of CUTS) {
    const share = spectrum.shareBelow(diameterMm);
    const falls = (share - below) * speedMS;
    below = share;
    if (!(falls > 0)) continue;
    const step = Math.min(STEPS, Math.ceil((speedMS / TOP_MS) * STEPS));
    water[step] = (water[step] ?? 0) + falls;
    slow[step] = (slow[step] ?? 0) + falls / speedMS;
    sum += falls;
  }
  return { rateMS: rainMmH / MM_H, slower: summed(water, sum), slowness: summed(slow, sum) };
}

/** Drops of one size, as they drip from leaves. */
export function dripping(rainMmH: number, diameterMm: number): FallingRain {
  const speedMS = fallSpeedMS(diameterMm);
  const water = new Float64Array(STEPS + 1);
  const slow = new Float64Array(STEPS + 1);
  const step = Math.min(STEPS, Math.ceil((speedMS / TOP_MS) * STEPS));
  water[step] = 1;
  slow[step] = 1 / speedMS;
  return { rateMS: rainMmH / MM_H, slower: summed(water, 1), slowness: summed(slow, 1) };
}

/** Millimetres an hour in a metre a second. */
const MM_H = 3.6e6;

interface Cut {
  readonly diameterMm: number;
  /** Of the drops between the cut before and this one. */
  readonly speedMS: number;
}

const CUTS: readonly Cut[] = cuts();

function cuts(): Cut[] {
  const list: Cut[] = [];
  let before = 0.01;
  for (let diameterMm = before; diameterMm < 12; diameterMm *= 1.01) {
    list.push({ diameterMm, speedMS: fallSpeedMS((before + diameterMm) / 2) });
    before = diameterMm;
  }
  return list;
}

function summed(parts: Float64Array, whole: number): Float64Array {
  let sum = 0;
  return parts.map((part) => (sum += part / whole));
}

/** Value of one of the tables at a speed, by straight lines. */
export function tableAt(table: Float64Array, speedMS: number): number {
  const place = (speedMS / TOP_MS) * STEPS;
  if (!(place > 0)) return 0;
  if (place >= STEPS) return table[STEPS] ?? Number.NaN;
  const step = Math.floor(place);
  const low = table[step] ?? Number.NaN;
  return low + (place - step) * ((table[step + 1] ?? Number.NaN) - low);
}

/** The speed that a share of the falling water does not reach. */
export function speedAtShare({ slower }: FallingRain, share: number): number {
  let [low, high] = [0, STEPS];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((slower[middle] ?? Number.NaN) < share) low = middle;
    else high = middle;
  }
  const [from, to] = [slower[low] ?? Number.NaN, slower[high] ?? Number.NaN];
  const part = to > from ? Math.min(1, Math.max(0, (share - from) / (to - from))) : 1;
  return ((low + part) * TOP_MS) / STEPS;
}
