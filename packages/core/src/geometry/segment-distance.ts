import { turn, type Point } from "./point.ts";

/** Distance from a point to the closed segment a–b; a segment of no length is its point. */
export function pointToSegment(point: Point, a: Point, b: Point): number {
  return Math.sqrt(pointToSegmentSquared(point, a, b));
}

/** Square of the distance from a point to the closed segment a–b. */
export function pointToSegmentSquared(point: Point, a: Point, b: Point): number {
  const alongX = b[0] - a[0];
  const alongY = b[1] - a[1];
  const offX = point[0] - a[0];
  const offY = point[1] - a[1];
  const squared = alongX * alongX + alongY * alongY;
  const share = squared > 0 ? clampToUnit((offX * alongX + offY * alongY) / squared) : 0;
  const restX = offX - share * alongX;
  const restY = offY - share * alongY;
  return restX * restX + restY * restY;
}

/** Distance between two closed segments: 0 where they cross or touch. */
export function segmentToSegment(a: Point, b: Point, c: Point, d: Point): number {
  if (segmentsCross(a, b, c, d)) return 0;
  return Math.sqrt(
    Math.min(
      pointToSegmentSquared(a, c, d),
      pointToSegmentSquared(b, c, d),
      pointToSegmentSquared(c, a, b),
      pointToSegmentSquared(d, a, b),
    ),
  );
}

/** Whether each segment has its ends on both sides of the other. Touching is not crossing. */
export function segmentsCross(a: Point, b: Point, c: Point, d: Point): boolean {
  return apart(turn(a, b, c), turn(a, b, d)) && apart(turn(c, d, a), turn(c, d, b));
}

function apart(one: number, other: number): boolean {
  return (one < 0 && other > 0) || (one > 0 && other < 0);
}

function clampToUnit(share: number): number {
  return share < 0 ? 0 : share > 1 ? 1 : share;
}
