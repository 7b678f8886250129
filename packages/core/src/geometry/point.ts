/** A point of the plane, or the step from one to another. */
export type Point = readonly [x: number, y: number];

/** Corners in order round, the first not repeated. */
export type Ring = readonly Point[];

/** Upright rectangle; a point has equal corners. */
export interface Box {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** The least upright rectangle round some points; inside out (∞ to −∞) round none. */
export function boxAround(points: readonly Point[]): Box {
  let minX = Infinity;
  let minY = Infinity;
  let maxX = -Infinity;
  let maxY = -Infinity;
  for (const [x, y] of points) {
    if (x < minX) minX = x;
    if (y < minY) minY = y;
    if (x > maxX) maxX = x;
    if (y > maxY) maxY = y;
  }
  return { minX, minY, maxX, maxY };
}

export function inflate(box: Box, by: number): Box {
  return { minX: box.minX - by, minY: box.minY - by, maxX: box.maxX + by, maxY: box.maxY + by };
}

/** Twice the signed area of the triangle: positive where `c` lies left of the way from `a` to `b`. */
export function turn(a: Point, b: Point, c: Point): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
}

/** The sides of a ring, closing side included; the one side of a ring of two counts once. */
export function sides(ring: Ring): readonly (readonly [Point, Point])[] {
  if (ring.length === 2) return steps(ring);
  return ring.flatMap((from, at) => {
    const to = ring[(at + 1) % ring.length];
    return to === undefined ? [] : [[from, to] as const];
  });
}

/** The segments of an open line. A line of one point is one segment of no length. */
export function steps(line: readonly Point[]): readonly (readonly [Point, Point])[] {
  const only = line.length === 1 ? line[0] : undefined;
  if (only !== undefined) return [[only, only]];
  return line.flatMap((from, at) => {
    const to = line[at + 1];
    return to === undefined ? [] : [[from, to] as const];
  });
}
