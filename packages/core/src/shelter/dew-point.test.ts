import { checks } from "@nightspan/checks";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import rows from "./dew-point.checks.json" with { type: "json" };
import { dewPoint, humidityAt } from "./dew-point.ts";

const ICE_K = 273.15;

function dewK(airK: number, humidityRatio: number): number {
  const outcome = dewPoint({ airK, humidityRatio });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.refusals));
  return outcome.value.dewPointK;
}

checks(rows, ({ air_c, humidity }) => ({ dew_point_c: dewK(air_c + ICE_K, humidity) - ICE_K }));

describe("the dew point", () => {
  const air = fc.double({ min: 230, max: 320, noNaN: true });
  const humidity = fc.double({ min: 0.02, max: 1, noNaN: true });

  it("is never above the air, and the air itself when saturated", () => {
    fc.assert(
      fc.property(air, humidity, (airK, ratio) => {
        expect(dewK(airK, ratio)).toBeLessThanOrEqual(airK + 1e-9);
        expect(dewK(airK, 1)).toBeCloseTo(airK, 9);
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  it("gives the humidity back, and dew where the air cools below it", () => {
    fc.assert(
      fc.property(air, humidity, (airK, ratio) => {
        expect(humidityAt(airK, dewK(airK, ratio))).toBeCloseTo(ratio, 9);
      }),
      { seed: 2, numRuns: 200 },
    );
    expect(humidityAt(ICE_K + 2, ICE_K + 5)).toBe(1);
  });

  it("refuses by field, all at once", () => {
    const outcome = dewPoint({ airK: 100, humidityRatio: 0 });
    expect(outcome.ok ? [] : outcome.refusals.map(({ field }) => field)).toEqual(["airK", "humidityRatio"]);
    expect(dewPoint({ airK: 280, humidityRatio: 1.01 }).ok).toBe(false);
    expect(dewPoint({ airK: Number.NaN, humidityRatio: Number.NaN }).ok).toBe(false);
  });
});
