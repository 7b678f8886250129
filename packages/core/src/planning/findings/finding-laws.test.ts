import { describe, expect, it } from "vitest";
import type { HouseRules } from "../../plan/house-rules.ts";
import { degrees } from "../../quantity/angle.ts";
import { at, camp, hammock, sleeper, webbing } from "../testing/camp.fixture.ts";
import { planned } from "../testing/planned.fixture.ts";

const house = (value: number) => ({ value, source: "land manager" });

/** Camps in which caps bind, people are heavy, woods unnamed, straps soft and stiff. */
const RULES: readonly Partial<HouseRules>[] = [
  {},
  { angleMinRad: house(degrees(15)), strapHeightMaxM: house(1.7) },
  { angleMinRad: house(degrees(15)), lowPointMaxM: house(0.4) },
];

const STRAPS = [{}, { eaN: 2500 }, { eaN: 400_000 }, { type: "whoopie-sling", throughOwnEye: true }] as const;

describe("every finding of a berth", () => {
  it("is never clear where its own comparison is not kept", () => {
    let told = 0;
    for (const rules of RULES) {
      for (const strap of STRAPS) {
        const plan = planned(
          camp()
            .trees(at(0, 0, { leanRad: 0.3 }), at(4.8, 0, { species: "Ginkgo biloba" }))
            .sleepers(sleeper("s1", { massKg: 100, ageYears: 5 }))
            .kit(hammock("red"), webbing("band", strap))
            .rules("usual", rules)
            .build(),
        );
        for (const finding of plan.berths.flatMap(({ findings }) => findings)) {
          told++;
          if (finding.verdict === "clear")
            expect(finding.margin ?? 0, finding.rule).toBeGreaterThanOrEqual(-1e-9);
        }
      }
    }
    expect(told).toBeGreaterThan(300);
  });
});
