import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dateLater, isoInstant, parseDate, parseInstant } from "./civil-time.ts";

describe("civil time", () => {
  it("counts from noon of 1 January 2000", () => {
    expect(parseDate("2000-01-01")).toBe(0);
    expect(parseInstant("2000-01-01T12:00Z")).toBe(0);
    // The Julian day of the test case of the solar position algorithm.
    expect((parseInstant("2003-10-17T12:30:30-07:00") ?? 0) + 2_451_545).toBeCloseTo(2452930.312847, 6);
  });

  it("agrees with the calendar of the language, there and back", () => {
    const time = fc.integer({ min: Date.UTC(1900, 0, 1) / 1000, max: Date.UTC(2100, 11, 31) / 1000 });
    fc.assert(
      fc.property(time, (seconds) => {
        const text = new Date(seconds * 1000).toISOString().replace(".000", "");
        const instant = parseInstant(text) ?? Number.NaN;
        expect(isoInstant(instant)).toBe(text);
        expect(instant).toBeCloseTo((seconds - Date.UTC(2000, 0, 1, 12) / 1000) / 86_400, 8);
      }),
      { seed: 1, numRuns: 500 },
    );
  });

  it.each(["2027-02-29", "2027-13-01", "2027-00-10", "1899-12-31", "14.5.2027", "", "2027-05-14T10:00Z"])(
    "has no day %s",
    (text) => {
      expect(parseDate(text)).toBeUndefined();
    },
  );

  it.each(["2027-05-14", "2027-05-14T25:00Z", "2027-05-14T10:60Z", "2027-05-14T10:00", "tonight"])(
    "has no instant %s",
    (text) => {
      expect(parseInstant(text)).toBeUndefined();
    },
  );

  it("finds the day after, over months and leap days", () => {
    expect(dateLater("2028-02-28", 1)).toBe("2028-02-29");
    expect(dateLater("2027-12-31", 1)).toBe("2028-01-01");
  });
});
