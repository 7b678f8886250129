import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { drawFrom } from "../geometry/draw.fixture.ts";
import { bestByBruteForce, brokenRules, costOf, randomSearch } from "./berth-search.fixture.ts";
import { searchBerths } from "./berth-search.ts";
import type { BerthSearch, BerthSearchInput } from "./berth-search-types.ts";

function searches(most: {
  readonly places: number;
  readonly classes: number;
}): fc.Arbitrary<BerthSearchInput> {
  return fc.noBias(fc.nat({ max: 1_000_000 })).map((seed) => {
    const draw = drawFrom(seed);
    return randomSearch(draw, {
      places: draw(0, most.places),
      trees: draw(2, 14),
      classes: draw(1, most.classes),
      capacity: draw(1, 3),
      conflictsInTen: draw(0, 6),
    });
  });
}

function one(people: number, ...costs: number[]): BerthSearchInput["classes"] {
  return [{ people, costUnits: Float64Array.from(costs) }];
}

/** Places side by side in a row: each has two trees of its own. */
function row(count: number): Pick<BerthSearchInput, "trees" | "places" | "capacity" | "conflicts"> {
  const places = Array.from({ length: count }, (_, at) => ({ first: 2 * at, second: 2 * at + 1 }));
  return { trees: 2 * count, places, capacity: 1, conflicts: [] };
}

describe("the berth search without a solver", () => {
  it("proves for one class what trying every layout finds", () => {
    fc.assert(
      fc.property(searches({ places: 20, classes: 1 }), (input) => {
        const best = bestByBruteForce(input);
        const found = searchBerths(input);
        expect(brokenRules(input, found.chosen)).toEqual([]);
        expect(costOf(input, found.chosen)).toBe(found.costUnits);
        expect([found.placed, found.costUnits, found.proven]).toEqual([best.placed, best.cost, true]);
        expect([found.bound, found.lowerBoundUnits]).toEqual([best.placed, best.cost]);
      }),
      { seed: 1, numRuns: 300 },
    );
  });

  it("never claims for several classes what is not so", () => {
    const seen = { proven: 0, open: 0 };
    fc.assert(
      fc.property(searches({ places: 10, classes: 3 }), (input) => {
        const best = bestByBruteForce(input);
        const found = searchBerths(input);
        expect(brokenRules(input, found.chosen)).toEqual([]);
        expect(costOf(input, found.chosen)).toBe(found.costUnits);
        expect(found.bound).toBeGreaterThanOrEqual(best.placed);
        if (found.placed === best.placed) expect(found.lowerBoundUnits).toBeLessThanOrEqual(best.cost);
        if (found.proven) expect([found.placed, found.costUnits]).toEqual([best.placed, best.cost]);
        seen[found.proven ? "proven" : "open"]++;
      }),
      { seed: 2, numRuns: 300 },
    );
    expect(Math.min(seen.proven, seen.open)).toBeGreaterThan(10);
  });

  it("takes the cheapest places, and no more than there are people", () => {
    const found = searchBerths({ ...row(4), classes: one(2, 7, 3, 9, 5) });
    expect(found.chosen.map(({ place }) => place)).toEqual([1, 3]);
    expect([found.placed, found.bound, found.costUnits, found.proven]).toEqual([2, 2, 8, true]);
  });

  it("places one more even where that costs dearly", () => {
    const conflicts: [number, number][] = [
      [0, 1],
      [1, 2],
    ];
    const found = searchBerths({ ...row(3), conflicts, classes: one(2, 1000, 0, 1000) });
    expect(found.chosen.map(({ place }) => place)).toEqual([0, 2]);
    expect([found.placed, found.costUnits]).toEqual([2, 2000]);
  });

  it("keeps a tree's capacity between places that do not conflict", () => {
    const star = { trees: 4, places: [1, 2, 3].map((second) => ({ first: 0, second })), conflicts: [] };
    const placed = [1, 2, 3].map(
      (capacity) => searchBerths({ ...star, capacity, classes: one(9, 0, 0, 0) }).placed,
    );
    expect(placed).toEqual([1, 2, 3]);
  });

  it("keeps classes to what they may use", () => {
    const classes = [
      { people: 1, costUnits: Float64Array.of(5, -1) },
      { people: 1, costUnits: Float64Array.of(0, 9) },
    ];
    const found = searchBerths({ ...row(2), classes });
    expect(found.chosen).toEqual([
      { place: 0, classIndex: 0 },
      { place: 1, classIndex: 1 },
    ]);
    expect([found.placed, found.costUnits]).toEqual([2, 14]);
  });

  it("merges classes alike and deals their places out again", () => {
    const costUnits = Float64Array.of(1, 2, 3, 4);
    const classes = [1, 2, 1].map((people) => ({ people, costUnits }));
    const found = searchBerths({ ...row(4), classes });
    expect(found.chosen.map(({ classIndex }) => classIndex)).toEqual([0, 1, 1, 2]);
    expect(found.proven).toBe(true);
  });

  it("answers where there is nobody, no place, or no hammock on a tree", () => {
    const nothing = { placed: 0, bound: 0, costUnits: 0, lowerBoundUnits: 0, proven: true, chosen: [] };
    expect(searchBerths({ ...row(2), classes: [] })).toMatchObject(nothing);
    expect(searchBerths({ ...row(2), classes: one(0, 1, 1) })).toMatchObject(nothing);
    expect(searchBerths({ ...row(0), classes: one(3) })).toMatchObject(nothing);
    expect(searchBerths({ ...row(2), capacity: 0, classes: one(3, 1, 1) })).toMatchObject(nothing);
    expect(searchBerths({ ...row(2), classes: one(3, -1, -1) })).toMatchObject(nothing);
  });

  it("tells of layouts that only get better, the answer last", () => {
    fc.assert(
      fc.property(searches({ places: 20, classes: 2 }), (input) => {
        const told: BerthSearch[] = [];
        const answer = searchBerths(input, { onIncumbent: (search) => told.push(search) });
        expect(told.at(-1)).toEqual(answer);
        for (const [before, after] of told.map((search, at) => [told[at - 1] ?? search, search] as const)) {
          expect(after.placed).toBeGreaterThanOrEqual(before.placed);
          if (after.placed === before.placed) expect(after.costUnits).toBeLessThanOrEqual(before.costUnits);
        }
      }),
      { seed: 3, numRuns: 100 },
    );
  });

  it("places no fewer where a rule is relaxed", () => {
    fc.assert(
      fc.property(searches({ places: 20, classes: 1 }), (input) => {
        const { placed } = searchBerths(input);
        const classes = input.classes.map(({ people, costUnits }) => ({
          people: people + 1,
          costUnits: costUnits.map((cost) => Math.max(0, cost)),
        }));
        expect(searchBerths({ ...input, capacity: input.capacity + 1 }).placed).toBeGreaterThanOrEqual(
          placed,
        );
        expect(searchBerths({ ...input, conflicts: input.conflicts.slice(1) }).placed).toBeGreaterThanOrEqual(
          placed,
        );
        expect(searchBerths({ ...input, classes }).placed).toBeGreaterThanOrEqual(placed);
      }),
      { seed: 4, numRuns: 100 },
    );
  });

  it("answers the same twice", () => {
    fc.assert(
      fc.property(searches({ places: 20, classes: 3 }), (input) => {
        expect(searchBerths(input)).toEqual(searchBerths(input));
      }),
      { seed: 5, numRuns: 30 },
    );
  });
});
