import { checks } from "@nightspan/checks";
import { describe, expect, it } from "vitest";
import rows from "./breathing-loss.checks.json" with { type: "json" };
import { breathingLoss, coldBreathLoss, type Breath } from "./breathing-loss.ts";
import { ICE_K } from "./heat-units.ts";
import { predictedVote } from "./pmv.fixture.ts";
import { vapourPressurePa } from "./vapour-pressure.ts";

checks(rows, (given) => ({ pmv: predictedVote(given) }));

function lossOf(airC: number, breath: Breath, humidityRatio = 0.5): number {
  const outcome = breathingLoss({ metabolicWM2: 40, airK: ICE_K + airC, humidityRatio, breath });
  return outcome.ok ? outcome.value.lossWM2 : NaN;
}

describe("the breath", () => {
  it("takes a tenth to a sixth of a sleeper's heat, less from cooler breath", () => {
    expect(lossOf(0, "cold")).toBeGreaterThan(4);
    expect(lossOf(0, "cold")).toBeLessThan(40 / 6);
    expect(lossOf(0, "cold")).toBeLessThan(lossOf(0, "room"));
  });

  it("takes less the damper the air, and as much by either way of asking", () => {
    expect(lossOf(5, "cold", 0.9)).toBeLessThan(lossOf(5, "cold", 0.2));
    const airPa = 0.5 * vapourPressurePa(ICE_K - 7);
    expect(coldBreathLoss(40, ICE_K - 7, airPa)).toBeCloseTo(lossOf(-7, "cold"), 12);
  });

  it("refuses by field", () => {
    const outcome = breathingLoss({ metabolicWM2: 0, airK: 0, humidityRatio: 60, breath: "cold" });
    expect(outcome.ok ? [] : outcome.refusals.map(({ field }) => field)).toEqual([
      "metabolicWM2",
      "airK",
      "humidityRatio",
    ]);
  });
});
