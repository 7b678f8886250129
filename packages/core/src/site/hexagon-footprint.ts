import type { GroundXY } from "./obstacle.ts";

/**
 * The strip of ground that a berth keeps: pointed at its trees, full width over its middle half.
 *
 *   (0, 0), (d/4, ±w), (3d/4, ±w), (d, 0)   along the way from one tree to the other
 *
 * Pointed ends leave room for a second berth on the same tree at an angle.
 *
 * Shapes   two points d apart → six corners in order round
 * Units    metres
 * Holds    d > 0, w ≥ 0
 * Source   layout-search (handbook/layout.md)
 */
export function hexagonFootprint(from: GroundXY, to: GroundXY, halfWidthM: number): readonly GroundXY[] {
  const alongX = to[0] - from[0];
  const alongY = to[1] - from[1];
  const spanM = Math.sqrt(alongX * alongX + alongY * alongY);
  const asideX = (-alongY / spanM) * halfWidthM;
  const asideY = (alongX / spanM) * halfWidthM;
  const nearX = from[0] + alongX / 4;
  const nearY = from[1] + alongY / 4;
  const farX = from[0] + (3 * alongX) / 4;
  const farY = from[1] + (3 * alongY) / 4;
  return [
    from,
    [nearX + asideX, nearY + asideY],
    [farX + asideX, farY + asideY],
    to,
    [farX - asideX, farY - asideY],
    [nearX - asideX, nearY - asideY],
  ];
}
