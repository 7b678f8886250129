import { checks } from "@nightspan/checks";
import fc from "fast-check";
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

  it("of either kind comes back, whatever the filling, over the whole range", () => {
    const of = fc.constantFrom("comfort" as const, "limit" as const);
    const filling = fc.constantFrom("down" as const, "polyester" as const, "foam" as const);
    const labelC = fc.double({ min: -39, max: 18, noNaN: true });
    fc.assert(
      fc.property(labelC, of, filling, (celsius, kind, filled) => {
        const outcome = bagLabel({ labelK: ICE_K + celsius, of: kind, filling: filled });
        expect(outcome.ok).toBe(true);
        if (!outcome.ok) return;
        expect(labelOfBag(outcome.value.topM2KPerW, kind, filled) - ICE_K).toBeCloseTo(celsius, 5);
        const other = labelOfBag(outcome.value.topM2KPerW, kind === "comfort" ? "limit" : "comfort", filled);
        expect(kind === "comfort" ? other < ICE_K + celsius : other > ICE_K + celsius).toBe(true);
      }),
      { seed: 1, numRuns: 300 },
    );
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
