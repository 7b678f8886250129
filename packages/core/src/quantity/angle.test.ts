import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { degrees, inDegrees, radians } from "./angle.ts";

describe("an angle", () => {
  it("goes from degrees to radians and back", () => {
    expect(degrees(180)).toBe(Math.PI);
    expect(inDegrees(radians(Math.PI / 6))).toBeCloseTo(30, 13);
    fc.assert(
      fc.property(fc.double({ min: -720, max: 720, noNaN: true }), (value) => {
        expect(inDegrees(degrees(value))).toBeCloseTo(value, 10);
      }),
      { seed: 1, numRuns: 100 },
    );
  });
});
