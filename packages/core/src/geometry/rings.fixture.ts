import fc from "fast-check";
import { turn, type Point, type Ring } from "./point.ts";

export function points(reach = 10): fc.Arbitrary<Point> {
  const coordinate = fc.integer({ min: -1000, max: 1000 }).map((at) => (at / 1000) * reach);
  return fc.tuple(coordinate, coordinate);
}

/** Convex rings with an area: the hulls of a few points. */
export function convexRings(): fc.Arbitrary<Ring> {
  return fc
    .array(points(), { minLength: 3, maxLength: 9 })
    .map(hullOf)
    .filter((ring) => ring.length >= 3);
}

export function turned(ring: Ring, angle: number): Ring {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return ring.map(([x, y]) => [x * cos - y * sin, x * sin + y * cos]);
}

/** Corners of the convex hull, counterclockwise. */
export function hullOf(spots: readonly Point[]): Ring {
  const sorted = [...spots].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const lower = chain(sorted);
  const upper = chain(sorted.reverse());
  return [...lower.slice(0, -1), ...upper.slice(0, -1)];
}

function chain(sorted: readonly Point[]): Point[] {
  const kept: Point[] = [];
  for (const point of sorted) {
    for (;;) {
      const [before, last] = kept.slice(-2);
      if (before === undefined || last === undefined || turn(before, last, point) > 1e-9) break;
      kept.pop();
    }
    kept.push(point);
  }
  return kept;
}

/** Area that two counterclockwise convex rings share, by cutting one along each side of the other. */
export function sharedArea(a: Ring, b: Ring): number {
  let rest = a;
  for (const [at, from] of b.entries()) rest = leftOf(rest, from, b[(at + 1) % b.length] ?? from);
  return rest.reduce((sum, [x, y], at) => {
    const [nextX, nextY] = rest[(at + 1) % rest.length] ?? [x, y];
    return sum + (x * nextY - nextX * y) / 2;
  }, 0);
}

function leftOf(ring: Ring, from: Point, to: Point): Ring {
  return ring.flatMap((point, at) => {
    const next = ring[(at + 1) % ring.length] ?? point;
    const here = turn(from, to, point);
    const there = turn(from, to, next);
    const kept: Point[] = here >= 0 ? [point] : [];
    if (here >= 0 === there >= 0) return kept;
    const share = here / (here - there);
    return [...kept, [point[0] + share * (next[0] - point[0]), point[1] + share * (next[1] - point[1])]];
  });
}
