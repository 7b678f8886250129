import { byRule, type Finding } from "../../outcome/finding.ts";
import { touchingStems } from "../../site/touching-stems.ts";
import type { Tree } from "../../site/tree.ts";

/**
 * Stems of the map of which one must stand elsewhere: each pair to be looked at, or of many the first few and how many more.
 *
 * Nothing is left out for it: the plan is made of the map as it is, where stems at one spot keep each other from use.
 */
export function stemFindings(trees: readonly Tree[]): Finding[] {
  const pairs = touchingStems(trees);
  const told = pairs.length > MOST_TOLD ? pairs.slice(0, FIRST_TOLD) : pairs;
  const more = pairs.length - told.length;
  return [
    ...told.map(({ first, second, apartM, leastM }) =>
      byRule(
        {
          rule: "site.stems-touch",
          source: "layout-search",
          subject: `tree/${first.id}`,
          sense: "at-least",
          demand: apartM,
          limit: leastM,
          unit: "m",
          about: [second.id],
        },
        "look-again",
      ),
    ),
    ...(more > 0 ? [moreTouch(more)] : []),
  ];
}

function moreTouch(count: number): Finding {
  return byRule(
    {
      rule: "site.stems-touch-more",
      source: "layout-search",
      subject: "camp",
      sense: "at-most",
      demand: count,
      limit: 0,
      unit: "1",
    },
    "look-again",
  );
}

/** No more pairs than a person goes to look at one by one. */
const MOST_TOLD = 12;
const FIRST_TOLD = 5;
