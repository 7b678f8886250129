import { checks } from "@nightspan/checks";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseDate, parseInstant } from "./civil-time.ts";
import { solarPosition } from "./solar-position.ts";
import rows from "./sun-times.checks.json" with { type: "json" };
import { sun, sunDay, type Sun } from "./sun-times.ts";

function sunOf(latDeg: number, lonDeg: number, date: string): Sun {
  const outcome = sun({ latDeg, lonDeg, date, elevationM: 0 });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.refusals));
  return outcome.value;
}

/** Minutes after midnight of the local clock, of that date. */
function clock(instant: string | null, date: string, offsetH: number): number {
  const midnight = (parseDate(date) ?? Number.NaN) - 0.5;
  return ((parseInstant(instant ?? "") ?? Number.NaN) - midnight) * 1440 + offsetH * 60;
}

checks(rows, ({ lat_deg, lon_deg, date, offset_h }) => {
  const { sunrise, sunset } = sunOf(lat_deg, lon_deg, date);
  return { sunrise_min: clock(sunrise, date, offset_h), sunset_min: clock(sunset, date, offset_h) };
});

describe("sunrise, sunset, dusk", () => {
  it("are where the sun stands at 90.833° and 96°, refraction left out", () => {
    const latitude = fc.double({ min: -60, max: 60, noNaN: true });
    const longitude = fc.double({ min: -180, max: 180, noNaN: true });
    fc.assert(
      fc.property(latitude, longitude, fc.integer({ min: 1, max: 28 }), (latDeg, lonDeg, day) => {
        const date = `2027-09-${String(day).padStart(2, "0")}`;
        const { sunset, dusk, dawn, sunrise } = sunDay({ latDeg, lonDeg, date });
        // Below −1° the position has no bending in it, so dusk shows the bare angle (and the parallax).
        for (const instant of [dusk, dawn]) {
          const { zenithRad } = solarPosition(instant ?? Number.NaN, latDeg, lonDeg);
          expect((zenithRad * 180) / Math.PI).toBeCloseTo(96.0024, 2);
        }
        expect(dusk ?? 0).toBeGreaterThan(sunset ?? 1);
        expect(dawn ?? 1).toBeLessThan(sunrise ?? 0);
      }),
      { seed: 1, numRuns: 60 },
    );
  });

  it("are missing where there are none: no dusk, no night, no day", () => {
    const bright = sunOf(61.22, -149.9, "2024-06-20");
    expect([bright.sunset === null, bright.dusk, bright.dawn]).toEqual([false, null, null]);
    expect(sunOf(70, 20, "2027-06-20")).toMatchObject({ sunrise: null, sunset: null, dusk: null });
    const dark = sunOf(70, 20, "2027-12-20");
    expect([dark.sunrise, dark.sunset, dark.dusk === null]).toEqual([null, null, false]);
    expect(sunDay({ latDeg: 70, lonDeg: 20, date: "2027-06-20" }).up).toBe(true);
    expect(sunDay({ latDeg: 70, lonDeg: 20, date: "2027-12-20" }).up).toBe(false);
  });

  it("refuse by field, all at once", () => {
    const outcome = sun({ latDeg: 91, lonDeg: 181, date: "2027-02-30", elevationM: Number.NaN });
    expect(outcome.ok ? [] : outcome.refusals.map(({ field }) => field)).toEqual([
      "latDeg",
      "lonDeg",
      "date",
      "elevationM",
    ]);
  });
});
