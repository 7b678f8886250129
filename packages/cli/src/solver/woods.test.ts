import { berthPlaces, searchBerths, type BerthSearchInput, type LinearSolver } from "@nightspan/core";
import { beforeAll, describe, expect, it } from "vitest";
import { stemMap, type StemMap } from "../../bench/stem-map.fixture.ts";
import { loadSolver } from "./load-solver.ts";
import { pairwiseProgram } from "./pairwise-program.fixture.ts";

let solver: LinearSolver;
beforeAll(async () => {
  solver = await loadSolver();
});

const OPEN: StemMap = {
  stems: 250,
  perHectare: 800,
  spanMinM: 3,
  spanMaxM: 5,
  trunkMinM: 0.2,
  apartM: 0.8,
  planted: false,
  dbhM: [0.08, 0.38],
  seed: 1,
};

const PLANTED: StemMap = {
  ...OPEN,
  perHectare: 1100,
  spanMinM: 2.7,
  spanMaxM: 6,
  trunkMinM: 0.15,
  planted: true,
};

function searchIn(map: StemMap, people: number, capacity: number): BerthSearchInput {
  const input = stemMap(map);
  const { places, conflicts } = berthPlaces(input);
  const costUnits = Float64Array.from(places, ({ spanM }) => Math.round(1e4 * Math.abs(spanM - 4)));
  return { trees: input.trees.length, places, capacity, conflicts, classes: [{ people, costUnits }] };
}

function wholeOptimum(input: BerthSearchInput, target?: number): number {
  const outcome = solver.solve(pairwiseProgram(input, target), { integral: true, presolve: true });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.refusals));
  return Math.round(outcome.value.objective);
}

const CASES = [1, 2, 3, 4, 5, 6].flatMap((seed) =>
  [OPEN, PLANTED].map((map) => ({
    name: `${map.planted ? "planted" : "open"} wood ${seed}`,
    map: { ...map, seed },
    people: seed % 2 === 0 ? 25 : 500,
    capacity: 1 + (seed % 3),
  })),
);

describe("random woods", () => {
  it.each(CASES)(
    "$name: the search proves what a plain program of pairs finds",
    ({ map, people, capacity }) => {
      const input = searchIn(map, people, capacity);
      const most = wholeOptimum(input);
      const found = searchBerths(input, { solver });
      expect(found).toMatchObject({ placed: most, bound: most, proven: true });
      expect(found.costUnits).toBe(wholeOptimum(input, most));
      const alone = searchBerths(input);
      expect(alone.bound).toBeGreaterThanOrEqual(most);
      expect(alone.placed).toBeLessThanOrEqual(most);
      if (alone.proven) expect([alone.placed, alone.costUnits]).toEqual([most, found.costUnits]);
      if (alone.placed === most) expect(alone.lowerBoundUnits).toBeLessThanOrEqual(found.costUnits);
    },
  );

  it("are settled in more than one way: part by part, and by the solver", () => {
    const methods = CASES.map(
      ({ map, people, capacity }) => searchBerths(searchIn(map, people, capacity), { solver }).method,
    );
    expect(new Set(methods).size).toBeGreaterThan(1);
    expect(methods).toContain("component search");
  });
});
