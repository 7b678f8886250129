import { checks } from "@nightspan/checks";
import { describe, expect, it } from "vitest";
import { ICE_K } from "./heat-units.ts";
import rows from "./required-insulation.checks.json" with { type: "json" };
import { requiredInsulation, type RequiredInsulationInput } from "./required-insulation.ts";

checks(rows, ({ metabolic_w_m2, skin_c, air_c, humidity, wetness }) => {
  const outcome = requiredInsulation({
    metabolicWM2: metabolic_w_m2,
    skinK: skin_c + ICE_K,
    airK: air_c + ICE_K,
    humidityRatio: humidity,
    wetnessRatio: wetness,
  });
  return outcome.ok ? { rc_m2k_w: outcome.value.totalM2KPerW } : {};
});

const ASLEEP: RequiredInsulationInput = {
  metabolicWM2: 40,
  skinK: ICE_K + 33,
  airK: ICE_K,
  humidityRatio: 0.5,
  wetnessRatio: 0.06,
};

describe("the insulation needed", () => {
  it("lets out just what is made", () => {
    for (const airC of [-30, -5, 10]) {
      const outcome = requiredInsulation({ ...ASLEEP, airK: ICE_K + airC });
      if (!outcome.ok) throw new Error("refused");
      const { breathWM2, sweatWM2, dryWM2 } = outcome.value;
      expect(breathWM2 + sweatWM2 + dryWM2).toBeCloseTo(40, 10);
    }
  });

  it("is more the colder the air and the less heat is made", () => {
    const of = (change: Partial<RequiredInsulationInput>) => {
      const outcome = requiredInsulation({ ...ASLEEP, ...change });
      return outcome.ok ? outcome.value.totalM2KPerW : NaN;
    };
    expect(of({ airK: ICE_K - 10 })).toBeGreaterThan(of({}));
    expect(of({ metabolicWM2: 38 })).toBeGreaterThan(of({}));
  });

  it("refuses by field", () => {
    const outcome = requiredInsulation({ ...ASLEEP, skinK: 33, wetnessRatio: 2 });
    expect(outcome.ok ? [] : outcome.refusals.map(({ field }) => field)).toEqual(["skinK", "wetnessRatio"]);
    const hot = requiredInsulation({ ...ASLEEP, airK: ICE_K + 35 });
    expect(hot.ok ? [] : hot.refusals.map(({ field }) => field)).toEqual(["airK"]);
  });
});
