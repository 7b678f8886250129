import { checks } from "@nightspan/checks";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { HAS_STEM_MAPS, stemMap } from "../site/stem-maps.fixture.ts";
import type { Tree } from "../site/tree.ts";
import { stem, woods } from "../site/wood.fixture.ts";
import rows from "./layout-model.checks.json" with { type: "json" };
import { layoutModel } from "./layout-model.ts";
import type { LayoutModelInput, LayoutModelValue, LayoutRules } from "./layout-types.ts";

function solved(input: LayoutModelInput): LayoutModelValue {
  const outcome = layoutModel(input);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.refusals));
  return outcome.value;
}

function refusedFields(input: LayoutModelInput): string[] {
  const outcome = layoutModel(input);
  return outcome.ok ? [] : outcome.refusals.map(({ field }) => field);
}

checks(rows, ({ trees, people, hammocks }) => {
  const value = solved({
    trees: trees.map(([x = NaN, y = NaN], index) => stem(`t${index}`, x, y)),
    people,
    rules: { hammocksPerTree: hammocks },
  });
  return { placed: value.placed, bound: value.bound, cost_m: value.costM, lower_bound_m: value.lowerBoundM };
});

const ASKS = woods().map(
  ({ trees, halfWidthM, deadTreeHeights }): LayoutModelInput & { rules: Partial<LayoutRules> } => ({
    trees,
    people: 6,
    rules: { tarpHalfWidthM: halfWidthM, deadTreeHeights, hammocksPerTree: trees.length % 2 === 0 ? 1 : 2 },
  }),
);

/** Everywhere and each berth the same, but for one unit of 0.1 mm a berth. */
function sameWithinUnits(a: LayoutModelValue, b: LayoutModelValue): void {
  expect([a.placed, a.bound, a.proven]).toEqual([b.placed, b.bound, b.proven]);
  expect(Math.abs(a.costM - b.costM)).toBeLessThanOrEqual(a.placed * 1e-4 + 1e-9);
}

describe("the layout model", () => {
  it("tells berths by tree ids, lower first, sorted, with their spans", () => {
    const trees = [stem("b", 4, 0), stem("a", 0, 0), stem("10", 0, 9), stem("9", 4.25, 9)];
    expect(solved({ trees, people: 2 })).toMatchObject({
      berths: [
        { trees: ["10", "9"], spanM: 4.25 },
        { trees: ["a", "b"], spanM: 4 },
      ],
      costM: 0.25,
      gap: 0,
      proven: true,
    });
  });

  it("answers for nobody, for no tree, and where no pair serves", () => {
    const empty = { placed: 0, bound: 0, costM: 0, lowerBoundM: 0, gap: 0, proven: true, berths: [] };
    expect(solved({ trees: [], people: 3 })).toMatchObject(empty);
    expect(solved({ trees: [stem("a", 0, 0), stem("b", 4, 0)], people: 0 })).toMatchObject(empty);
    expect(solved({ trees: [stem("a", 0, 0), stem("b", 9, 0)], people: 2 })).toMatchObject(empty);
  });

  it("leaves a doubtful tree's surroundings alone, for only dead ones have a reach here", () => {
    const pair = [stem("a", 0, 0), stem("b", 4, 0)];
    const near = (condition: Tree["condition"]): number =>
      solved({ trees: [...pair, stem("x", 2, 6, { condition })], people: 1, rules: { deadTreeHeights: 1 } })
        .placed;
    expect(near("doubtful")).toBe(1);
    expect(near("dead")).toBe(0);
  });

  it("refuses all that it cannot use at once, by field", () => {
    const trees = [stem("a", 0, 0), stem("a", NaN, 1, { dbhM: 0 }), stem("", 4, 0, { heightM: -1 })];
    const rules = { spanMinM: 6, tarpHalfWidthM: -1, hammocksPerTree: 1.5, deadTreeHeights: Infinity };
    expect(refusedFields({ trees, people: 1.5, rules })).toEqual([
      "trees.1.xM",
      "trees.1.dbhM",
      "trees.2.id",
      "trees.2.heightM",
      "trees.1.id",
      "people",
      "rules.tarpHalfWidthM",
      "rules.deadTreeHeights",
      "rules.spanMaxM",
      "rules.hammocksPerTree",
    ]);
    expect(refusedFields({ trees: [], people: -1 })).toEqual(["people"]);
    expect(refusedFields({ trees: [], people: NaN })).toEqual(["people"]);
  });

  it("costs the same when the wood is mirrored or turned, to one unit a berth", () => {
    const seen = { placed: 0 };
    fc.assert(
      fc.property(ASKS, (ask) => {
        const before = solved(ask);
        seen.placed += before.placed;
        const mirrored = ask.trees.map((tree) => ({ ...tree, xM: -tree.xM }));
        const turned = ask.trees.map((tree) => ({
          ...tree,
          xM: 0.6 * tree.xM - 0.8 * tree.yM,
          yM: 0.8 * tree.xM + 0.6 * tree.yM,
        }));
        sameWithinUnits(solved({ ...ask, trees: mirrored }), before);
        sameWithinUnits(solved({ ...ask, trees: turned }), before);
        sameWithinUnits(solved({ ...ask, trees: [...ask.trees].reverse() }), before);
      }),
      { seed: 1, numRuns: 80 },
    );
    expect(seen.placed).toBeGreaterThan(80);
  });

  it("places no fewer when a rule is relaxed", () => {
    fc.assert(
      fc.property(ASKS, (ask) => {
        const { placed } = solved(ask);
        const laxer: Partial<LayoutRules>[] = [
          { spanMinM: 2.7, spanMaxM: 5.5 },
          { trunkMinM: 0.15 },
          { hammocksPerTree: 3 },
          { tarpHalfWidthM: 0.3 },
          { deadTreeHeights: 0 },
        ];
        for (const rules of laxer) {
          expect(solved({ ...ask, rules: { ...ask.rules, ...rules } }).placed).toBeGreaterThanOrEqual(placed);
        }
      }),
      { seed: 2, numRuns: 60 },
    );
  });

  it("is never worse for a healthy tree that stands in nobody's way", () => {
    fc.assert(
      fc.property(ASKS, (ask) => {
        const before = solved(ask);
        const after = solved({
          ...ask,
          trees: [...ask.trees, stem("far", -40, -40), stem("farther", -44, -40)],
        });
        expect(after.placed).toBeGreaterThanOrEqual(before.placed);
        if (after.placed === before.placed) expect(after.costM).toBeLessThanOrEqual(before.costM + 1e-12);
      }),
      { seed: 3, numRuns: 60 },
    );
  });

  it("proves every one of these small woods without a solver", () => {
    fc.assert(
      fc.property(ASKS, (ask) => {
        expect(solved(ask)).toMatchObject({ proven: true, gap: 0 });
      }),
      { seed: 4, numRuns: 60 },
    );
  });

  it.skipIf(!HAS_STEM_MAPS).each(["longleaf", "waka", "spruces"] as const)(
    `proves 20 people in the measured wood %s${HAS_STEM_MAPS ? "" : " (skipped: the stem maps are not beside the checkout)"}`,
    (name) => {
      const value = solved({ trees: stemMap(name), people: 20 });
      expect(value.proven).toBe(true);
      expect(value.berths.length).toBe(value.placed);
      expect(new Set(value.berths.flatMap(({ trees }) => trees)).size).toBe(2 * value.placed);
    },
  );
});
