import { checks } from "@nightspan/checks";
import { describe, expect, it } from "vitest";
import { KCAL_PER_DAY_W } from "./heat-units.ts";
import rows from "./resting-heat.checks.json" with { type: "json" };
import { restingHeat } from "./resting-heat.ts";

checks(rows, ({ mass_kg, stature_m, age, sex }) => {
  const outcome = restingHeat({
    massKg: mass_kg,
    statureM: stature_m,
    ageYears: age,
    sex: sex === "m" ? "m" : "f",
  });
  if (!outcome.ok) return {};
  return { kcal_per_day: outcome.value.heatW / KCAL_PER_DAY_W, heat_w_m2: outcome.value.heatWM2 };
});

describe("heat at rest", () => {
  it("is told of nobody under 16", () => {
    const outcome = restingHeat({ massKg: 50, statureM: 1.6, ageYears: 15, sex: "f" });
    expect(outcome.ok ? [] : outcome.refusals.map(({ field }) => field)).toEqual(["ageYears"]);
  });
});
