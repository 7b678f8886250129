import { COST_WEIGHTS, type HouseRules } from "@nightspan/core";
import { describe, expect, it } from "vitest";
import { campOfOne } from "./camp-of-one.ts";
import { openCamp } from "./open-camp.ts";

function rulesOf(rules: Readonly<Record<string, unknown>>): HouseRules | readonly string[] {
  const opened = openCamp({ ...campOfOne({ spanM: 4, statureM: 1.7 }), rules });
  return opened.ok ? opened.value.camp.rules : opened.refusals.map(({ field }) => field);
}

describe("house rules that are no number", () => {
  it("reads them bare, or with who says so and when it was read", () => {
    expect(rulesOf({ no_spokes: true, survey_room: false, species_not: ["oak"] })).toMatchObject({
      noSpokes: { value: true, source: "camp file" },
      surveyRoom: { value: false, source: "camp file" },
      speciesNot: { value: ["oak"], source: "camp file" },
    });
    const said = { value: ["oak", "birch"], source: "city byelaw", read_on: "2027-03-01" };
    expect(rulesOf({ species_not: said })).toMatchObject({
      speciesNot: { value: ["oak", "birch"], source: "city byelaw", readOn: "2027-03-01" },
    });
  });

  it("is silent about them where the file is", () => {
    const rules = rulesOf({});
    expect(rules).not.toHaveProperty("noSpokes");
    expect(rules).not.toHaveProperty("speciesNot");
    expect(rules).not.toHaveProperty("weights");
  });

  it("fills in the weights that are not stated", () => {
    expect(rulesOf({ weights: { walk: 0.05 } })).toMatchObject({ weights: { ...COST_WEIGHTS, walk: 0.05 } });
  });

  it("refuses what is no rule, by field", () => {
    expect(rulesOf({ no_spokes: "yes" })).toEqual(["rules.no_spokes"]);
    expect(rulesOf({ species_not: "oak" })).toEqual(["rules.species_not"]);
    expect(rulesOf({ weights: { walk: -1 } })).toEqual(["rules.weights.walk"]);
  });
});
