import { checks } from "@nightspan/checks";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { degrees } from "../quantity/angle.ts";
import rows from "./wind-load.checks.json" with { type: "json" };
import { canopyCoefficients, windLoad, type Roof, type WindLoad } from "./wind-load.ts";

function load(roof: Roof, pitchDeg: number, blockageRatio: number, windMS = 1, areaM2 = 1): WindLoad {
  const outcome = windLoad({ windMS, areaM2, pitch: degrees(pitchDeg), blockageRatio, roof });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.refusals));
  return outcome.value;
}

checks(rows, ({ roof, pitch_deg, blockage, ...given }) => {
  const windMS = "wind_m_s" in given ? (given.wind_m_s ?? 1) : 1;
  const { pressurePa, downN, upN } = load(roof === "duo" ? "duo" : "mono", pitch_deg, blockage, windMS);
  return { pressure_pa: pressurePa, down: downN / pressurePa, up: upN / pressurePa };
});

describe("wind on an open roof", () => {
  it("goes with the square of the wind and with the area", () => {
    const once = load("mono", 12, 0.3, 7, 2);
    const more = load("mono", 12, 0.3, 14, 6);
    expect(more.upN / once.upN).toBeCloseTo(12, 12);
    expect(more.downN / once.downN).toBeCloseTo(12, 12);
  });

  it("runs straight between the rows", () => {
    const { down, up } = canopyCoefficients("mono", 17.5, 0.5);
    expect(down).toBeCloseTo(0.75, 12);
    expect(up).toBeCloseTo((1.1 + 1.3 + 1.4 + 1.4) / 4, 12);
    expect(canopyCoefficients("duo", 0, 0)).toEqual({ down: 0.2, up: 0.5 });
  });

  it("is never below nothing", () => {
    const pitch = fc.double({ min: -20, max: 30, noNaN: true });
    const ratio = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(pitch, ratio, (pitchDeg, blockage) => {
        const { downN, upN } = load("duo", pitchDeg, blockage, 9);
        expect(downN).toBeGreaterThan(0);
        expect(upN).toBeGreaterThan(0);
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  it("refuses by field, all at once", () => {
    const outcome = windLoad({
      windMS: -1,
      areaM2: Number.NaN,
      pitch: degrees(31),
      blockageRatio: 1.1,
      roof: "mono",
    });
    expect(outcome.ok ? [] : outcome.refusals.map(({ field }) => field)).toEqual([
      "windMS",
      "areaM2",
      "pitch",
      "blockageRatio",
    ]);
    expect(windLoad({ windMS: 1, areaM2: 1, pitch: degrees(-1), blockageRatio: 0, roof: "mono" }).ok).toBe(
      false,
    );
    expect(windLoad({ windMS: 1, areaM2: 1, pitch: degrees(-20), blockageRatio: 0, roof: "duo" }).ok).toBe(
      true,
    );
  });
});
