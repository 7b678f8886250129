import { flatSide, type TarpCut } from "./tarp-cut.ts";

export interface TarpFootprint {
  /** Ridge line to the farthest peg, across [m]. */
  readonly halfWidthM: number;
  /** Middle of the tarp to the farthest peg, along the line [m]. */
  readonly halfLengthM: number;
}

/**
 * Ground that a tarp and its guys take, before anybody knows its pitch: sides at 30°, ridge at 1.7 m, guys at 45°.
 *
 * Shapes   a cut → half width and half length
 * Units    metres
 * Holds    level ground
 * Error    a steeper pitch takes less; a porch may take half a metre more
 * Source   tarp-geometry (handbook/shelter.md)
 */
export function tarpFootprint(cut: TarpCut): TarpFootprint {
  const corners = flatSide(cut, 1).corners;
  const reach = corners.map(([alongM, downM]) => {
    const edgeM = Math.max(0, RIDGE_M - downM * Math.sin(SIDE));
    const isPoint = corners.length === 1;
    const [outX, outY] = isPoint ? [0, 1] : [Math.SQRT1_2, Math.SQRT1_2];
    return [Math.abs(alongM) + edgeM * outX, downM * Math.cos(SIDE) + edgeM * outY] as const;
  });
  return {
    halfWidthM: Math.max(...reach.map(([, aside]) => aside)),
    halfLengthM: Math.max(cut.ridgeM / 2, ...reach.map(([along]) => along)),
  };
}

const RIDGE_M = 1.7;
const SIDE = Math.PI / 6;
