import { describe, expect, it } from "vitest";
import { hatch } from "./hatch.ts";

describe("hatch", () => {
  it("stays inside the ring and slants one way", () => {
    const steps = hatch(
      [
        [10, 10],
        [60, 10],
        [60, 40],
        [10, 40],
      ],
      8,
    );
    expect(steps.length).toBeGreaterThan(8);
    for (const step of steps) {
      if (step[0] !== "M" && step[0] !== "L") continue;
      expect(step[1]).toBeGreaterThanOrEqual(10 - 1e-9);
      expect(step[1]).toBeLessThanOrEqual(60 + 1e-9);
      expect(step[2]).toBeGreaterThanOrEqual(10 - 1e-9);
      expect(step[2]).toBeLessThanOrEqual(40 + 1e-9);
    }
  });
});
