import { checks } from "@nightspan/checks";
import { describe, expect, it } from "vitest";
import rows from "./du-bois-area.checks.json" with { type: "json" };
import { duBoisArea } from "./du-bois-area.ts";

function areaOf(massKg: number, statureM: number): number {
  const outcome = duBoisArea({ massKg, statureM });
  return outcome.ok ? outcome.value.areaM2 : NaN;
}

checks(rows, ({ mass_kg, stature_m }) => ({ area_m2: areaOf(mass_kg, stature_m) }));

describe("the area of skin", () => {
  it("grows with mass and with stature", () => {
    expect(areaOf(80, 1.73)).toBeGreaterThan(areaOf(70, 1.73));
    expect(areaOf(70, 1.8)).toBeGreaterThan(areaOf(70, 1.73));
  });

  it("refuses by field", () => {
    const outcome = duBoisArea({ massKg: Number.NaN, statureM: 3 });
    expect(outcome.ok ? [] : outcome.refusals.map(({ field }) => field)).toEqual(["massKg", "statureM"]);
  });
});
