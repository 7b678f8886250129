import { checks } from "@nightspan/checks";
import { describe, expect, it } from "vitest";
import { inDegrees, radians } from "../quantity/angle.ts";
import { parseInstant } from "./civil-time.ts";
import rows from "./solar-position.checks.json" with { type: "json" };
import { solarPosition } from "./solar-position.ts";

const told = (angle: number) => inDegrees(radians(angle));

checks(rows, ({ instant, lat_deg, lon_deg }) => {
  const at = solarPosition(parseInstant(instant) ?? Number.NaN, lat_deg, lon_deg);
  return {
    zenith_deg: told(at.zenithRad),
    azimuth_deg: told(at.azimuthRad),
    declination_deg: told(at.declinationRad),
  };
});

describe("the sun's place", () => {
  it("is south at noon north of the tropics and north of them in the south", () => {
    const noon = parseInstant("2027-03-21T12:07Z") ?? 0;
    expect(told(solarPosition(noon, 50, 0).azimuthRad)).toBeCloseTo(180, 0);
    const south = told(solarPosition(noon, -50, 0).azimuthRad) % 360;
    expect(Math.min(south, 360 - south)).toBeLessThan(1);
  });

  it("stays within the tropics", () => {
    for (let day = 0; day < 366; day += 5) {
      const { declinationRad } = solarPosition(9800 + day, 0, 0);
      expect(Math.abs(told(declinationRad))).toBeLessThan(23.45);
    }
  });
});
