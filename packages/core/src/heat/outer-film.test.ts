import { checks } from "@nightspan/checks";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ICE_K } from "./heat-units.ts";
import rows from "./outer-film.checks.json" with { type: "json" };
import { CLOTH_EMISSIVITY, outerFilm, RADIATION_W_M2K4 } from "./outer-film.ts";

function radiant(surfaceK: number, radiantK: number): number {
  return CLOTH_EMISSIVITY * RADIATION_W_M2K4 * (surfaceK ** 4 - radiantK ** 4);
}

checks(rows, ({ surface_c, air_c, radiant_c, wind_m_s }) => {
  const [surfaceK, airK, radiantK] = [surface_c + ICE_K, air_c + ICE_K, radiant_c + ICE_K];
  const flow = outerFilm({ airK, radiantK, windMS: wind_m_s })(surfaceK);
  const seen = radiant(surfaceK, radiantK);
  return { radiant_w_m2k: seen / (surfaceK - radiantK), rising_w_m2k: (flow - seen) / (surfaceK - airK) };
});

describe("the outside of a bag", () => {
  const warmer = fc.double({ min: 0, max: 30, noNaN: true });
  const wind = fc.double({ min: 0, max: 20, noNaN: true });

  it("loses nothing to surroundings of its own temperature", () => {
    const airK = ICE_K - 3;
    expect(outerFilm({ airK, radiantK: airK, windMS: 5 })(airK)).toBeCloseTo(0, 9);
  });

  it("loses more the warmer it is, the windier it is, and the colder what it sees", () => {
    fc.assert(
      fc.property(warmer, warmer, wind, wind, (a, b, calm, more) => {
        const airK = ICE_K + 2;
        const at = (deltaK: number, windMS: number, skyK = 0) =>
          outerFilm({ airK, windMS, radiantK: airK - skyK })(airK + deltaK);
        expect(at(Math.max(a, b), calm)).toBeGreaterThanOrEqual(at(Math.min(a, b), calm));
        expect(at(a, Math.max(calm, more)) + 1e-9).toBeGreaterThanOrEqual(at(a, Math.min(calm, more)));
        expect(at(a, calm, 10)).toBeGreaterThan(at(a, calm));
      }),
      { seed: 1, numRuns: 300 },
    );
  });
});
