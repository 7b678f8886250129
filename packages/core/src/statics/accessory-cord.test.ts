import { checks } from "@nightspan/checks";
import { describe, expect, it } from "vitest";
import rows from "./accessory-cord.checks.json" with { type: "json" };
import { accessoryCord } from "./accessory-cord.ts";

function breakingN(diameterM: number): number {
  const outcome = accessoryCord({ diameterM });
  return outcome.ok ? outcome.value.breakingN : NaN;
}

checks(rows, ({ diameter_mm }) => ({ breaking_kn: breakingN(diameter_mm / 1000) / 1000 }));

describe("accessoryCord", () => {
  it("bears by its section: twice the diameter, four times the load", () => {
    expect(breakingN(0.008) / breakingN(0.004)).toBeCloseTo(4, 12);
  });

  it("refuses what the standard does not list", () => {
    for (const diameterM of [Number.NaN, 0.0039, 0.0081, -0.005]) {
      const outcome = accessoryCord({ diameterM });
      expect(outcome.ok ? [] : outcome.refusals.map(({ field }) => field)).toEqual(["diameterM"]);
    }
  });
});
