import { searchBerths, searchGroups, type GroupSearchInput, type LinearSolver } from "@nightspan/core";
import { beforeAll, describe, expect, it } from "vitest";
import { loadSolver } from "./load-solver.ts";
import { drawFrom, type Draw } from "./random-search.fixture.ts";

let solver: LinearSolver;
beforeAll(async () => {
  solver = await loadSolver();
});

/** Clearings 100 m apart, each with room for one group and no more than one place over: a wood with one tight fit. */
function clearings(draw: Draw): GroupSearchInput {
  const sizes = Array.from({ length: draw(3, 5) }, () => draw(2, 6));
  const rooms = sizes.map((size) => size + draw(0, 1));
  const spots = rooms.flatMap((room, clearing) =>
    Array.from({ length: room }, (_, at): [number, number] => [100 * clearing, 2 * at]),
  );
  const people = sizes.reduce((sum, size) => sum + size, 0);
  const costUnits = Float64Array.from(spots, () => draw(0, 4000));
  const search = {
    trees: 2 * spots.length,
    places: spots.map((_, at) => ({ first: 2 * at, second: 2 * at + 1, spanM: 4 })),
    capacity: 1,
    conflicts: [],
    classes: [{ people, costUnits }],
  };
  return {
    search,
    base: searchBerths(search, { solver }),
    kinds: sizes.map((size, group) => ({ classIndex: 0, group, people: size, leads: false })),
    groups: sizes.map(() => ({ withinM: 20 })),
    spots,
  };
}

describe("groups in a sparse wood", () => {
  it("all lie together wherever they fit, and no layout costs less where it says so", () => {
    for (let seed = 1; seed <= 40; seed++) {
      const { search, outside } = searchGroups(clearings(drawFrom(seed)), { solver });
      expect(outside, `wood ${seed}`).toBe(0);
      expect(search.lowerBoundUnits, `wood ${seed}`).toBeLessThanOrEqual(search.costUnits);
    }
  });
});
