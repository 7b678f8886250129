import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { points } from "./rings.fixture.ts";
import { pointToSegment, segmentsCross, segmentToSegment } from "./segment-distance.ts";

describe("distances of segments", () => {
  it("measures to the foot of the perpendicular, or to an end beyond it", () => {
    expect(pointToSegment([1, 2], [0, 0], [4, 0])).toBe(2);
    expect(pointToSegment([7, 4], [0, 0], [4, 0])).toBe(5);
    expect(pointToSegment([3, 4], [0, 0], [0, 0])).toBe(5);
  });

  it("tells crossing from touching", () => {
    expect(segmentsCross([0, 0], [2, 2], [0, 2], [2, 0])).toBe(true);
    expect(segmentsCross([0, 0], [2, 0], [1, 0], [1, 2])).toBe(false);
    expect(segmentToSegment([0, 0], [2, 0], [1, 0], [1, 2])).toBe(0);
    expect(segmentToSegment([0, 0], [2, 2], [0, 2], [2, 0])).toBe(0);
    expect(segmentToSegment([0, 0], [2, 0], [0, 3], [2, 3])).toBe(3);
  });

  it("is never more than between any two points of the segments, and as little for some", () => {
    fc.assert(
      fc.property(points(), points(), points(), points(), (a, b, c, d) => {
        const distance = segmentToSegment(a, b, c, d);
        const steps = Array.from({ length: 41 }, (_, step) => step / 40);
        const least = Math.min(
          ...steps.map((share) =>
            pointToSegment([a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])], c, d),
          ),
        );
        const stepLength = Math.hypot(b[0] - a[0], b[1] - a[1]) / 40;
        expect(distance).toBeLessThanOrEqual(least + 1e-9);
        expect(distance).toBeGreaterThanOrEqual(least - stepLength - 1e-9);
        expect(segmentToSegment(d, c, a, b)).toBeCloseTo(distance, 12);
      }),
      { seed: 1, numRuns: 300 },
    );
  });
});
