import type { Point, Ring } from "./point.ts";

/**
 * How far two convex polygons reach into each other: the shortest slide that parts them.
 *
 *   min over the side normals n of either polygon of  min(max A·n − min B·n, max B·n − min A·n)
 *
 * Zero where they touch, negative where a side's normal parts them (then the widest gap along such a
 * normal, which is no distance between corners). Sides of no length are passed over.
 *
 * Shapes   two rings, either way round → one number
 * Units    those of the corners
 * Holds    convex rings; a ring without area counts as the segment that it is
 * Error    rounding only: + − × ÷ √, relative 1e-15 of the coordinates
 * Source   layout-search (handbook/layout.md: separating axes)
 */
export function penetrationDepth(a: Ring, b: Ring): number {
  return Math.min(leastAlongNormals(a, a, b), leastAlongNormals(b, a, b));
}

function leastAlongNormals(owner: Ring, a: Ring, b: Ring): number {
  let least = Infinity;
  let from = owner[owner.length - 1];
  for (const to of owner) {
    if (from !== undefined) {
      const depth = depthAlong(from[1] - to[1], to[0] - from[0], a, b);
      if (depth < least) least = depth;
      if (least < 0) return least;
    }
    from = to;
  }
  return least;
}

function depthAlong(x: number, y: number, a: Ring, b: Ring): number {
  const length = Math.sqrt(x * x + y * y);
  if (length === 0) return Infinity;
  let minA = Infinity;
  let maxA = -Infinity;
  for (const point of a) {
    const at = dot(x, y, point);
    if (at < minA) minA = at;
    if (at > maxA) maxA = at;
  }
  let minB = Infinity;
  let maxB = -Infinity;
  for (const point of b) {
    const at = dot(x, y, point);
    if (at < minB) minB = at;
    if (at > maxB) maxB = at;
  }
  return Math.min(maxA - minB, maxB - minA) / length;
}

function dot(x: number, y: number, point: Point): number {
  return x * point[0] + y * point[1];
}
