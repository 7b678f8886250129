import { describe, expect, it } from "vitest";
import { plainLabels } from "../words/plain-labels.ts";
import { fromSunset } from "./timeline-sheet.ts";

const sunset = "2027-05-14T19:52Z";
const told = (at: string): string => plainLabels(fromSunset({ at }, sunset));

describe("fromSunset", () => {
  it("counts back from sunset, and on after it", () => {
    expect(told("2027-05-14T17:40Z")).toBe("2 h 12 min before");
    expect(told("2027-05-14T19:20Z")).toBe("32 min before");
    expect(told(sunset)).toBe("at sunset");
    expect(told("2027-05-15T04:45Z")).toBe("8 h 53 min after");
    expect(told("2027-05-14T20:00Z")).toBe("8 min after");
  });

  it("says nothing where there is no sunset", () => {
    expect(plainLabels(fromSunset({ at: sunset }, undefined))).toBe("");
  });
});
