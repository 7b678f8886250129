import { describe, expect, it } from "vitest";
import { findInstant, isTime, isTimezone } from "./instant.ts";

const OSLO = { date: "2027-05-14", timezone: "Europe/Oslo" };

describe("times of a forecast", () => {
  it.each([
    ["23:00", "2027-05-14T21:00Z"],
    ["12:00", "2027-05-14T10:00Z"],
    ["03:30", "2027-05-15T01:30Z"],
    ["00:00", "2027-05-14T22:00Z"],
    ["2027-05-14T21:00Z", "2027-05-14T21:00Z"],
    ["2027-05-14 23:00", "2027-05-14T21:00Z"],
    ["2027-05-14T23:00:00+02:00", "2027-05-14T21:00Z"],
    ["2027-05-14T15:30:00.000-0530", "2027-05-14T21:00Z"],
  ])("%s is an instant", (text, instant) => {
    expect(isTime(text)).toBe(true);
    expect(findInstant(text, OSLO)).toBe(instant);
  });

  it("need a day and a time zone where they do not say so themselves", () => {
    expect(findInstant("23:00", { date: "2027-05-14" })).toBeUndefined();
    expect(findInstant("23:00", { timezone: "Europe/Oslo" })).toBeUndefined();
    expect(findInstant("2027-05-14T23:00", {})).toBeUndefined();
    expect(findInstant("2027-05-14T23:00+01:00", {})).toBe("2027-05-14T22:00Z");
  });

  it("go by the clocks of the place on the night that they change", () => {
    const change = { date: "2027-10-30", timezone: "Europe/London" };
    expect(findInstant("23:00", change)).toBe("2027-10-30T22:00Z");
    expect(findInstant("05:00", change)).toBe("2027-10-31T05:00Z");
  });

  it("are nothing else", () => {
    for (const text of ["", "24:00", "9:00", "23:60", "2027-02-30T10:00Z", "23:00Z", "noon", "2027-05-14"]) {
      expect(isTime(text), text).toBe(false);
    }
    expect(isTimezone("Europe/Oslo")).toBe(true);
    expect(isTimezone("Mittelerde/Bree")).toBe(false);
  });
});
