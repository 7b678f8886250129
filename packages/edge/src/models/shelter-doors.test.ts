import { describe, expect, it } from "vitest";
import { runModel } from "./run-model.ts";

function value(name: string, input: unknown): Readonly<Record<string, unknown>> {
  const answer = runModel(name, input);
  if (!answer.ok) throw new Error(JSON.stringify(answer.refusals));
  expect(answer.value.basis.assumes.length).toBeGreaterThan(0);
  return answer.value.value;
}

function fields(name: string, input: unknown): readonly string[] {
  const answer = runModel(name, input);
  return answer.ok ? [] : answer.refusals.map(({ field }) => field);
}

describe("drop-speed", () => {
  it("falls as measured, and knows no other drops", () => {
    expect(value("drop-speed", { diameter_mm: 2 })).toEqual({ speed_m_s: 6.49 });
    expect(fields("drop-speed", { diameter_mm: 7 })).toEqual(["diameter_mm"]);
    expect(fields("drop-speed", { diameter_mm: 2, wind_m_s: 1 })).toEqual(["wind_m_s"]);
    expect(fields("drop-speed", {})).toEqual(["diameter_mm"]);
  });
});

describe("rain-reach", () => {
  const asked = { wind_m_s: 5, rain_mm_h: 5, gap_m: 0.6 };

  it("tells the middle and both ends, nothing without wind or gap", () => {
    const { reach_m, reach_p05_m, reach_p95_m } = value("rain-reach", asked);
    expect(Number(reach_m)).toBeCloseTo(0.48, 2);
    expect(Number(reach_p05_m)).toBeLessThan(Number(reach_m));
    expect(Number(reach_p95_m)).toBeGreaterThan(Number(reach_m));
    const dry = { reach_m: 0, reach_p05_m: 0, reach_p95_m: 0 };
    expect(value("rain-reach", { ...asked, wind_m_s: 0 })).toEqual(dry);
    expect(value("rain-reach", { ...asked, gap_m: 0 })).toEqual(dry);
  });

  it("refuses no rain, and what it does not know", () => {
    expect(fields("rain-reach", { ...asked, rain_mm_h: 0 })).toEqual(["rain_mm_h"]);
    expect(fields("rain-reach", { ...asked, gap_m: -1, wind_m_s: "5" }).toSorted()).toEqual([
      "gap_m",
      "wind_m_s",
    ]);
    expect(fields("rain-reach", { ...asked, drop_mm: 2 })).toEqual(["drop_mm"]);
  });
});

describe("wind-load", () => {
  const asked = { wind_m_s: 10, area_m2: 2, pitch_deg: 20, blockage: 0 };

  it("takes a monopitch where no roof is named", () => {
    expect(value("wind-load", asked)).toEqual({ pressure_pa: 62.5, down_n: 100, up_n: 162.5 });
    expect(value("wind-load", { ...asked, blockage: 1 })).toMatchObject({ up_n: 175 });
    expect(value("wind-load", { ...asked, roof: "duo" })).toEqual({
      pressure_pa: 62.5,
      down_n: 75,
      up_n: 112.5,
    });
  });

  it("refuses pitches beyond each table", () => {
    expect(fields("wind-load", { ...asked, pitch_deg: 31 })).toEqual(["pitch_deg"]);
    expect(fields("wind-load", { ...asked, pitch_deg: -5 })).toEqual(["pitch_deg"]);
    expect(fields("wind-load", { ...asked, roof: "hip" })).toEqual(["roof"]);
    expect(fields("wind-load", { ...asked, gust: 1 })).toEqual(["gust"]);
  });
});

describe("sun", () => {
  it("tells instants in UTC, and null where there is none", () => {
    const golden = { lat_deg: 39.742476, lon_deg: -105.1786, date: "2003-10-17", elevation_m: 1830.14 };
    // Local 06:12:43; within half a minute of the published case.
    expect(String(value("sun", golden)["sunrise"])).toMatch(/^2003-10-17T13:1[23]:\d\dZ$/);
    expect(value("sun", { lat_deg: 70, lon_deg: 20, date: "2027-06-20", elevation_m: 0 })).toEqual({
      sunrise: null,
      sunset: null,
      dusk: null,
    });
  });

  it("refuses what is no day and no place", () => {
    const asked = { lat_deg: 50, lon_deg: 0, date: "2027-02-30", elevation_m: 0 };
    expect(fields("sun", asked)).toEqual(["date"]);
    expect(fields("sun", { ...asked, date: "2027-02-03", lat_deg: 95 })).toEqual(["lat_deg"]);
    expect(fields("sun", { ...asked, date: "2027-02-03", timezone: "UTC" })).toEqual(["timezone"]);
  });
});

describe("dew-point", () => {
  it("is told in °C", () => {
    expect(Number(value("dew-point", { air_c: 20, humidity: 0.5 })["dew_point_c"])).toBeCloseTo(9.26, 2);
    expect(value("dew-point", { air_c: 3, humidity: 1 })).toEqual({ dew_point_c: 3 });
  });

  it("refuses dry air and damper than damp", () => {
    expect(fields("dew-point", { air_c: 20, humidity: 0 })).toEqual(["humidity"]);
    expect(fields("dew-point", { air_c: 20, humidity: 50 })).toEqual(["humidity"]);
    expect(fields("dew-point", { air_c: 20, humidity: 0.5, cloud: 1 })).toEqual(["cloud"]);
  });
});
