import { berthPlaces, searchBerths, searchGroups, type GroupSearchInput } from "@nightspan/core";
import { describe, expect, it } from "vitest";
import { OPEN_WOOD, stemMap } from "../../bench/stem-map.fixture.ts";
import { loadSolver } from "./load-solver.ts";

const solver = await loadSolver();

/** Six groups of six with a leader each, within 13 m, in a wood of 500 stems. */
function groupsIn(seed: number): GroupSearchInput {
  const ground = stemMap({ ...OPEN_WOOD, stems: 500, seed });
  const { places, conflicts } = berthPlaces(ground);
  const costUnits = Float64Array.from(places, ({ spanM }) => Math.round(1e4 * Math.abs(spanM - 4)));
  const search = {
    trees: ground.trees.length,
    places,
    capacity: 2,
    conflicts,
    classes: [{ people: 36, costUnits }],
  };
  const six = Array.from({ length: 6 }, (_, group) => group);
  return {
    search,
    base: searchBerths(search, { solver }),
    kinds: six.flatMap((group) => [
      { classIndex: 0, group, people: 1, leads: true },
      { classIndex: 0, group, people: 5, leads: false },
    ]),
    groups: six.map(() => ({ withinM: 13 })),
    spots: places.map(({ first, second }) => {
      const [a, b] = [ground.trees[first], ground.trees[second]];
      return a === undefined || b === undefined ? undefined : [(a.xM + b.xM) / 2, (a.yM + b.yM) / 2];
    }),
  };
}

describe("groups with small circles", () => {
  it.each([7, 14, 21])(
    "come within 5 % of a bound far above that without groups, wood %i",
    (seed) => {
      const input = groupsIn(seed);
      const { search, seats, hubs, outside } = searchGroups(input, { solver });
      expect(outside).toBe(0);
      expect(search.lowerBoundUnits).toBeGreaterThan(1.1 * input.base.lowerBoundUnits);
      expect(search.lowerBoundUnits).toBeLessThanOrEqual(search.costUnits);
      expect(search.costUnits / search.lowerBoundUnits).toBeLessThan(1.05);
      // Measured again from the seats alone.
      expect(new Set(seats.map(({ place }) => place)).size).toBe(36);
      for (const { place, kind } of seats) {
        const [a, b] = [input.spots[place], input.spots[hubs[input.kinds[kind]?.group ?? -1] ?? -1]];
        expect(Math.hypot((a?.[0] ?? NaN) - (b?.[0] ?? NaN), (a?.[1] ?? NaN) - (b?.[1] ?? NaN))).toBeLessThan(
          13.001,
        );
      }
      const used = new Set(seats.map(({ place }) => place));
      expect(input.search.conflicts.filter(([a, b]) => used.has(a) && used.has(b))).toEqual([]);
    },
    120_000,
  );
});
