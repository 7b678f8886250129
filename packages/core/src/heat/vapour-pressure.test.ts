import { describe, expect, it } from "vitest";
import { ICE_K } from "./heat-units.ts";
import { vapourPressurePa } from "./vapour-pressure.ts";

describe("the pressure of vapour", () => {
  it.each([
    [0, 611.15],
    [10, 1228],
    [20, 2338.8],
    [33, 5034.34],
  ])("at %d °C is that of a public psychrometric library within 0.4 %%", (airC, pa) => {
    expect(Math.abs(vapourPressurePa(ICE_K + airC) / pa - 1)).toBeLessThan(0.004);
  });
});
