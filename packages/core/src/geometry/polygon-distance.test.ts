import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sides, type Ring } from "./point.ts";
import {
  isInside,
  pointToConvex,
  pointToPolygon,
  polygonToPolygon,
  segmentsToPolygon,
} from "./polygon-distance.ts";
import { convexRings, points, sharedArea } from "./rings.fixture.ts";

const CORNER: Ring = [
  [0, 0],
  [4, 0],
  [4, 1],
  [1, 1],
  [1, 4],
  [0, 4],
];

describe("distances of polygons", () => {
  it("is zero inside and on the edge, either way round", () => {
    const square: Ring = [
      [0, 0],
      [2, 0],
      [2, 2],
      [0, 2],
    ];
    for (const ring of [square, [...square].reverse()]) {
      expect(pointToConvex([1, 1], ring)).toBe(0);
      expect(pointToConvex([2, 1], ring)).toBe(0);
      expect(pointToConvex([5, 6], ring)).toBe(5);
      expect(pointToConvex([1, -3], ring)).toBe(3);
    }
  });

  it("takes a ring without area for the line that it is", () => {
    const line: Ring = [
      [0, 0],
      [1, 0],
      [3, 0],
      [4, 0],
      [3, 0],
      [1, 0],
    ];
    expect(pointToConvex([6, 0], line)).toBe(2);
    expect(pointToConvex([2, 1], line)).toBe(1);
    expect(pointToConvex([2, 0], line)).toBe(0);
  });

  it("knows the hollow of a polygon that is not convex", () => {
    expect(isInside([3, 3], CORNER)).toBe(false);
    expect(isInside([0.5, 3], CORNER)).toBe(true);
    expect(pointToPolygon([3, 3], CORNER)).toBe(2);
    expect(pointToPolygon([0.5, 3], CORNER)).toBe(0);
    expect(
      polygonToPolygon(CORNER, [
        [2, 2],
        [3, 2],
        [3, 3],
      ]),
    ).toBe(1);
  });

  it("is zero where a line or another polygon crosses, touches or lies inside", () => {
    expect(
      segmentsToPolygon(
        [
          [
            [-1, 2],
            [6, 2],
          ],
        ],
        CORNER,
      ),
    ).toBe(0);
    expect(
      segmentsToPolygon(
        [
          [
            [0.2, 0.2],
            [0.4, 0.4],
          ],
        ],
        CORNER,
      ),
    ).toBe(0);
    expect(
      segmentsToPolygon(
        [
          [
            [-1, -1],
            [6, -1],
          ],
        ],
        CORNER,
      ),
    ).toBe(1);
    const around: Ring = [
      [-9, -9],
      [9, -9],
      [9, 9],
      [-9, 9],
    ];
    expect(polygonToPolygon(CORNER, around)).toBe(0);
    expect(polygonToPolygon(around, CORNER)).toBe(0);
  });

  it("agrees with the general polygon for convex ones", () => {
    fc.assert(
      fc.property(points(15), convexRings(), (point, ring) => {
        expect(pointToConvex(point, ring)).toBeCloseTo(pointToPolygon(point, ring), 9);
        const nearest = Math.min(...sides(ring).map(([a]) => Math.hypot(a[0] - point[0], a[1] - point[1])));
        expect(pointToConvex(point, ring)).toBeLessThanOrEqual(nearest + 1e-12);
      }),
      { seed: 1, numRuns: 300 },
    );
  });

  it("is zero for two convex polygons that share an area, and only then or where they touch", () => {
    fc.assert(
      fc.property(convexRings(), convexRings(), (a, b) => {
        const distance = polygonToPolygon(a, b);
        if (sharedArea(a, b) > 1e-9) expect(distance).toBe(0);
        if (distance > 1e-9) expect(sharedArea(a, b)).toBe(0);
        expect(polygonToPolygon(b, a)).toBeCloseTo(distance, 9);
      }),
      { seed: 1, numRuns: 300 },
    );
  });
});
