import { describe, expect, it } from "vitest";
import { faultFields, faults, smallCamp } from "../examples.fixture.ts";
import { openCamp } from "./open-camp.ts";

const NIGHT = { low_c: 4, wind_m_s: 3 };
const PLACE = { lat_deg: 60, lon_deg: 10, timezone: "Europe/Oslo" };

describe("the night of a camp file", () => {
  it("goes into SI, its hours in order of time", () => {
    const opened = openCamp(
      smallCamp({
        date: "2027-05-14",
        place: PLACE,
        night: {
          ...NIGHT,
          thunder: "possible",
          thunder_rule: { flash_to_bang_s: 30, wait_min: 30 },
          hours: [
            { at: "02:00", air_c: 4, rain_mm_h: 1 },
            { at: "2027-05-14T19:00Z", air_c: 9, wind_m_s: 2, gust_m_s: 5 },
          ],
        },
        set_up: { per_berth_min: 12, helpers: 3, margin_min: 30 },
      }),
    );
    expect(opened.ok && opened.value.camp.night).toMatchObject({
      lowK: 277.15,
      thunder: "possible",
      thunderRule: { flashToBangS: 30, waitS: 1_800 },
      hours: [
        { at: "2027-05-14T19:00Z", airK: 282.15, windMS: 2, gustMS: 5 },
        { at: "2027-05-15T00:00Z", airK: 277.15, rainMmH: 1 },
      ],
    });
    expect(opened.ok && opened.value.camp.setUp).toEqual({ perBerthS: 720, helpers: 3, marginS: 1_800 });
  });

  it("tells bounds out of order, and hours that cannot be placed or come twice", () => {
    const night = {
      ...NIGHT,
      high_c: 2,
      gust_m_s: 1,
      hours: [{ at: "23:00", air_c: 3, wind_m_s: 4, gust_m_s: 3 }],
    };
    expect(faultFields(openCamp(smallCamp({ night })))).toEqual([
      "night.low_c",
      "night.wind_m_s",
      "night.hours[0].wind_m_s",
      "night.hours[0].at",
    ]);
    const hours = ["23:00", "2027-05-14T21:00Z", "half past"].map((at) => ({ at, air_c: 3 }));
    const placed = openCamp(smallCamp({ date: "2027-05-14", place: PLACE, night: { ...NIGHT, hours } }));
    expect(faults(placed).map((fault) => fault.slice(0, 60))).toEqual([
      'night.hours[2].at: a time such as "23:00", "2027-05-14T23:00',
      "night.hours[1].at: a time of its own; night.hours[0] has thi",
    ]);
  });

  it("tells a date that is no day once, not again at every hour", () => {
    const night = { ...NIGHT, hours: [{ at: "02:00", air_c: 3 }] };
    const dates = ["2027-05-142027-05-14", "2027-02-30", "soon"];
    for (const date of dates) {
      expect(faultFields(openCamp(smallCamp({ date, place: PLACE, night })))).toEqual(["date"]);
    }
  });

  it("knows time zones by name", () => {
    const place = { ...PLACE, timezone: "Norway time" };
    expect(faults(openCamp(smallCamp({ place })))).toEqual([
      "place.timezone: a time zone such as Europe/Oslo",
    ]);
  });
});
