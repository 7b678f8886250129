import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bracketedRoot } from "./bracketed-root.ts";

describe("a bracketed root", () => {
  it("is found to rounding, smooth or kinked, from either side", () => {
    const at = fc.double({ min: -5, max: 5, noNaN: true });
    fc.assert(
      fc.property(at, fc.boolean(), (root, turned) => {
        const value = (x: number) => (x < root ? 0.01 : 40) * (x - root) + (x - root) ** 3;
        const [low, high] = turned ? [9, -7] : [-7, 9];
        const { x, converged } = bracketedRoot(value, low, high);
        expect(converged).toBe(true);
        expect(Math.abs(x - root)).toBeLessThan(1e-12 * Math.max(1, Math.abs(root)) + 1e-12);
      }),
      { seed: 1, numRuns: 300 },
    );
  });

  it("takes few steps on a smooth function and stays bounded on a cliff", () => {
    expect(bracketedRoot((x) => x * x - 2, 0, 2).iterations).toBeLessThan(20);
    const cliff = bracketedRoot((x) => (x < 1 / 3 ? -1e-9 : 1e9), 0, 1);
    expect(cliff.x).toBeCloseTo(1 / 3, 12);
    expect(cliff.iterations).toBeLessThan(250);
  });

  it("says so where the ends do not differ in sign", () => {
    expect(bracketedRoot((x) => x * x + 1, -1, 1).converged).toBe(false);
    expect(bracketedRoot(() => Number.NaN, -1, 1).converged).toBe(false);
  });
});
