import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { drawFrom } from "../geometry/draw.fixture.ts";
import { brokenRules, costOf } from "./berth-search.fixture.ts";
import { searchBerths } from "./berth-search.ts";
import { bestGroupsByBruteForce, leastOutside, randomGroups } from "./group-search.fixture.ts";
import { FAR_UNITS, searchGroups } from "./group-search.ts";
import type { GroupSearchInput } from "./group-types.ts";

const TASKS = fc.noBias(fc.nat({ max: 1_000_000 })).map((seed) => randomGroups(drawFrom(seed)));

describe("searchGroups", () => {
  it("keeps the rules of the search, and everybody who had a berth has one", () => {
    fc.assert(
      fc.property(TASKS, (input) => {
        const { search, seats } = searchGroups(input);
        expect(brokenRules(input.search, search.chosen)).toEqual([]);
        expect(search.costUnits).toBe(costOf(input.search, search.chosen));
        input.kinds.forEach(({ people }, kind) =>
          expect(seats.filter((seat) => seat.kind === kind)).toHaveLength(people),
        );
      }),
      { seed: 1, numRuns: 150 },
    );
  });

  it("counts who is outside as plain geometry does, with a leader's berth as the hub where somebody leads", () => {
    fc.assert(
      fc.property(TASKS, (input) => {
        const { seats, hubs, outside } = searchGroups(input);
        expect(outside).toBeGreaterThanOrEqual(leastOutside(input, seats));
        hubs.forEach((hub, group) => {
          const own = input.kinds.filter((kind) => kind.group === group && kind.people > 0);
          const seat = seats.find(({ place }) => place === hub);
          const kind = input.kinds[seat?.kind ?? -1];
          expect(kind?.group).toBe(own.length === 0 ? undefined : group);
          if (own.some(({ leads }) => leads)) expect(kind?.leads).toBe(true);
        });
      }),
      { seed: 2, numRuns: 150 },
    );
  });

  it("is never better than the best of all layouts, and is the best where it says so", () => {
    let [same, proven, tasks] = [0, 0, 0];
    fc.assert(
      fc.property(TASKS, (input) => {
        const { search, outside } = searchGroups(input);
        const worth = search.costUnits + FAR_UNITS * outside;
        const best = bestGroupsByBruteForce(input, FAR_UNITS);
        if (input.base.placed === 0) return;
        tasks++;
        expect(worth).toBeGreaterThanOrEqual(best);
        expect(search.lowerBoundUnits).toBeLessThanOrEqual(Math.min(search.costUnits, best));
        if (worth === best) same++;
        if (search.proven) {
          proven++;
          expect(worth).toBe(best);
        }
      }),
      { seed: 3, numRuns: 150 },
    );
    expect(proven).toBeGreaterThan(25);
    expect(same / tasks).toBeGreaterThan(0.9);
  });

  it("leaves a layout as it is where there are no groups", () => {
    const draw = drawFrom(5);
    const drawn = randomGroups(draw);
    const kinds = drawn.base.chosen.map(({ classIndex }) => ({
      classIndex,
      group: -1,
      people: 1,
      leads: false,
    }));
    const { search, outside } = searchGroups({ ...drawn, kinds, groups: [] });
    expect(search.costUnits).toBe(drawn.base.costUnits);
    expect(outside).toBe(0);
  });

  it("takes dearer places where the cheapest ones lie too far from each other", () => {
    const input = twoClearings();
    const { search, seats, outside, hubs } = searchGroups(input);
    expect(outside).toBe(0);
    // Group 0 has all three places of one clearing, one of them dear.
    expect(seats.filter(({ kind }) => input.kinds[kind]?.group === 0)).toHaveLength(3);
    expect(search.costUnits).toBe(100);
    expect(search.lowerBoundUnits).toBe(100);
    expect(search.proven).toBe(true);
    expect(hubs).toHaveLength(1);
  });

  it("says who is outside where no layout has everybody near", () => {
    const input = { ...twoClearings(), groups: [{ withinM: 1 }] };
    expect(searchGroups(input).outside).toBe(2);
  });
});

/** Two clearings 100 m apart: two cheap and one dear place in the one, one cheap place in the other. */
function twoClearings(): GroupSearchInput {
  const pairs = [0, 1, 2, 3].map((at) => ({ first: 2 * at, second: 2 * at + 1 }));
  const search = {
    trees: 8,
    places: pairs,
    capacity: 1,
    conflicts: [],
    classes: [{ people: 3, costUnits: Float64Array.of(0, 0, 100, 0) }],
  };
  return {
    search,
    base: searchBerths(search),
    kinds: [
      { classIndex: 0, group: 0, people: 1, leads: true },
      { classIndex: 0, group: 0, people: 2, leads: false },
    ],
    groups: [{ withinM: 25 }],
    spots: [
      [0, 0],
      [5, 0],
      [10, 0],
      [100, 0],
    ],
  };
}
