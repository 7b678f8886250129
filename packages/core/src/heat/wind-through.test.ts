import { checks } from "@nightspan/checks";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import rows from "./wind-through.checks.json" with { type: "json" };
import { windThroughRatio } from "./wind-through.ts";

checks(rows, ({ wind_m_s, litres }) => ({ ratio: windThroughRatio(wind_m_s, litres / 1000) }));

describe("wind through a cloth", () => {
  it("leaves all in still air and never more", () => {
    expect(windThroughRatio(0, 0.05)).toBe(1);
    expect(windThroughRatio(0.2, 0)).toBeLessThanOrEqual(1);
  });

  it("leaves less the more wind, and in 1 m/s and more the more open the cloth, without a jump", () => {
    const wind = fc.double({ min: 0, max: 25, noNaN: true });
    const open = fc.double({ min: 0, max: 2, noNaN: true });
    fc.assert(
      fc.property(wind, wind, open, open, (a, b, p, more) => {
        const [calm, windy] = [Math.min(a, b), Math.max(a, b)];
        expect(windThroughRatio(windy, p)).toBeLessThanOrEqual(windThroughRatio(calm, p));
        const [tight, loose] = [Math.min(p, more), Math.max(p, more)];
        if (windy >= 1)
          expect(windThroughRatio(windy, loose)).toBeLessThanOrEqual(windThroughRatio(windy, tight) + 1e-12);
        expect(Math.abs(windThroughRatio(a + 1e-6, p) - windThroughRatio(a, p))).toBeLessThan(1e-4);
      }),
      { seed: 1, numRuns: 500 },
    );
  });
});
