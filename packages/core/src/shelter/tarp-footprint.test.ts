import { describe, expect, it } from "vitest";
import { tarpFootprint } from "./tarp-footprint.ts";

describe("the ground that a tarp takes", () => {
  it("is its sides and its guys: worked for 3.4 by 3 m", () => {
    // Half 1.5 m at 30° reaches 1.299 m out and 0.75 m down; the guy from 0.95 m up goes on along the diagonal.
    const { halfWidthM, halfLengthM } = tarpFootprint({ shape: "rectangle", ridgeM: 3.4, widthM: 3 });
    expect(halfWidthM).toBeCloseTo(1.5 * Math.cos(Math.PI / 6) + 0.95 * Math.SQRT1_2, 9);
    expect(halfLengthM).toBeCloseTo(1.7 + 0.95 * Math.SQRT1_2, 9);
  });

  it("is wider for a wider tarp down to the ground, and straight out for a diamond", () => {
    const wide = (widthM: number) => tarpFootprint({ shape: "rectangle", ridgeM: 3.4, widthM }).halfWidthM;
    expect(wide(3.6)).toBeGreaterThan(wide(2.4));
    const diamond = tarpFootprint({ shape: "diamond", ridgeM: 4, widthM: 4 });
    expect(diamond.halfLengthM).toBe(2);
    expect(diamond.halfWidthM).toBeCloseTo(2 * Math.cos(Math.PI / 6) + 0.7, 9);
  });
});
