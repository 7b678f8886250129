import { describe, expect, it } from "vitest";
import type { KitItem } from "../../plan/kit.ts";
import { dealKit } from "../deal-kit.ts";
import { hammock, sleeper, webbing } from "../testing/camp.fixture.ts";
import { packingList } from "./packing-list.ts";

const PEOPLE = [sleeper("a", { massKg: 50, group: "red" }), sleeper("b", { massKg: 80 })];
const KIT: readonly KitItem[] = [
  hammock("h", { count: 2, massKg: 0.6, numbers: ["H1", "H2"] }),
  webbing("w", { count: 2, massKg: 0.4 }),
  { id: "u", kind: "under", count: 3, state: "in-use", limitK: 270 },
  { id: "p", kind: "peg", count: 9, state: "in-use", massKg: 0.02 },
  { id: "l", kind: "light", count: 2, state: "in-use", massKg: 0.1 },
];

function list() {
  const { dealing } = dealKit(PEOPLE, KIT, 0.025);
  if (dealing === undefined) throw new Error("nothing was dealt");
  const drip = {
    material: "thin-cord",
    purpose: "drip-line",
    lengthM: 0.3,
    count: 2,
    allowanceM: 0.15,
  } as const;
  const cuts = {
    materials: [
      {
        material: "thin-cord" as const,
        pieces: [{ ...drip, berths: ["1", "1"] }],
        patterns: [],
        toBuy: [],
        usedM: 10,
        boughtM: 10,
        leastBoughtM: 10,
        leastSpools: 1,
        piecesM: 0.6,
        proven: true,
      },
    ],
  };
  return packingList({
    camp: { sleepers: PEOPLE, groups: [], kit: KIT },
    dealing,
    cuts,
    berthOf: new Map([["a", "1"]]),
  });
}

describe("packingList", () => {
  it("splits by who carries, with numbers, and sums what was weighed", () => {
    const [a, b] = list().sleepers;
    expect(a?.lines).toEqual([
      { carrier: "berth", what: "hammock", count: 1, numbers: ["H1"], item: "h", massKg: 0.6 },
      { carrier: "berth", what: "suspension", count: 1, item: "w", massKg: 0.4 },
      { carrier: "own", what: "under", count: 1, item: "u" },
      { carrier: "berth", what: "drip-line", count: 2 },
      { carrier: "own", what: "light", count: 1, item: "l", massKg: 0.1 },
    ]);
    expect(a).toMatchObject({ berth: "1", unweighed: 1 });
    expect(a?.massKg).toBeCloseTo(1.1, 9);
    expect(a?.ofBodyRatio).toBeCloseTo(0.022, 9);
    expect(b?.berth).toBeUndefined();
    expect(b?.lines.some(({ what }) => what === "drip-line")).toBe(false);
  });

  it("shares pegs out by heads, and lists what is left with the spare under layer", () => {
    const { groups, shared } = list();
    expect(groups).toMatchObject([
      { group: "red", lines: [{ carrier: "group", what: "peg", count: 4, item: "p" }] },
      { lines: [{ count: 4 }] },
    ]);
    expect(shared).toEqual([
      { carrier: "spare", what: "under", count: 1, item: "u" },
      { carrier: "group", what: "peg", count: 1, item: "p", massKg: 0.02 },
    ]);
  });

  it("packs nothing that was not dealt, and everything that was", () => {
    const { dealing } = dealKit(PEOPLE, KIT, 0.025);
    const dealt = dealing?.dealt.flatMap(({ items }) => items.map(({ item }) => item)).sort();
    const packed = list().sleepers.flatMap(({ lines }) => lines.flatMap(({ item }) => item ?? []));
    expect(packed.filter((item) => item !== "l").sort()).toEqual(dealt);
  });
});
