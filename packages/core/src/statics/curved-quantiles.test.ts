import { describe, expect, it } from "vitest";
import { chanceFrom } from "../numeric/seeded.ts";
import { curvedRange, MAIN_PLACES, newCurvedQuantity, type CurvedQuantity } from "./curved-quantiles.ts";

interface Map1 {
  readonly value: (s: number) => number;
  readonly slope: (s: number) => number;
  readonly across: (s: number) => number;
}

function curveOf({ value, slope, across }: Map1): CurvedQuantity {
  const curve = newCurvedQuantity();
  MAIN_PLACES.forEach((s, place) => {
    curve.value[place] = value(s);
    curve.slope[place] = slope(s);
    curve.across[place] = across(s);
  });
  return curve;
}

/** The share of 40,000 drawn values within the range, and below it. */
function sharesOf(map: Map1) {
  const [low, high] = curvedRange(curveOf(map));
  const chance = chanceFrom(8);
  const drawn = Array.from({ length: 40_000 }, () => {
    const s = chance.normal();
    return map.value(s) + map.across(s) * chance.normal();
  });
  return {
    below: drawn.filter((value) => value < low).length / drawn.length,
    above: drawn.filter((value) => value > high).length / drawn.length,
  };
}

describe("the central 90 % of a quantity curved one way", () => {
  it("is ∓ 1.645 standard deviations where it is straight", () => {
    const [low, high] = curvedRange(curveOf({ value: (s) => 5 + 3 * s, slope: () => 3, across: () => 4 }));
    expect(Math.abs((5 - low) / 5 - 1.6449)).toBeLessThan(0.003);
    expect(Math.abs((high - 5) / 5 - 1.6449)).toBeLessThan(0.003);
  });

  it.each<[string, Map1]>([
    ["an exponential", { value: Math.exp, slope: Math.exp, across: () => 0.2 }],
    ["a corner", { value: (s) => Math.max(0, s), slope: (s) => (s > 0 ? 1 : 0), across: () => 0.1 }],
    ["a valley", { value: (s) => s * s, slope: (s) => 2 * s, across: () => 0.3 }],
    ["a spread that grows", { value: (s) => s, slope: () => 1, across: (s) => 0.5 + 0.15 * s }],
  ])("holds 90 of 100 of %s", (_, map) => {
    const { below, above } = sharesOf(map);
    expect(Math.abs(below + above - 0.1)).toBeLessThan(0.01);
  });

  it("starts at the one value that a twentieth or more have", () => {
    const [low, high] = curvedRange(
      curveOf({ value: (s) => Math.max(2, s), slope: (s) => (s > 2 ? 1 : 0), across: () => 0 }),
    );
    expect(low).toBe(2);
    expect(high).toBeCloseTo(2, 6);
  });

  it("is one value where nothing varies", () => {
    const [low, high] = curvedRange(curveOf({ value: () => 7, slope: () => 0, across: () => 0 }));
    expect(low).toBe(high);
    expect(low).toBeCloseTo(7, 5);
  });
});
