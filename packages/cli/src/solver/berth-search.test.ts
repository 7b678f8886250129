import { searchBerths, type BerthSearchInput } from "@nightspan/core";
import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { loadSolver } from "./load-solver.ts";
import { bestByBruteForce, brokenRules, costOf, drawFrom, randomSearch } from "./random-search.fixture.ts";

type Solver = Awaited<ReturnType<typeof loadSolver>>;

let solver: Solver;
beforeAll(async () => {
  solver = await loadSolver();
});

const SEARCHES = fc
  .record({
    places: fc.integer({ min: 0, max: 14 }),
    trees: fc.integer({ min: 2, max: 12 }),
    classes: fc.integer({ min: 1, max: 3 }),
    capacity: fc.integer({ min: 1, max: 3 }),
    conflictsInTen: fc.integer({ min: 0, max: 6 }),
    seed: fc.nat({ max: 1_000_000 }),
  })
  .map(({ seed, ...size }) => randomSearch(drawFrom(seed), size));

function provesTheBest(input: BerthSearchInput): void {
  const best = bestByBruteForce(input);
  const found = searchBerths(input, { solver });
  expect(brokenRules(input, found.chosen)).toEqual([]);
  expect(costOf(input, found.chosen)).toBe(found.costUnits);
  expect({ placed: found.placed, cost: found.costUnits, proven: found.proven }).toEqual({
    ...best,
    proven: true,
  });
  expect(found.bound).toBe(best.placed);
  expect(found.lowerBoundUnits).toBe(best.cost);
}

describe("the berth search with the solver", () => {
  it("proves what trying every layout finds", () => {
    fc.assert(fc.property(SEARCHES, provesTheBest), { seed: 1, numRuns: 400 });
  });
});
