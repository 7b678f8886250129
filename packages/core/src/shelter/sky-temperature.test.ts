import { checks } from "@nightspan/checks";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import rows from "./sky-temperature.checks.json" with { type: "json" };
import { clothTemperatureK, skyTemperatureK } from "./sky-temperature.ts";

const ICE_K = 273.15;

checks(rows, ({ air_c, dew_c, cloud }) => ({
  sky_c: skyTemperatureK(air_c + ICE_K, dew_c + ICE_K, cloud) - ICE_K,
}));

const air = fc.double({ min: 255, max: 300, noNaN: true });
const ratio = fc.double({ min: 0, max: 1, noNaN: true });

describe("the sky", () => {
  it("is never warmer than the air, and warmer under cloud", () => {
    fc.assert(
      fc.property(air, ratio, (airK, cloud) => {
        const clear = skyTemperatureK(airK, airK - 4, 0);
        const covered = skyTemperatureK(airK, airK - 4, cloud);
        expect(covered).toBeLessThanOrEqual(airK);
        expect(covered).toBeGreaterThanOrEqual(clear - 1e-9);
      }),
      { seed: 1, numRuns: 200 },
    );
  });
});

describe("a tarp's cloth", () => {
  it("is between sky and air, nearer to the air in wind and under crowns", () => {
    fc.assert(
      fc.property(air, ratio, fc.double({ min: 0, max: 5, noNaN: true }), (airK, share, windMS) => {
        const skyK = skyTemperatureK(airK, airK - 3, 0);
        const clothK = clothTemperatureK(airK, skyK, windMS, share);
        expect(clothK).toBeLessThanOrEqual(airK);
        expect(clothK).toBeGreaterThan(skyK);
        expect(clothTemperatureK(airK, skyK, windMS + 1, share)).toBeGreaterThanOrEqual(clothK);
        expect(clothTemperatureK(airK, skyK, windMS, share / 2)).toBeGreaterThanOrEqual(clothK);
      }),
      { seed: 1, numRuns: 200 },
    );
    expect(clothTemperatureK(280, 280, 1, 1)).toBe(280);
  });
});
