import { checks } from "@nightspan/checks";
import { describe, expect, it } from "vitest";
import rows from "./coldest-air.checks.json" with { type: "json" };
import { coldestAir } from "./coldest-air.ts";
import { ICE_K } from "./heat-units.ts";
import { balanceAt } from "./required-insulation.ts";
import { SLEEP_STATES } from "./sleep-states.ts";

checks(rows, ({ r_m2k_w }) => ({ limit_c: coldestAir(SLEEP_STATES.limit, r_m2k_w, 0.5).x - ICE_K }));

describe("the coldest air", () => {
  it("needs just the insulation that is there", () => {
    for (const totalM2KPerW of [0.4, 0.8, 1.3]) {
      const { x, converged } = coldestAir(SLEEP_STATES.comfort, totalM2KPerW, 0.8);
      expect(converged).toBe(true);
      expect(balanceAt(SLEEP_STATES.comfort, x, 0.8).totalM2KPerW).toBeCloseTo(totalM2KPerW, 9);
    }
  });

  it("is colder for the limit than for comfort, and has edges", () => {
    const at = (key: keyof typeof SLEEP_STATES, r: number) => coldestAir(SLEEP_STATES[key], r, 0.5).x;
    expect(at("limit", 1)).toBeLessThan(at("comfort", 1));
    expect(at("extreme", 1)).toBeLessThan(at("limit", 1));
    expect(at("comfort", 0)).toBe(ICE_K + 32);
    expect(at("comfort", 20)).toBe(ICE_K - 120);
  });
});
