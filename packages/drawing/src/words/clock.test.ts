import { describe, expect, it } from "vitest";
import { clockText, instantMs } from "./clock.ts";

const oslo = { latDeg: 59.9, lonDeg: 10.75 };

describe("clockText", () => {
  it("tells the hour of the camp's own zone, summer time and all", () => {
    const place = { ...oslo, timezone: "Europe/Oslo" };
    expect(clockText("2027-05-14T20:10Z", place).said).toBe("22:10");
    expect(clockText("2027-01-14T20:10Z", place).said).toBe("21:10");
  });

  it("tells sun time where no zone is named, or none that is known: four minutes a degree", () => {
    expect(clockText("2027-05-14T20:10Z", oslo).said).toBe("20:53");
    expect(clockText("2027-05-14T20:10Z", { ...oslo, timezone: "Middle/Earth" }).said).toBe("20:53");
    expect(clockText("2027-05-14T20:10Z", undefined).said).toBe("20:10");
  });

  it("says what is no instant as it stands", () => {
    expect(clockText("late", undefined).said).toBe("late");
  });
});

describe("instantMs", () => {
  // The calendar of the language itself, which drawings do without.
  it.each(["1970-01-01T00:00Z", "2000-02-29T23:59:59Z", "2027-05-14T20:10:30.5Z", "2100-03-01T00:00Z"])(
    "counts %s as the language does, to the second",
    (instant) => expect(instantMs(instant)).toBe(Math.floor(Date.parse(instant) / 1000) * 1000),
  );
});
