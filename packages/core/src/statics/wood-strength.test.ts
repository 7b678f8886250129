import { checks } from "@nightspan/checks";
import { describe, expect, it } from "vitest";
import rows from "./wood-strength.checks.json" with { type: "json" };
import { findWood, WEAKEST_WOOD, WOODS } from "./wood-strength.ts";

checks(rows, ({ species }) => ({ strength_mpa: (findWood(species)?.strengthPa ?? NaN) / 1e6 }));

function strength(species: string): number {
  return findWood(species)?.strengthPa ?? NaN;
}

describe("the strength of woods", () => {
  it("keeps the orders that every table agrees on", () => {
    expect(strength("black locust")).toBeGreaterThan(strength("shagbark hickory"));
    expect(strength("shagbark hickory")).toBeGreaterThan(strength("white ash"));
    expect(strength("longleaf pine")).toBeGreaterThan(strength("loblolly pine"));
    expect(strength("loblolly pine")).toBeGreaterThan(strength("ponderosa pine"));
  });

  it("finds a species by either name, any case, any order of words", () => {
    const names = ["white oak", "Oak, white", "QUERCUS ALBA", "  quercus   Alba ", "White-Oak"];
    expect(new Set(names.map(strength)).size).toBe(1);
    expect(strength("white oak")).toBeGreaterThan(0);
    expect(findWood("plastic")).toBeUndefined();
    expect(findWood("")).toBeUndefined();
  });

  it("lets no name mean two rows", () => {
    for (const wood of WOODS) {
      for (const name of [wood.scientific, ...wood.english].filter((one) => one !== "")) {
        expect(findWood(name)).toBe(wood);
      }
    }
  });

  it("takes an unknown species for the weakest listed", () => {
    expect(WEAKEST_WOOD.strengthPa).toBe(Math.min(...WOODS.map(({ strengthPa }) => strengthPa)));
  });
});
