import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { convexRings, sharedArea, turned } from "./rings.fixture.ts";
import { penetrationDepth } from "./penetration-depth.ts";
import type { Ring } from "./point.ts";

const SQUARE: Ring = [
  [0, 0],
  [2, 0],
  [2, 2],
  [0, 2],
];

function moved(ring: Ring, x: number, y: number): Ring {
  return ring.map((point) => [point[0] + x, point[1] + y]);
}

describe("how far two convex polygons reach into each other", () => {
  it("is the shortest slide that parts two squares", () => {
    expect(penetrationDepth(SQUARE, moved(SQUARE, 1.5, 0.25))).toBeCloseTo(0.5, 12);
    expect(penetrationDepth(SQUARE, moved(SQUARE, -0.25, 1.75))).toBeCloseTo(0.25, 12);
  });

  it("is zero where they touch, at a side or a corner", () => {
    expect(penetrationDepth(SQUARE, moved(SQUARE, 2, 1))).toBe(0);
    expect(penetrationDepth(SQUARE, moved(SQUARE, 2, 2))).toBe(0);
  });

  it("is negative where they are apart", () => {
    expect(penetrationDepth(SQUARE, moved(SQUARE, 5, 0))).toBe(-3);
  });

  it("counts the way out, where one holds the other", () => {
    const small: Ring = [
      [0.9, 0.9],
      [1.1, 0.9],
      [1.1, 1.1],
      [0.9, 1.1],
    ];
    expect(penetrationDepth(SQUARE, small)).toBeCloseTo(1.1, 12);
  });

  it("parts crossing lines by the shorter way and knows touching ones", () => {
    const level: Ring = [
      [0, 0],
      [4, 0],
    ];
    expect(
      penetrationDepth(level, [
        [2, -1],
        [2, 3],
      ]),
    ).toBeCloseTo(1, 12);
    expect(
      penetrationDepth(level, [
        [4, 0],
        [6, 3],
      ]),
    ).toBe(0);
  });

  it("is positive just where cutting one along the other leaves an area", () => {
    fc.assert(
      fc.property(convexRings(), convexRings(), (a, b) => {
        const depth = penetrationDepth(a, b);
        const area = sharedArea(a, b);
        if (depth > 1e-6) expect(area).toBeGreaterThan(0);
        if (depth < -1e-9) expect(area).toBe(0);
        if (area > 1e-6) expect(depth).toBeGreaterThan(0);
      }),
      { seed: 1, numRuns: 400 },
    );
  });

  it("does not change when both are named the other way round, turned or mirrored", () => {
    fc.assert(
      fc.property(convexRings(), convexRings(), fc.double({ min: 0, max: 7, noNaN: true }), (a, b, angle) => {
        const depth = penetrationDepth(a, b);
        const mirror = (ring: Ring): Ring => ring.map(([x, y]) => [-x, y]);
        if (depth < 0) return;
        expect(penetrationDepth(b, a)).toBeCloseTo(depth, 9);
        expect(penetrationDepth(turned(a, angle), turned(b, angle))).toBeCloseTo(depth, 9);
        expect(penetrationDepth(mirror(a), mirror(b))).toBeCloseTo(depth, 9);
      }),
      { seed: 1, numRuns: 200 },
    );
  });
});
