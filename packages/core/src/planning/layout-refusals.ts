import { refuseAll, type Failure, type Refusal } from "../outcome/outcome.ts";
import type { Tree } from "../site/tree.ts";
import type { LayoutModelInput, LayoutRules } from "./layout-types.ts";

/** All that keeps the layout model from an answer, by field. */
export function layoutRefusals({ trees, people }: LayoutModelInput, rules: LayoutRules): Failure | undefined {
  return refuseAll([
    ...trees.flatMap(treeRefusals),
    ...repeatedIds(trees),
    ...unless(isWhole(people, 0), "people", people, "a whole number, 0 or more"),
    ...ruleRefusals(rules),
  ]);
}

function treeRefusals({ id, xM, yM, dbhM, heightM }: Tree, index: number): Refusal[] {
  const tree = `trees.${index}`;
  return [
    ...unless(id !== "", `${tree}.id`, id, "an id that is not empty"),
    ...unless(Number.isFinite(xM), `${tree}.xM`, xM, "a finite number of metres"),
    ...unless(Number.isFinite(yM), `${tree}.yM`, yM, "a finite number of metres"),
    ...unless(isLength(dbhM) && dbhM > 0, `${tree}.dbhM`, dbhM, "a diameter above 0"),
    ...unless(
      heightM === undefined || isLength(heightM),
      `${tree}.heightM`,
      heightM,
      "a height of 0 or more",
    ),
  ];
}

function repeatedIds(trees: readonly Tree[]): Refusal[] {
  const seen = new Set<string>();
  return trees.flatMap(({ id }, index) => {
    const isNew = !seen.has(id);
    seen.add(id);
    return unless(isNew || id === "", `trees.${index}.id`, id, "an id that no other tree has");
  });
}

function ruleRefusals(rules: LayoutRules): Refusal[] {
  const { spanMinM, spanMaxM, hammocksPerTree } = rules;
  const lengths = [
    "spanMinM",
    "spanMaxM",
    "spanIdealM",
    "trunkMinM",
    "tarpHalfWidthM",
    "deadTreeHeights",
  ] as const;
  return [
    ...lengths.flatMap((key) =>
      unless(isLength(rules[key]), `rules.${key}`, rules[key], "a finite number, 0 or more"),
    ),
    ...unless(!(spanMinM > spanMaxM), "rules.spanMaxM", spanMaxM, `at least the least span, ${spanMinM}`),
    ...unless(
      isWhole(hammocksPerTree, 1),
      "rules.hammocksPerTree",
      hammocksPerTree,
      "a whole number, 1 or more",
    ),
  ];
}

function unless(isMet: boolean, field: string, got: unknown, need: string): Refusal[] {
  return isMet ? [] : [{ field, got, need }];
}

function isLength(value: number): boolean {
  return value >= 0 && value < Infinity;
}

function isWhole(value: number, least: number): boolean {
  return Number.isSafeInteger(value) && value >= least;
}
