import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { UnderInsulation } from "../plan/kit.ts";
import { dealKit } from "./deal-kit.ts";
import { hammock, sleeper, webbing } from "./testing/camp.fixture.ts";
import { plainTarp } from "./testing/layers.fixture.ts";

const WIDTH_M = 0.025;

function hammockOf(deal: ReturnType<typeof dealKit>, id: string): string | undefined {
  return deal.dealt.find((one) => one.sleeper.id === id)?.hammock.id;
}

describe("dealKit", () => {
  it("respects counts and names who goes short of what", () => {
    const people = [sleeper("a"), sleeper("b"), sleeper("c")];
    const deal = dealKit(people, [hammock("h", { count: 2 }), webbing("w", { count: 3 })], WIDTH_M);
    expect(deal.dealt.map((one) => one.sleeper.id)).toEqual(["a", "b"]);
    expect(deal.short.map((one) => one.sleeper.id)).toEqual(["c"]);
    expect(deal.short[0]?.because).toMatchObject([
      { rule: "layout.kit-short", demand: 2, limit: 3, about: ["hammock"], verdict: "look-again" },
    ]);
  });

  it("gives pinned items first, whoever is heavier", () => {
    const light = sleeper("light", { massKg: 50, kit: ["strong"] });
    const heavy = sleeper("heavy", { massKg: 95 });
    const store = [
      hammock("strong", { maxUserKg: 150 }),
      hammock("weak", { maxUserKg: 100 }),
      webbing("w", { count: 2 }),
    ];
    const deal = dealKit([light, heavy], store, WIDTH_M);
    expect([hammockOf(deal, "light"), hammockOf(deal, "heavy")]).toEqual(["strong", "weak"]);
  });

  it("never deals what is quarantined or retired, pinned or not, and says so of a pin", () => {
    const one = sleeper("a", { kit: ["old"] });
    const store = [hammock("old", { state: "retired" }), hammock("new"), webbing("w")];
    const deal = dealKit([one], store, WIDTH_M);
    expect(hammockOf(deal, "a")).toBe("new");
    expect(deal.findings).toMatchObject([
      { rule: "layout.kit-short", subject: "sleeper/a", about: ["pinned", "old"], demand: 0, limit: 1 },
    ]);
    const none = dealKit([one], [hammock("old", { state: "quarantined" }), webbing("w")], WIDTH_M);
    expect(none.dealt).toEqual([]);
  });

  it("keeps a hammock from somebody above its greatest user weight, and names the figures", () => {
    const deal = dealKit([sleeper("a", { massKg: 140 })], [hammock("h"), webbing("w")], WIDTH_M);
    expect(deal.dealt).toEqual([]);
    expect(deal.short[0]?.because).toMatchObject([
      { rule: "layout.kit-short" },
      { rule: "part.user-weight", demand: 140, limit: 136, verdict: "do-not-hang", about: ["h"] },
    ]);
  });

  it("gives tall people the long cloth and leaves them the short one only at need", () => {
    const tall = sleeper("tall", { statureM: 1.95, massKg: 70 });
    const short = sleeper("short", { statureM: 1.55, massKg: 80 });
    const store = [
      hammock("long", { lengthM: 3.4 }),
      hammock("small", { lengthM: 2.7 }),
      webbing("w", { count: 2 }),
    ];
    const deal = dealKit([tall, short], store, WIDTH_M);
    expect([hammockOf(deal, "tall"), hammockOf(deal, "short")]).toEqual(["long", "small"]);
  });

  it("assumes the items of the table only where the store lists none of the kind", () => {
    const people = [sleeper("a"), sleeper("b")];
    const deal = dealKit(people, [hammock("h", { count: 2 })], WIDTH_M);
    expect(deal.dealt.map(({ assumed }) => assumed)).toEqual([["suspension"], ["suspension"]]);
    expect(deal.defaultsUsed).toEqual([
      { field: "kit.default.suspension.type", value: "tied-webbing", for: ["a", "b"] },
    ]);
  });

  it("gives the warmest under layer to who sleeps cold", () => {
    const under = (id: string, limitK: number): UnderInsulation => ({
      id,
      kind: "under",
      count: 1,
      state: "in-use",
      limitK,
    });
    const people = [sleeper("a"), sleeper("b", { sleeps: "cold" })];
    const store = [
      hammock("h", { count: 2 }),
      webbing("w", { count: 2 }),
      under("thin", 283),
      under("thick", 268),
    ];
    const deal = dealKit(people, store, WIDTH_M);
    expect(deal.dealt.map((one) => one.under?.id)).toEqual(["thin", "thick"]);
  });

  it("lets somebody go without a tarp: it is merely absent", () => {
    const tarp = plainTarp("t");
    const store = [hammock("h", { count: 2 }), webbing("w", { count: 2 }), tarp];
    const deal = dealKit([sleeper("a"), sleeper("b")], store, WIDTH_M);
    expect(deal.dealt.map((one) => one.tarp?.id)).toEqual(["t", undefined]);
  });

  it("leaves nobody without a hammock who could have had one", () => {
    const mass = fc.integer({ min: 40, max: 140 });
    fc.assert(
      fc.property(fc.array(mass, { maxLength: 7 }), fc.array(mass, { maxLength: 7 }), (bodies, ratings) => {
        const people = bodies.map((massKg, index) => sleeper(`p${index}`, { massKg }));
        const hammocks = ratings.map((maxUserKg, index) => hammock(`h${index}`, { maxUserKg }));
        const store = [...hammocks, hammock("none", { state: "retired" }), webbing("w", { count: 9 })];
        const deal = dealKit(people, store, WIDTH_M);
        const lawful = deal.dealt.every((one) => one.sleeper.massKg <= (one.hammock.maxUserKg ?? 0));
        return lawful && deal.dealt.length === mostMatched(bodies, ratings);
      }),
      { seed: 1, numRuns: 300 },
    );
  });
});

/** Most bodies that can have a rating of their own at least as high, by trying all. */
function mostMatched(bodies: readonly number[], ratings: readonly number[]): number {
  const [first, ...rest] = bodies;
  if (first === undefined) return 0;
  const without = mostMatched(rest, ratings);
  const seen = new Set<number>();
  const withFirst = ratings.map((rating, index) => {
    if (rating < first || seen.has(rating)) return 0;
    seen.add(rating);
    return 1 + mostMatched(rest, ratings.toSpliced(index, 1));
  });
  return Math.max(without, ...withFirst);
}
