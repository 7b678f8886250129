import { sides, type Point, type Ring } from "./point.ts";
import { pointToSegmentSquared, segmentsCross } from "./segment-distance.ts";

/**
 * The first two sides of a ring that cross or touch where they are not neighbours, by the number of
 * the corner that each starts from; nothing where the ring is a simple polygon. A ring of fewer than
 * three corners, and one with two equal corners, is not simple.
 */
export function findSelfCrossing(ring: Ring): readonly [number, number] | undefined {
  const border = sides(ring);
  for (const [i, [a, b]] of border.entries()) {
    if (a[0] === b[0] && a[1] === b[1]) return [i, (i + 1) % ring.length];
    for (const [offset, [c, d]] of border.slice(i + 1).entries()) {
      const j = i + 1 + offset;
      if (meets(a, b, c, d, j === i + 1, i === 0 && j === border.length - 1)) return [i, j];
    }
  }
  return ring.length < 3 ? [0, 0] : undefined;
}

function meets(a: Point, b: Point, c: Point, d: Point, follows: boolean, closes: boolean): boolean {
  if (follows) return on(d, a, b) || on(a, c, d);
  if (closes) return on(c, a, b) || on(b, c, d);
  return segmentsCross(a, b, c, d) || on(a, c, d) || on(b, c, d) || on(c, a, b) || on(d, a, b);
}

function on(point: Point, a: Point, b: Point): boolean {
  return pointToSegmentSquared(point, a, b) === 0;
}
