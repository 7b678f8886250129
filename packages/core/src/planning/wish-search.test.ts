import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { drawFrom } from "../geometry/draw.fixture.ts";
import { listOf, listsOf } from "./berth-search-lists.ts";
import { leastByTrying } from "./wish-exact.ts";
import { searchWishes } from "./wish-search.ts";
import type { WishSearchInput } from "./wish-state.ts";

/** Up to five people at ten spots, some in conflict, with wishes, groups and zones. */
function taskOf(seed: number): WishSearchInput {
  const draw = drawFrom(seed);
  const people = draw(1, 5);
  const places = 10;
  const pairs = Array.from({ length: draw(0, 8) }, () => [draw(5, 9), draw(0, 9)] as const);
  const groupOf = Int32Array.from({ length: people }, () => draw(-1, 1));
  const members = (group: number): number[] => [...groupOf.keys()].filter((one) => groupOf[one] === group);
  const wished = (): (readonly [number, number])[] =>
    people < 2 ? [] : Array.from({ length: draw(0, 2) }, () => [0, draw(1, people - 1)] as const);
  return {
    people: {
      groupOf,
      groups: [0, 1].map((group) => ({
        withinM: draw(2, 12),
        members: members(group),
        hubs: members(group),
      })),
      near: wished(),
      apart: wished(),
      walls: [
        { sideOf: groupOf, apartM: 4 },
        { sideOf: Int32Array.from(groupOf, (_, person) => (person % 3) - 1), apartM: 6 },
      ],
    },
    prices: { farUnits: 100, wishUnits: 20, spreadUnitsPerM: draw(0, 1), nearM: 5, apartM: 4 },
    start: Int32Array.from({ length: people }, (_, person) => person),
    spots: Array.from({ length: places }, () => (draw(1, 10) === 1 ? undefined : [draw(0, 20), draw(0, 20)])),
    costUnits: Float64Array.from({ length: places }, () => draw(0, 30)),
    first: Int32Array.from({ length: places }, (_, place) => place),
    second: Int32Array.from({ length: places }, (_, place) => (place < 5 ? 10 + place : draw(10, 14))),
    conflicts: listsOf(places, (tell) =>
      pairs.forEach(([a, b]) => {
        if (a === b) return;
        tell(a, b);
        tell(b, a);
      }),
    ),
    trees: 15,
    capacity: draw(1, 2),
    serves: (person, place) => (person * 7 + place * 3 + seed) % 6 !== 0 || place === person,
    burden: (person, place) => person * place,
  };
}

/** All that is paid for, counted in plain loops from where people lie. */
function paid({ people, prices, spots, costUnits }: WishSearchInput, placeOf: Int32Array): number {
  const far = (a: number, b: number): number => {
    const [one, other] = [spots[placeOf[a] ?? -1], spots[placeOf[b] ?? -1]];
    return one === undefined || other === undefined ? NaN : Math.hypot(one[0] - other[0], one[1] - other[1]);
  };
  let units = 0;
  placeOf.forEach((place) => (units += costUnits[place] ?? NaN));
  for (const [a, b] of people.near) if (far(a, b) > prices.nearM + 1e-9) units += prices.wishUnits;
  for (const [a, b] of people.apart) if (far(a, b) < prices.apartM - 1e-9) units += prices.wishUnits;
  for (const { sideOf, apartM } of people.walls) {
    for (let a = 0; a < placeOf.length; a++) {
      for (let b = a + 1; b < placeOf.length; b++) {
        const [one = -1, other = -1] = [sideOf[a], sideOf[b]];
        if (one < 0 || other < 0 || one === other) continue;
        if (far(a, b) < apartM - 1e-9) units += prices.wishUnits;
      }
    }
  }
  for (const { withinM, members, hubs } of people.groups) {
    const ways = hubs.map((hub) =>
      members.reduce((sum, member) => {
        const away = member === hub ? 0 : far(member, hub);
        const spread = away > 0 ? Math.round(prices.spreadUnitsPerM * away) : 0;
        return sum + spread + (away > withinM + 1e-9 ? prices.farUnits : 0);
      }, 0),
    );
    units += ways.length === 0 ? 0 : Math.min(...ways);
  }
  return units;
}

describe("searchWishes", () => {
  const TASKS = fc.noBias(fc.nat({ max: 1_000_000 })).map(taskOf);

  it("never costs more than where it started, and counts what it costs truly", () => {
    let better = 0;
    fc.assert(
      fc.property(TASKS, (task) => {
        const { placeOf, units } = searchWishes(task);
        // Two wishes of the same two people count once for each in the plain loops, as in the search.
        expect(units).toBe(paid(task, placeOf));
        expect(units).toBeLessThanOrEqual(paid(task, task.start));
        if (units < paid(task, task.start)) better++;
      }),
      { seed: 1, numRuns: 300 },
    );
    expect(better).toBeGreaterThan(100);
  });

  it("keeps places apart that conflict, trees within their hammocks, and everybody where they can lie", () => {
    fc.assert(
      fc.property(TASKS, (task) => {
        const { placeOf } = searchWishes(task);
        const load = new Map<number, number>();
        expect(new Set(placeOf).size).toBe(placeOf.length);
        placeOf.forEach((place, person) => {
          expect(task.serves(person, place)).toBe(true);
          for (const tree of [task.first[place] ?? -1, task.second[place] ?? -1])
            load.set(tree, (load.get(tree) ?? 0) + 1);
          const { starts, items } = task.conflicts;
          const excluded = [...items.subarray(starts[place] ?? 0, starts[place + 1] ?? 0)];
          expect(excluded.filter((other) => placeOf.includes(other))).toEqual([]);
        });
        expect(Math.max(...load.values())).toBeLessThanOrEqual(task.capacity);
      }),
      { seed: 2, numRuns: 300 },
    );
  });
});

describe("leastByTrying", () => {
  it("finds what trying every way in plain loops finds", () => {
    let [better, tried] = [0, 0];
    fc.assert(
      fc.property(fc.noBias(fc.nat({ max: 1_000_000 })), (seed) => {
        const task = taskOf(seed);
        const known = searchWishes(task);
        const least = leastByTrying(task, known);
        if (least === undefined) return;
        expect(paid(task, least.placeOf)).toBe(least.units);
        expect(least.units).toBe(leastInLoops(task));
        tried++;
        better += least.units < known.units ? 1 : 0;
      }),
      { seed: 5, numRuns: 60 },
    );
    expect(tried).toBeGreaterThan(40);
    expect(better).toBeLessThan(tried);
  });

  it("leaves more people than it can try alone", () => {
    const task = taskOf(1);
    const start = Int32Array.from({ length: 11 }, (_, person) => person % 10);
    const known = { placeOf: start, units: 0, amiss: 0 };
    expect(leastByTrying({ ...task, start }, known)).toBeUndefined();
  });
});

/** The least that any way costs in which everybody lies somewhere that serves, none in conflict. */
function leastInLoops(task: WishSearchInput): number {
  const { start, costUnits, first, second, conflicts, capacity, serves, trees } = task;
  const placeOf = new Int32Array(start.length).fill(-1);
  const load = new Int32Array(trees);
  let least = Infinity;
  const visit = (person: number): void => {
    if (person === start.length) {
      least = Math.min(least, paid(task, placeOf));
      return;
    }
    for (let place = 0; place < costUnits.length; place++) {
      if (place !== start[person] && !serves(person, place)) continue;
      const taken = [...placeOf.slice(0, person)];
      if (taken.includes(place) || listOf(conflicts, place).some((other) => taken.includes(other))) continue;
      const ends = [first[place] ?? 0, second[place] ?? 0];
      if (ends.some((tree) => (load[tree] ?? 0) >= capacity)) continue;
      ends.forEach((tree) => (load[tree] = (load[tree] ?? 0) + 1));
      placeOf[person] = place;
      visit(person + 1);
      ends.forEach((tree) => (load[tree] = (load[tree] ?? 0) - 1));
      placeOf[person] = -1;
    }
  };
  visit(0);
  return least;
}
