import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { greatestSum, type Vector } from "./greatest-sum.ts";

const WHOLE = fc.integer({ min: -9, max: 9 });
const VECTORS = fc.array(fc.tuple(WHOLE, WHOLE), { maxLength: 7 });
const SEEDED = { seed: 1, numRuns: 300 };

/** Every subset tried. */
function tried(vectors: readonly Vector[]): number {
  let greatest = 0;
  for (let mask = 0; mask < 2 ** vectors.length; mask++) {
    const taken = vectors.filter((_, at) => (mask >> at) % 2 === 1);
    const east = taken.reduce((sum, vector) => sum + vector[0], 0);
    const north = taken.reduce((sum, vector) => sum + vector[1], 0);
    greatest = Math.max(greatest, Math.hypot(east, north));
  }
  return greatest;
}

describe("greatestSum", () => {
  it("is nothing of none, and the longer alone of two that pull opposite ways", () => {
    expect(greatestSum([])).toBe(0);
    expect(
      greatestSum([
        [3, 0],
        [-4, 0],
      ]),
    ).toBe(4);
  });

  it("adds two at right angles as the parallelogram does", () => {
    expect(
      greatestSum([
        [3, 0],
        [0, 4],
      ]),
    ).toBe(5);
  });

  it("finds what trying every subset finds", () => {
    fc.assert(
      fc.property(VECTORS, (vectors) => {
        expect(greatestSum(vectors)).toBeCloseTo(tried(vectors), 10);
      }),
      SEEDED,
    );
  });

  it("does not change when all is turned, and never lessens when one more pulls", () => {
    const turn = fc.double({ min: 0, max: 2 * Math.PI, noNaN: true });
    fc.assert(
      fc.property(VECTORS, turn, fc.tuple(WHOLE, WHOLE), (vectors, angle, more) => {
        const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
        const turned = vectors.map(([east, north]): Vector => [
          cos * east + sin * north,
          cos * north - sin * east,
        ]);
        expect(greatestSum(turned)).toBeCloseTo(greatestSum(vectors), 9);
        expect(greatestSum([...vectors, more])).toBeGreaterThanOrEqual(greatestSum(vectors) - 1e-9);
      }),
      SEEDED,
    );
  });
});
