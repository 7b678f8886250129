import { checks } from "@nightspan/checks";
import { describe, expect, it } from "vitest";
import rows from "./bag-label.checks.json" with { type: "json" };
import { bagLabel, labelOfBag } from "./bag-label.ts";
import { ICE_K } from "./heat-units.ts";
import { layerM2KPerW } from "./layer-label.ts";

function topOf(comfortC: number, filling: "down" | "polyester" = "down"): number {
  const outcome = bagLabel({ labelK: ICE_K + comfortC, of: "comfort", filling });
  return outcome.ok ? outcome.value.topM2KPerW : NaN;
}

checks(rows, ({ comfort_c }) => ({ limit_c: labelOfBag(topOf(comfort_c), "limit", "down") - ICE_K }));

describe("a bag's label", () => {
  it.each([20, 7, 0, -12, -25])("of %d °C comes back from the insulation it stands for", (comfortC) => {
    expect(labelOfBag(topOf(comfortC), "comfort", "down") - ICE_K).toBeCloseTo(comfortC, 6);
    expect(topOf(comfortC)).toBeGreaterThan(topOf(comfortC + 1));
  });

  it("counts the air about the bag once: what a colder label adds is in the bag", () => {
    const outcome = bagLabel({ labelK: ICE_K, of: "comfort", filling: "down" });
    if (!outcome.ok) throw new Error("refused");
    expect(Math.abs(outcome.value.residual)).toBeLessThan(1e-12);
    expect(outcome.value.totalM2KPerW).toBeCloseTo(0.97, 2);
    expect(outcome.value.topM2KPerW).toBeLessThan(outcome.value.totalM2KPerW);
  });

  it("refuses a label beyond its range", () => {
    const outcome = bagLabel({ labelK: ICE_K + 30, of: "limit", filling: "down" });
    expect(outcome.ok ? [] : outcome.refusals.map(({ field }) => field)).toEqual(["labelK"]);
  });

  it("of a layer is less insulation read as a limit than as comfort, and none is left in the warm", () => {
    expect(layerM2KPerW(ICE_K - 2, "limit")).toBeLessThan(layerM2KPerW(ICE_K - 2, "comfort"));
    expect(layerM2KPerW(ICE_K - 10, "limit")).toBeGreaterThan(layerM2KPerW(ICE_K, "limit"));
    expect(layerM2KPerW(ICE_K + 50, "limit")).toBeGreaterThanOrEqual(0);
  });
});
