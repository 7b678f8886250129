import { STEPS, tableAt, TOP_MS, type FallingRain } from "./falling-rain.ts";
import type { Slopes } from "./rain-shade.ts";

/** Area of a flat patch as a vector square to it, outwards [m²]. */
export type AreaVector = readonly [xM2: number, yM2: number, zM2: number];

/** The level patch of one square metre that faces up. */
export const UPWARDS: AreaVector = [0, 0, 1];

/**
 * Water that reaches a patch, as a share of the rate through a level square metre: m² of open rain.
 *
 *   ∫ max(0, A_z + s (A · upwind)) dG(V) over the slopes s = U/V that nothing covers
 *
 * Shapes   patch, wind, ranges of covered slopes in order → m²
 * Units    m², m/s
 * Holds    U ≥ 0; rays of one slope for each fall speed
 * Error    straight lines in a table of 256 steps of fall speed: below 0.5 % of the open rain
 * Source   rain-shade (handbook/shelter.md)
 */
export function rainOnPatch(
  area: AreaVector,
  upwindX: number,
  upwindY: number,
  windMS: number,
  rain: FallingRain,
  covered: Slopes,
): number {
  const areaZ = area[2];
  const facing = area[0] * upwindX + area[1] * upwindY;
  if (windMS < CALM_MS) return (covered[0] ?? 1) <= 0 ? 0 : Math.max(0, areaZ);
  const turns = facing === 0 ? Infinity : -areaZ / facing;
  const from = areaZ >= 0 || facing <= 0 ? 0 : turns;
  const to = areaZ >= 0 ? (facing >= 0 ? Infinity : turns) : facing > 0 ? Infinity : 0;
  let sum = 0;
  let low = from;
  for (let index = 0; index < covered.length && low < to; index += 2) {
    const start = covered[index] ?? 0;
    if (start > low) sum += between(low, Math.min(start, to), areaZ, facing, windMS, rain);
    low = Math.max(low, covered[index + 1] ?? 0);
  }
  return low < to ? sum + between(low, to, areaZ, facing, windMS, rain) : sum;
}

const CALM_MS = 1e-6;

/** The integral over slopes from `low` to `high`: fall speeds from U/high up to U/low. */
function between(
  low: number,
  high: number,
  areaZ: number,
  facing: number,
  windMS: number,
  { slower, slowness }: FallingRain,
): number {
  const slow = high === Infinity ? 0 : windMS / high;
  const fast = low === 0 ? Infinity : windMS / low;
  if (slow >= TOP_MS) return 0;
  const share = upTo(slower, fast) - tableAt(slower, slow);
  const drift = windMS * (upTo(slowness, fast) - tableAt(slowness, slow));
  // Straight lines in the tables can leave a hair below nothing where the rain only just grazes.
  return Math.max(0, areaZ * share + facing * drift);
}

function upTo(table: Float64Array, speedMS: number): number {
  return speedMS === Infinity ? (table[STEPS] ?? Number.NaN) : tableAt(table, speedMS);
}
