import { searchBerths, type LinearSolver } from "@nightspan/core";
import fc from "fast-check";
import { beforeAll, describe, expect, it, vi } from "vitest";
import { loadPlainSolver, loadSolver } from "./load-solver.ts";
import { brokenRules, drawFrom, randomSearch } from "./random-search.fixture.ts";

let highs: LinearSolver;
let plain: LinearSolver;
beforeAll(async () => {
  highs = await loadSolver();
  plain = await loadPlainSolver();
});

/** Tangles of more places than are settled part by part. */
const TANGLES = fc
  .record({
    places: fc.integer({ min: 60, max: 110 }),
    trees: fc.integer({ min: 30, max: 50 }),
    classes: fc.integer({ min: 1, max: 3 }),
    capacity: fc.integer({ min: 1, max: 3 }),
    conflictsInTen: fc.constant(1),
    seed: fc.nat({ max: 1_000_000 }),
  })
  .map(({ seed, ...size }) => randomSearch(drawFrom(seed), size));

describe("the plain solver", () => {
  it("comes to the same number and cost as HiGHS wherever both end", () => {
    let [asked, both] = [0, 0];
    const counted: LinearSolver = {
      ...plain,
      solve: (program, options) => {
        const solved = plain.solve(program, options);
        asked += solved.ok ? 1 : 0;
        return solved;
      },
    };
    fc.assert(
      fc.property(TANGLES, (input) => {
        const one = searchBerths(input, { solver: highs });
        const other = searchBerths(input, { solver: counted });
        expect(brokenRules(input, other.chosen)).toEqual([]);
        expect(one.proven).toBe(true);
        expect(other.placed).toBeLessThanOrEqual(one.placed);
        expect(other.bound).toBeGreaterThanOrEqual(one.placed);
        if (!other.proven) return;
        both++;
        expect([other.placed, other.costUnits]).toEqual([one.placed, one.costUnits]);
      }),
      { seed: 1, numRuns: 20 },
    );
    expect(asked).toBeGreaterThan(10);
    expect(both).toBeGreaterThan(10);
  });

  it("takes the place of HiGHS where that cannot be loaded", async () => {
    vi.resetModules();
    vi.doMock("highs", () => ({
      default: () => Promise.reject(new Error("no WebAssembly here")),
    }));
    try {
      const { loadSolver: load } = await import("./load-solver.ts");
      expect((await load()).name).toBe("tableau");
    } finally {
      vi.doUnmock("highs");
    }
    expect(highs.name).toBe("highs");
  });
});
