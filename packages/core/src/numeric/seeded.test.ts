import { describe, expect, it } from "vitest";
import { chanceFrom } from "./seeded.ts";

function drawn(count: number, next: () => number): number[] {
  return Array.from({ length: count }, next);
}

describe("seeded chance", () => {
  it("repeats itself for a seed and differs between seeds", () => {
    expect(drawn(20, chanceFrom(7).even)).toEqual(drawn(20, chanceFrom(7).even));
    expect(drawn(20, chanceFrom(7).even)).not.toEqual(drawn(20, chanceFrom(8).even));
  });

  it("is even from 0 to 1 and normal with mean 0 and deviation 1", () => {
    const even = drawn(20_000, chanceFrom(1).even);
    expect(Math.min(...even)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...even)).toBeLessThan(1);
    // Four standard errors: 0.289/√20000 × 4, and 1/√20000 × 4.
    expect(Math.abs(even.reduce((sum, x) => sum + x, 0) / 20_000 - 0.5)).toBeLessThan(0.0082);
    const normal = drawn(20_000, chanceFrom(2).normal);
    expect(Math.abs(normal.reduce((sum, x) => sum + x, 0) / 20_000)).toBeLessThan(0.029);
    expect(normal.filter((x) => Math.abs(x) <= 1.6448536).length / 20_000).toBeCloseTo(0.9, 2);
  });
});
