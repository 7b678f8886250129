import type { PlacesInput } from "./places-types.ts";

/** Room that makes up for positions that are off [m]; negative where they are taken as off for the better. */
export interface PositionRoom {
  /** Off either end of the range of spans. */
  readonly spanM: number;
  /** Between a footprint and a stem, a reach or an obstacle. */
  readonly aroundM: number;
  /** Between two footprints. */
  readonly betweenM: number;
}

/**
 * How much distances on the ground change when every stem and every obstacle is off by up to e.
 *
 *   a span         2e
 *   a footprint    m = e + w · min(2, √2 · 2e/d)    its corners move with the trees and turn with the line between them
 *   to a stem      m + e
 *   to another     2m
 *
 * for spans from d, which are those in range, off by 2e themselves.
 *
 * Units    metres
 * Holds    any e; 0 gives no room
 * Error    never too little: a turn of the line by 2e/d moves its normal by no more than √2 times that, nor by more than 2
 * Source   layout-search (handbook/layout.md: position error)
 */
export function roomFor({
  offM = 0,
  halfWidthM,
  spanMinM,
}: Pick<PlacesInput, "offM" | "halfWidthM" | "spanMinM">): PositionRoom {
  const errorM = Math.abs(offM);
  const shortestM = spanMinM + 2 * offM;
  const turn = errorM === 0 ? 0 : shortestM > 0 ? Math.min(2, (Math.SQRT2 * 2 * errorM) / shortestM) : 2;
  const side = offM < 0 ? -1 : 1;
  const movedM = errorM + halfWidthM * turn;
  return { spanM: 2 * offM, aroundM: side * (movedM + errorM), betweenM: side * 2 * movedM };
}
