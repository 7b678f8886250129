import { describe, expect, it } from "vitest";
import { BODY } from "./berth.fixture.ts";

describe("the hammock as a trough", () => {
  it("is closed: its areas add up to nothing but for the small ends", () => {
    for (const axis of [0, 1, 2] as const) {
      const sum = BODY.patches.reduce((total, { area }) => total + area[axis], 0);
      expect(Math.abs(sum)).toBeLessThan(0.01);
    }
  });

  it("is open above, hangs below, and has two sides and two ends", () => {
    const sum = (layer: string) =>
      BODY.patches.filter((patch) => patch.layer === layer).reduce((total, { area }) => total + area[2], 0);
    expect(sum("sleeper")).toBeGreaterThan(0.8);
    expect(sum("under")).toBeLessThan(-0.5);
    for (const { middle, area, layer, parts } of BODY.patches) {
      if (layer === "hammock") expect(Math.sign(area[1])).toBe(Math.sign(middle[1]));
      expect(parts.includes("left") && parts.includes("right")).toBe(false);
      expect(parts.includes("head") && parts.includes("foot")).toBe(false);
    }
    for (const part of ["left", "right", "head", "foot"] as const) {
      expect(BODY.patches.some(({ parts }) => parts.includes(part))).toBe(true);
    }
  });
});
