import { checks } from "@nightspan/checks";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import rows from "./rain-reach.checks.json" with { type: "json" };
import { rainReach, type RainReach } from "./rain-reach.ts";

function reach(windMS: number, rainMmH: number, gapM: number): RainReach {
  const outcome = rainReach({ windMS, rainMmH, gapM });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.refusals));
  return outcome.value;
}

checks(rows, ({ wind_m_s, rain_mm_h, gap_m }) => ({ reach_m: reach(wind_m_s, rain_mm_h, gap_m).reachM }));

describe("how far rain drifts in", () => {
  const wind = fc.double({ min: 0.1, max: 25, noNaN: true });
  const rain = fc.double({ min: 0.05, max: 100, noNaN: true });

  it("goes with gap and with wind, most of the water between the two other reaches", () => {
    fc.assert(
      fc.property(wind, rain, fc.double({ min: 0.05, max: 3, noNaN: true }), (windMS, rainMmH, gapM) => {
        const { reachM, reachP05M, reachP95M } = reach(windMS, rainMmH, gapM);
        expect(reachP05M).toBeLessThan(reachM);
        expect(reachM).toBeLessThan(reachP95M);
        expect(reach(2 * windMS, rainMmH, gapM).reachM / reachM).toBeCloseTo(2, 9);
        expect(reach(windMS, rainMmH, 3 * gapM).reachP95M / reachP95M).toBeCloseTo(3, 9);
      }),
      { seed: 1, numRuns: 100 },
    );
  });

  it("is less in heavier rain, whose drops fall faster", () => {
    expect(reach(5, 20, 0.6).reachM).toBeLessThan(reach(5, 1, 0.6).reachM);
  });

  it("is nothing without wind or without a gap", () => {
    expect(reach(0, 3, 1)).toMatchObject({ reachM: 0, reachP05M: 0, reachP95M: 0 });
    expect(reach(4, 3, 0)).toMatchObject({ reachM: 0, reachP95M: 0 });
  });

  it("refuses by field, all at once", () => {
    const outcome = rainReach({ windMS: -1, rainMmH: 0, gapM: Number.NaN });
    expect(outcome.ok ? [] : outcome.refusals.map(({ field }) => field)).toEqual([
      "windMS",
      "rainMmH",
      "gapM",
    ]);
  });
});
