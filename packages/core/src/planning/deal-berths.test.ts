import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Sleeper } from "../plan/camp.ts";
import type { CampPlace } from "./camp-places-types.ts";
import { dealBerths } from "./deal-berths.ts";
import { sleeper } from "./testing/camp.fixture.ts";

function place(spanM: number, dbhM = 0.3): CampPlace {
  return {
    first: 0,
    second: 1,
    spanM,
    spanErrorM: 0.05,
    dbhM: [dbhM, 0.6],
    dbhAssumed: false,
    stepItOut: false,
    stepped: false,
  };
}

interface Deal {
  readonly people: readonly Sleeper[];
  readonly places: readonly CampPlace[];
  /** Of the strap at each berth, whoever hangs there [m]. */
  readonly strapM: readonly number[];
  /** How much is asked of whoever lies there [m]; nothing where the test says nothing. */
  readonly effortM?: readonly number[];
}

function dealt({ people, places, strapM, effortM = [] }: Deal): number[] {
  const berthOf = dealBerths({
    people,
    places,
    serves: () => true,
    highestStrapM: (_, berth) => strapM[berth] ?? Infinity,
    effortM: (berth) => effortM[berth] ?? 0,
  });
  return [...(berthOf ?? [])];
}

describe("dealBerths", () => {
  const people = [
    sleeper("tall", { statureM: 1.9 }),
    sleeper("short", { statureM: 1.5 }),
    sleeper("middling", { statureM: 1.7 }),
  ];

  it("gives the nearer pairs to the shorter where trunks and weights are alike", () => {
    const places = [place(3.4), place(4.8, 0.32), place(4.1)];
    expect(dealt({ people, places, strapM: [1.5, 1.7, 1.6] })).toEqual([1, 0, 2]);
  });

  it("takes no stouter tree from the heavier for that", () => {
    const heavy = [sleeper("heavy", { statureM: 1.9, massKg: 100 }), sleeper("short", { statureM: 1.5 })];
    expect(dealt({ people: heavy, places: [place(3.4, 0.4), place(4.8, 0.25)], strapM: [1.5, 1.7] })).toEqual(
      [0, 1],
    );
  });

  it("spares people help before all else", () => {
    const heavy = [sleeper("heavy", { massKg: 120, reachM: 2.2 }), sleeper("short", { reachM: 1.6 })];
    expect(dealt({ people: heavy, places: [place(3.4, 0.6), place(4.8, 0.2)], strapM: [1.5, 2] })).toEqual([
      1, 0,
    ]);
  });

  it("gives a beginner the easiest berth, though the trunks are thinner there for somebody heavy", () => {
    const two = [sleeper("old", { massKg: 100 }), sleeper("new", { massKg: 60, beginner: true })];
    const places = [place(4, 0.4), place(4, 0.25)];
    expect(dealt({ people: two, places, strapM: [1.5, 1.5] })).toEqual([0, 1]);
    expect(dealt({ people: two, places, strapM: [1.5, 1.5], effortM: [0.1, 0.9] })).toEqual([1, 0]);
  });

  it("spares people help before it makes things easy for a beginner", () => {
    const two = [sleeper("short", { reachM: 1.6 }), sleeper("new", { reachM: 2.2, beginner: true })];
    expect(dealt({ people: two, places: [place(4), place(4)], strapM: [1.5, 2], effortM: [0, 5] })).toEqual([
      0, 1,
    ]);
  });

  it("lets beginners take the easiest of very many berths", () => {
    const people = Array.from({ length: 120 }, (_, at) =>
      sleeper(`s${at}`, { massKg: 60 + (at % 7), beginner: at === 119 }),
    );
    const places = people.map((_, at) => place(4, 0.3 + 0.001 * at));
    const effortM = people.map((_, at) => (at === 60 ? 0 : 1));
    const strapM = people.map(() => 1.5);
    const berthOf = dealt({
      people: [people[119] ?? sleeper("s"), ...people.slice(0, 119)],
      places,
      strapM,
      effortM,
    });
    expect(berthOf[0]).toBe(60);
    expect(new Set(berthOf).size).toBe(120);
  });

  it("is best of all dealings by help, then trunks, then spans", () => {
    const person = fc.record({
      massKg: fc.integer({ min: 40, max: 120 }),
      cm: fc.integer({ min: 140, max: 200 }),
    });
    const where = fc.record({
      span: fc.integer({ min: 300, max: 500 }),
      dbh: fc.integer({ min: 20, max: 45 }),
      strap: fc.integer({ min: 140, max: 220 }),
    });
    const deals = fc
      .integer({ min: 1, max: 4 })
      .chain((count) =>
        fc.tuple(
          fc.array(person, { minLength: count, maxLength: count }),
          fc.array(where, { minLength: count, maxLength: count }),
        ),
      );
    fc.assert(
      fc.property(deals, ([persons, wheres]) => {
        const deal: Deal = {
          people: persons.map(({ massKg, cm }, at) => sleeper(`s${at}`, { massKg, statureM: cm / 100 })),
          places: wheres.map(({ span, dbh }) => place(span / 100, dbh / 100)),
          strapM: wheres.map(({ strap }) => strap / 100),
        };
        const best = permutations(wheres.map((_, at) => at))
          .map((berthOf) => worth(deal, berthOf))
          .reduce((least, next) => (isLess(next, least) ? next : least));
        expect(worth(deal, dealt(deal))).toEqual(best);
      }),
      { seed: 1, numRuns: 200 },
    );
  });
});

/** Help and trunks in the units of the deal, then Σ (tallest − stature) · span in square centimetres. */
function worth({ people, places, strapM }: Deal, berthOf: readonly number[]): readonly [number, number] {
  const tallestCm = Math.max(...people.map(({ statureM }) => Math.round(statureM * 100)));
  return people.reduce<readonly [number, number]>(
    ([units, ties], { massKg, statureM, reachM }, at) => {
      const berth = berthOf[at] ?? -1;
      const { spanM, dbhM } = places[berth] ?? place(NaN);
      const aboveM = (strapM[berth] ?? NaN) - reachM;
      const classCm = 5 * Math.floor(Math.round(dbhM[0] * 100) / 5) + 2.5;
      const help = aboveM > 0 ? 10_000 + Math.round(100 * aboveM) : 0;
      return [
        units + help + Math.round((massKg * 100) / classCm),
        ties + (tallestCm - Math.round(statureM * 100)) * Math.round(spanM * 100),
      ];
    },
    [0, 0],
  );
}

function isLess(a: readonly [number, number], b: readonly [number, number]): boolean {
  return a[0] < b[0] || (a[0] === b[0] && a[1] < b[1]);
}

function permutations(items: readonly number[]): number[][] {
  if (items.length === 0) return [[]];
  return items.flatMap((first) =>
    permutations(items.filter((one) => one !== first)).map((rest) => [first, ...rest]),
  );
}
