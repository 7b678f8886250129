import { describe, expect, it } from "vitest";
import type { Night } from "../../plan/camp.ts";
import type { OverInsulation, Tarp, UnderInsulation } from "../../plan/kit.ts";
import type { Dealing } from "../../plan/store-types.ts";
import { dealKit } from "../deal-kit.ts";
import { hammock, sleeper } from "../testing/camp.fixture.ts";
import { coolNight, overLayer, plainTarp, underLayer } from "../testing/layers.fixture.ts";

const NIGHT = coolNight();

function under(id: string, but: Partial<UnderInsulation> = {}): UnderInsulation {
  return underLayer(id, { massKg: 0.6, ...but });
}

function over(id: string, but: Partial<OverInsulation> = {}): OverInsulation {
  return overLayer(id, { form: "quilt", massKg: 0.8, ...but });
}

function tarp(id: string, ridgeM: number, massKg: number): Tarp {
  return plainTarp(id, { ridgeM, massKg });
}

function dealing(
  people: Parameters<typeof dealKit>[0],
  kit: Parameters<typeof dealKit>[1],
  night: Night = NIGHT,
): Dealing {
  const { dealing: told } = dealKit(people, kit, 0.025, night);
  if (told === undefined) throw new Error("nothing was dealt");
  return told;
}

function itemOf({ dealt }: Dealing, sleeperId: string, kind: string): string | undefined {
  return dealt.find((deal) => deal.sleeper === sleeperId)?.items.find((item) => item.kind === kind)?.item;
}

describe("a store as it is dealt", () => {
  it("gives the one warm layer to who sleeps cold, and carries nothing warmer than the rest need", () => {
    const people = [sleeper("a", { sleeps: "warm" }), sleeper("b", { sleeps: "cold" })];
    const kit = [
      under("u", { count: 2, limitK: 258.15 }),
      over("light", { comfortK: 272.15, massKg: 0.5 }),
      over("warm", { comfortK: 260.15, massKg: 1.4 }),
      over("warmest", { comfortK: 250.15, massKg: 2 }),
    ];
    const told = dealing(people, kit);
    expect([itemOf(told, "a", "over"), itemOf(told, "b", "over")]).not.toContain("light");
    expect(itemOf(told, "b", "over")).toBe("warmest");
    expect(told).toMatchObject({ proven: true, shortages: [] });
    expect(told.leastMarginK).toBeGreaterThan(0);
  });

  it("numbers pieces off and passes over those that an inspection took out", () => {
    const kit = [
      hammock("h", {
        count: 3,
        numbers: ["H1", "H2", "H3"],
        inspections: [
          { by: "Ada", on: "2027-04-01", finding: "seam open", action: "quarantine", number: "H1" },
        ],
      }),
    ];
    const told = dealing([sleeper("a"), sleeper("b"), sleeper("c")], kit);
    expect(told.dealt.map(({ items }) => items.map(({ number }) => number))).toEqual([["H2"], ["H3"], []]);
    expect(told.shortages).toMatchObject([
      {
        kind: "hammock",
        lacking: ["c"],
        competing: ["a", "b", "c"],
        items: ["h"],
        pieces: 2,
        borrow: [{ kind: "hammock", count: 1, for: ["c"], maxUserKg: 80 }],
      },
    ]);
  });

  it("names only those who compete for the strong hammock", () => {
    const people = [
      sleeper("a", { massKg: 120 }),
      sleeper("b", { massKg: 60 }),
      sleeper("c", { massKg: 125 }),
    ];
    const kit = [hammock("strong", { maxUserKg: 150 }), hammock("light", { count: 2, maxUserKg: 100 })];
    const told = dealing(people, kit);
    expect(told.shortages).toMatchObject([
      { kind: "hammock", competing: ["a", "c"], items: ["strong"], pieces: 1, borrow: [{ count: 1 }] },
    ]);
    expect(itemOf(told, "b", "hammock")).toBe("light");
  });

  it("puts a spare under layer by for every six, and keeps places on the ground free", () => {
    const people = Array.from({ length: 7 }, (_, index) => sleeper(`p${index}`));
    const told = dealing(people, [under("u", { count: 8 })]);
    expect(told).toMatchObject({
      spareUnder: [{ item: "u", count: 1 }],
      spareUnderLacking: 1,
      groundPlaces: 2,
    });
  });

  it("takes a longer tarp in foul weather, a lighter one in fair", () => {
    const kit = [hammock("h", { ridgelineM: 2.7 }), tarp("long", 3.4, 0.9), tarp("short", 3, 0.5)];
    expect(itemOf(dealing([sleeper("a")], kit), "a", "tarp")).toBe("short");
    expect(itemOf(dealing([sleeper("a")], kit, { ...NIGHT, rainMmH: 2 }), "a", "tarp")).toBe("long");
  });

  it("tells under and over too poor for tonight, and from what air on they would do", () => {
    const told = dealing([sleeper("a"), sleeper("b")], [under("u"), over("o", { count: 2, comfortK: 255 })]);
    expect(told.shortages).toMatchObject([
      { kind: "under", lacking: ["b"], pieces: 1, competing: ["a", "b"], borrow: [{ airK: NIGHT.lowK - 5 }] },
    ]);
    expect(told.dealt[1]?.marginK).toBeLessThan(0);
  });

  it("tells no degree of what anybody under 16 is short of", () => {
    const kit = [under("u"), over("o", { count: 3, comfortK: 255 })];
    const borrow = (ages: readonly number[]) => {
      const people = ages.map((ageYears, index) => ({ ...sleeper(`p${index}`), ageYears }));
      return dealing(people, kit).shortages.flatMap((one) =>
        one.borrow.filter(({ kind }) => kind === "under"),
      );
    };
    expect(borrow([40, 40])).toMatchObject([{ count: 1, airK: NIGHT.lowK - 5 }]);
    for (const ages of [
      [14, 14],
      [40, 14, 14],
    ]) {
      expect(borrow(ages)).toMatchObject([{ count: ages.length - 1 }]);
      expect(borrow(ages)[0]).not.toHaveProperty("airK");
    }
  });

  it("tells no margin where there is no night, and deals all the same", () => {
    const told = dealKit([sleeper("a")], [under("u"), over("o")], 0.025).dealing;
    expect(told?.dealt).toEqual([
      {
        sleeper: "a",
        items: [
          { kind: "under", item: "u", pinned: false },
          { kind: "over", item: "o", pinned: false },
        ],
      },
    ]);
    expect(told?.leastMarginK).toBeUndefined();
  });

  it("keeps an underblanket that wants no net from a hammock that has one", () => {
    const kit = [
      hammock("h", { net: true }),
      under("open", { fitsNet: false }),
      under("any", { limitK: 275 }),
    ];
    expect(itemOf(dealing([sleeper("a")], kit), "a", "under")).toBe("any");
    expect(itemOf(dealing([sleeper("a", { kit: ["open"] })], kit), "a", "under")).toBe("open");
  });
});
