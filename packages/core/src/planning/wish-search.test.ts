import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { drawFrom } from "../geometry/draw.fixture.ts";
import { listsOf } from "./berth-search-lists.ts";
import { searchWishes, type WishSearchInput } from "./wish-search.ts";

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
