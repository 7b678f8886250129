import { describe, expect, it } from "vitest";
import type { HouseRules } from "../plan/house-rules.ts";
import { presetRules } from "../plan/rule-defaults.ts";
import { at, camp, pair } from "./testing/camp.fixture.ts";
import { planned } from "./testing/planned.fixture.ts";
import type { Tree } from "../site/tree.ts";

function placedWith(trees: readonly Partial<Tree>[], rules: Partial<HouseRules>, people = 2): number {
  return planned(
    camp()
      .trees(...trees)
      .rules("usual", rules)
      .sleepers(people)
      .build(),
  ).placed;
}

describe("species not to be used", () => {
  const trees = [at(0, 0, { species: "Quercus robur" }), at(4, 0, { species: "Fagus sylvatica" })];
  const barring = (...value: string[]): Partial<HouseRules> => ({ speciesNot: { value, source: "city" } });

  it("bars a species, a genus and a common name, in any case", () => {
    expect(placedWith(trees, {}, 1)).toBe(1);
    for (const name of ["quercus robur", "QUERCUS", "fagus  sylvatica"]) {
      expect(placedWith(trees, barring(name), 1), name).toBe(0);
    }
    const red = [at(0, 0, { species: "red oak" }), at(4, 0)];
    expect(placedWith(red, barring("Oak"), 1)).toBe(0);
  });

  it("does not bar what only begins alike, nor a tree of which nobody says the species", () => {
    expect(placedWith(trees, barring("querc", "ash"), 1)).toBe(1);
    expect(placedWith([at(0, 0), at(4, 0)], barring("oak"), 1)).toBe(1);
  });

  it("bars a stated pair at such a tree of the map too", () => {
    const plan = planned(
      camp()
        .trees(...trees)
        .pairs(pair("p", ["T01", "T02"]))
        .rules("usual", barring("oak", "quercus"))
        .sleepers(1)
        .build(),
    );
    expect(plan.placed).toBe(0);
    expect(plan.supply.usable).toBe(1);
  });
});

describe("no spokes", () => {
  const two = {
    hammocksPerTree: { value: 2, source: "test" },
    footprintHalfWidthM: { value: 0.3, source: "test" },
  };
  const noSpokes = { noSpokes: { value: true, source: "park" } };
  const corner = [at(4, 0), at(0, 0), at(0, 4)];
  const line = [at(0, 0), at(4, 0), at(8, 0)];

  it("keeps two hammocks from one tree at a right angle, and lets them go on in a line", () => {
    expect(placedWith(corner, { ...presetRules("usual"), ...two })).toBe(2);
    expect(placedWith(corner, { ...presetRules("usual"), ...two, ...noSpokes })).toBe(1);
    expect(placedWith(line, { ...presetRules("usual"), ...two, ...noSpokes })).toBe(2);
  });

  it("is off where the rule says so", () => {
    expect(placedWith(corner, { ...two, noSpokes: { value: false, source: "park" } })).toBe(2);
  });
});
