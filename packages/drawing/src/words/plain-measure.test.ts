import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { plainMeasure } from "./plain-measure.ts";

describe("plainMeasure", () => {
  it("grows with the size, and is a sum over the letters", () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 20 }), fc.string({ maxLength: 20 }), (one, other) => {
        const both = plainMeasure(one + other, 15, 500);
        expect(both).toBeCloseTo(plainMeasure(one, 15, 500) + plainMeasure(other, 15, 500), 9);
        expect(plainMeasure(one, 30, 500)).toBeCloseTo(2 * plainMeasure(one, 15, 500), 9);
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  it("gives every figure the same width, so that columns stand", () => {
    const widths = new Set(Array.from("0123456789", (figure) => plainMeasure(figure, 100, 700)));
    expect(widths.size).toBe(1);
  });

  it("gives marks that stand on a letter no width of their own", () => {
    expect(plainMeasure("e\u0301", 15, 400)).toBeCloseTo(plainMeasure("e", 15, 400), 12);
  });
});
