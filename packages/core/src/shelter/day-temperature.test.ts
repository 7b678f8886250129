import { checks } from "@nightspan/checks";
import { describe, expect, it } from "vitest";
import rows from "./day-temperature.checks.json" with { type: "json" };
import { dayCurve, dayTemperature } from "./day-temperature.ts";

const ICE_K = 273.15;
const DAY = { lowK: ICE_K + 5, highK: ICE_K + 20, sunriseH: 6, sunsetH: 18 };

checks(rows, ({ hour }) => ({ air_c: dayCurve(DAY, false)(hour) - ICE_K }));

describe("air temperature through the night", () => {
  const at = dayTemperature(DAY);

  it("comes down to the low of the forecast, and no lower", () => {
    expect(at(30 - 0.17)).toBeCloseTo(DAY.lowK, 9);
    const night = Array.from({ length: 120 }, (_, index) => at(18 + index / 10));
    expect(Math.min(...night)).toBeGreaterThanOrEqual(DAY.lowK - 1e-9);
    const rounded = night.slice(0, 118);
    expect(rounded).toEqual([...rounded].sort((a, b) => b - a));
  });

  it("does not jump at sunset, and goes round with the day", () => {
    expect(at(18 - 1e-9)).toBeCloseTo(at(18 + 1e-9), 6);
    expect(at(2)).toBeCloseTo(at(26), 12);
  });

  it("is highest in the afternoon, at the high", () => {
    const hours = Array.from({ length: 241 }, (_, index) => index / 10);
    const most = Math.max(...hours.map(at));
    expect(most).toBeCloseTo(DAY.highK, 2);
    expect(hours.find((hour) => at(hour) === most)).toBeCloseTo(13.8, 0);
  });
});
