import { describe, expect, it } from "vitest";
import { sayDay, today } from "./today.ts";

describe("days", () => {
  it("tell the civil day of the device's own clock", () => {
    expect(today(new Date(2027, 4, 14, 23, 59))).toBe("2027-05-14");
    expect(today(new Date(2027, 0, 1, 0, 0))).toBe("2027-01-01");
  });

  it("are said shortly, with the weekday where there is room", () => {
    expect(sayDay("2027-05-14")).toBe("14\u00a0May");
    expect(sayDay("2027-05-14", true)).toBe("Fri\u00a014\u00a0May");
  });

  it("are said as written where they are none", () => {
    expect(sayDay("some day")).toBe("some day");
  });
});
