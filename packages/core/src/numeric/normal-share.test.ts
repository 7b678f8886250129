import { describe, expect, it } from "vitest";
import { chanceFrom } from "./seeded.ts";
import { normalShare } from "./normal-share.ts";

describe("the share of a normal distribution below a value", () => {
  it.each([
    // Known to every table of the normal distribution.
    [0, 0.5],
    [1, 0.841344746],
    [1.6448536269514722, 0.95],
    [1.959963985, 0.975],
    [3, 0.998650102],
    [-1, 0.158655254],
    [-2.326347874, 0.01],
  ])("at %s is %s", (z, share) => {
    expect(Math.abs(normalShare(z) - share)).toBeLessThan(2e-7);
  });

  it("agrees with what is drawn", () => {
    const chance = chanceFrom(3);
    const drawn = Array.from({ length: 20_000 }, () => chance.normal());
    for (const z of [-1.5, -0.3, 0.8, 2]) {
      const below = drawn.filter((value) => value < z).length / drawn.length;
      expect(Math.abs(below - normalShare(z))).toBeLessThan(0.01);
    }
  });
});
