import { describe, expect, it } from "vitest";
import { faultFields, faults, smallCamp } from "../examples.fixture.ts";
import { openCamp } from "./open-camp.ts";

const look = (on: string, action: string, over: object = {}) => {
  return { by: "Ada", on, finding: "as it was", action, ...over };
};

describe("the store of a camp file", () => {
  it("goes into SI with its numbers, wear and history", () => {
    const inspections = [look("2027-01-05", "pass"), look("2027-03-01", "quarantine", { number: "7" })];
    const kit = [
      {
        id: "u",
        kind: "under",
        r_m2k_w: 0.6,
        form: "underblanket",
        gap: 0.1,
        permeability_mm_s: 8,
        loft_left: 0.9,
      },
      { id: "o", kind: "over", comfort_c: 2, limit_c: -3, form: "bag", loft_mm: 45, fill: "down" },
      {
        id: "t",
        kind: "tarp",
        shape: "hexagon",
        ridge_m: 3.4,
        width_m: 3,
        edge_m: 2.4,
        catenary_cut_m: 0.1,
        tie_outs: 1,
      },
      { id: "s", kind: "cord", material: "guy-cord", length_m: 50, width_mm: 3, label: "guy cord" },
      { id: "p", kind: "peg", count: 40, holds_n: 250 },
      {
        id: "h",
        kind: "hammock",
        length_m: 3,
        numbers: ["7", "8"],
        wear: "good",
        in_service_on: "2025-04-01",
        inspections,
      },
    ];
    const opened = openCamp(smallCamp({ kit }));
    const items = opened.ok ? opened.value.camp.kit : [];
    expect(items).toMatchObject([
      {
        insulationM2KPerW: 0.6,
        form: "underblanket",
        gapRatio: 0.1,
        permeabilityMS: 0.008,
        loftLeftRatio: 0.9,
      },
      { comfortK: 275.15, limitK: 270.15, form: "bag", loftM: 0.045, fill: "down" },
      { shape: "hexagon", edgeM: 2.4, catenaryCutM: 0.1, tieOuts: 1 },
      { kind: "cord", material: "guy-cord", lengthM: 50, widthM: 0.003, label: "guy cord" },
      { kind: "peg", count: 40, holdsN: 250 },
      { count: 2, numbers: ["7", "8"], wear: "good", inServiceOn: "2025-04-01", inspections },
    ]);
    expect(opened.ok && opened.value.unknownFields).toEqual([]);
  });

  it("tells one line for each fault between fields", () => {
    const kit = [
      { id: "o", kind: "over", comfort_c: -5, limit_c: 0 },
      { id: "t", kind: "tarp", shape: "hexagon", ridge_m: 3, width_m: 3, edge_m: 3.5 },
      { id: "h", kind: "hammock", length_m: 3, count: 1, numbers: ["7", "7"] },
      { id: "c", kind: "tarp", shape: "rectangle", ridge_m: 3, width_m: 3, catenary_cut_m: 1.4 },
      { id: "d", kind: "tarp", shape: "rectangle", ridge_m: 3, width_m: 3, catenary_cut_m: 0.75 },
    ];
    expect(faults(openCamp(smallCamp({ kit })))).toEqual([
      "kit[0].limit_c: at most comfort_c, which is -5",
      "kit[1].edge_m: at most ridge_m, which is 3",
      "kit[2].numbers[1]: a number of its own; numbers[0] has this one",
      "kit[2].numbers: at most as many as count, which is 1",
      "kit[3].catenary_cut_m: at most a quarter of width_m, which is 0.75",
    ]);
  });

  it("keeps the history of a piece straight: the oldest first, a number that is there, retired for good", () => {
    const inspections = [
      look("2027-03-01", "pass"),
      look("2027-02-01", "pass"),
      look("2027-03-02", "retire", { number: "7" }),
      look("2027-03-03", "pass", { number: "8" }),
      look("2027-03-04", "pass", { number: "7" }),
      look("2027-03-05", "pass", { number: "9" }),
    ];
    const kit = [{ id: "h", kind: "hammock", length_m: 3, numbers: ["7", "8"], inspections }];
    expect(faultFields(openCamp(smallCamp({ kit })))).toEqual([
      "kit[0].inspections[1].on",
      "kit[0].inspections[4].action",
      "kit[0].inspections[5].number",
    ]);
  });
});
