import { checks } from "@nightspan/checks";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import rows from "./wind-profile.checks.json" with { type: "json" };
import { gustySpeeds, windAtHeight, windRatioAt } from "./wind-profile.ts";

checks(rows, ({ wind_m_s, from_m, height_m }) => ({
  wind_m_s: windAtHeight({ windMS: wind_m_s, fromM: from_m, heightM: height_m, surrounding: "open" }),
}));

describe("wind near the ground", () => {
  it("is the same wind at its own height, less below, and a fifth in a wood", () => {
    const at = (heightM: number, surrounding: "wood" | "open") =>
      windAtHeight({ windMS: 6, fromM: 10, heightM, surrounding });
    expect(at(10, "open")).toBe(6);
    expect(at(1, "open")).toBeLessThan(at(2, "open"));
    expect(at(1.5, "wood")).toBeCloseTo(1.2, 12);
    expect(at(0, "open")).toBeGreaterThan(0);
  });
});

describe("three speeds for a gusty wind", () => {
  it("keep its mean and its spread", () => {
    const mean = fc.double({ min: 1, max: 20, noNaN: true });
    fc.assert(
      fc.property(mean, fc.double({ min: 0, max: 1, noNaN: true }), (windMS, more) => {
        const gustMS = windMS * (1 + more);
        const speeds = gustySpeeds(windMS, gustMS);
        const sum = (of: (speed: number) => number) =>
          speeds.reduce((total, speed) => total + speed.share * of(speed.windMS), 0);
        expect(sum(() => 1)).toBeCloseTo(1, 12);
        expect(sum((speed) => speed)).toBeCloseTo(windMS, 9);
        expect(sum((speed) => (speed - windMS) ** 2)).toBeCloseTo(((gustMS - windMS) / 3) ** 2, 9);
      }),
      { seed: 1, numRuns: 100 },
    );
  });

  it("never blow backwards, and are one where no gust is told", () => {
    expect(gustySpeeds(1, 9).map(({ windMS }) => windMS)[0]).toBe(0);
    expect(gustySpeeds(4, 4)).toEqual([{ windMS: 4, share: 1 }]);
    expect(gustySpeeds(4, 2)).toEqual([{ windMS: 4, share: 1 }]);
  });
});

describe("the wind at a tarp's own height", () => {
  it("is that told at 1.5 m there, less below, more above only in the open", () => {
    for (const surrounding of ["wood", "open"] as const) {
      expect(windRatioAt(1.5, surrounding)).toBeCloseTo(1, 12);
      expect(windRatioAt(0.75, surrounding)).toBeCloseTo(Math.log(15) / Math.log(30), 12);
    }
    expect(windRatioAt(2, "wood")).toBe(1);
    const given = { windMS: 1, fromM: 1.5, heightM: 2, surrounding: "open" } as const;
    expect(windRatioAt(2, "open")).toBeCloseTo(windAtHeight(given), 12);
  });
});
