import { checks } from "@nightspan/checks";
import { describe, expect, it } from "vitest";
import rows from "./trunk.checks.json" with { type: "json" };
import { trunk, type Trunk, type TrunkInput } from "./trunk.ts";

const OAK: TrunkInput = { species: "white oak", dbhM: 0.3, pullN: 700, heightM: 1.6, strapWidthM: 0.025 };

function trunkOf(given: Partial<TrunkInput>): Trunk {
  const outcome = trunk({ ...OAK, ...given });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.refusals));
  return outcome.value;
}

checks(rows, ({ dbh, pull, height, width }) => {
  const { bendingPa, barkPa } = trunkOf({ dbhM: dbh, pullN: pull, heightM: height, strapWidthM: width });
  return { bending_mpa: bendingPa / 1e6, bark_kpa: barkPa / 1e3 };
});

describe("trunk", () => {
  it("bends eight times as much at half the diameter, twice as much at twice the height", () => {
    expect(trunkOf({ dbhM: 0.15 }).bendingPa / trunkOf({}).bendingPa).toBeCloseTo(8, 10);
    expect(trunkOf({ heightM: 3.2 }).useRatio / trunkOf({}).useRatio).toBeCloseTo(2, 10);
  });

  it("presses twice as hard where a strap runs through its own eye", () => {
    const { barkPa, barkPeakPa } = trunkOf({});
    expect(barkPeakPa).toBe(2 * barkPa);
  });

  it("measures bending against the species' strength", () => {
    const { useRatio, bendingPa, strengthPa } = trunkOf({ species: "QUERCUS ALBA" });
    expect(useRatio).toBeCloseTo(bendingPa / strengthPa, 12);
    expect(strengthPa / 1e6).toBeCloseTo(57.2, 1);
  });

  it("refuses by field, an unlisted species among them", () => {
    const outcome = trunk({ species: "tree", dbhM: 0, pullN: -1, heightM: Number.NaN, strapWidthM: 2 });
    const fields = outcome.ok ? [] : outcome.refusals.map(({ field }) => field);
    expect(fields).toEqual(["species", "dbhM", "pullN", "heightM", "strapWidthM"]);
  });
});
