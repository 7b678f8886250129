import { checks } from "@nightspan/checks";
import { describe, expect, it } from "vitest";
import rows from "./rising-air.checks.json" with { type: "json" };
import { risingAirNusselt } from "./rising-air.ts";

checks(rows, ({ rayleigh, prandtl }) => ({ nusselt: risingAirNusselt(rayleigh, prandtl) }));

describe("air that rises of itself", () => {
  it("leaves only conduction where nothing is warmer", () => {
    expect(risingAirNusselt(0, 0.71)).toBeCloseTo(0.36, 12);
    expect(risingAirNusselt(1e8, 0.71)).toBeGreaterThan(risingAirNusselt(1e7, 0.71));
  });
});
