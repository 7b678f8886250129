import { sides, turn, type Point, type Ring } from "./point.ts";
import { pointToSegmentSquared, segmentToSegment } from "./segment-distance.ts";

/** Distance from a point to a closed convex polygon, either way round: 0 inside and on its edge. */
export function pointToConvex(point: Point, ring: Ring): number {
  let least = Infinity;
  let left = false;
  let right = false;
  let from = ring[ring.length - 1];
  for (const to of ring) {
    if (from !== undefined) {
      const side = turn(from, to, point);
      if (side > 0) left = true;
      if (side < 0) right = true;
      const squared = pointToSegmentSquared(point, from, to);
      if (squared < least) least = squared;
    }
    from = to;
  }
  return left !== right ? 0 : Math.sqrt(least);
}

/** Whether a point lies inside a ring by the even-odd rule; on the edge it may say either. */
export function isInside(point: Point, ring: Ring): boolean {
  const [x, y] = point;
  let inside = false;
  for (const [a, b] of sides(ring)) {
    if (a[1] > y === b[1] > y) continue;
    if (x < a[0] + ((y - a[1]) * (b[0] - a[0])) / (b[1] - a[1])) inside = !inside;
  }
  return inside;
}

/** Distance from a closed polygon, convex or not, to a point: 0 inside. */
export function pointToPolygon(point: Point, ring: Ring): number {
  if (isInside(point, ring)) return 0;
  return Math.sqrt(
    sides(ring).reduce((least, [a, b]) => Math.min(least, pointToSegmentSquared(point, a, b)), Infinity),
  );
}

/** Distance from a closed polygon to some segments: 0 where one crosses, touches or lies inside it. */
export function segmentsToPolygon(segments: readonly (readonly [Point, Point])[], ring: Ring): number {
  let least = Infinity;
  const border = sides(ring);
  for (const [a, b] of segments) {
    if (isInside(a, ring)) return 0;
    for (const [c, d] of border) least = Math.min(least, segmentToSegment(a, b, c, d));
  }
  return least;
}

/** Distance between two closed polygons: 0 where they overlap, touch or one holds the other. */
export function polygonToPolygon(a: Ring, b: Ring): number {
  const [corner] = a;
  if (corner !== undefined && isInside(corner, b)) return 0;
  return segmentsToPolygon(sides(b), a);
}
