import type { Basis } from "../outcome/basis.ts";
import { succeed, type Outcome } from "../outcome/outcome.ts";
import { berthPlaces } from "../site/berth-places.ts";
import { placeFaults } from "../site/place-faults.ts";
import type { Place, PlacesInput } from "../site/places-types.ts";
import type { Tree } from "../site/tree.ts";
import { searchBerths, type BerthSearchTools } from "./berth-search.ts";
import { layoutRefusals } from "./layout-refusals.ts";
import {
  LAYOUT_DEFAULTS,
  type LayoutModelInput,
  type LayoutModelValue,
  type LayoutRules,
} from "./layout-types.ts";

/**
 * Who hangs where, for people and kit all alike: as many as possible, then with spans as near the ideal
 * as possible.
 *
 *   berth cost = round(10,000 · |span − ideal|) units of 0.1 mm
 *
 * Shapes   stems, people, rules → berths sorted by tree ids
 * Units    metres; `gap` = (cost − lower bound) / max(cost, 0.0001)
 * Holds    finite positions, ids once each, whole people ≥ 0, whole hammocks a tree ≥ 1, 0 ≤ least span ≤ most
 * Error    none where `proven`; otherwise `bound` and `gap` tell how far the best can be
 * Source   layout-search (handbook/layout.md: derivation, worked figures)
 */
export function layoutModel(
  input: LayoutModelInput,
  tools: Pick<BerthSearchTools, "solver"> = {},
): Outcome<LayoutModelValue> {
  const rules = { ...LAYOUT_DEFAULTS, ...input.rules };
  const refused = layoutRefusals(input, rules);
  if (refused !== undefined) return refused;
  const ground = groundOf(input, rules);
  const { places, conflicts } = berthPlaces(ground);
  const search = searchBerths(
    {
      trees: input.trees.length,
      places,
      capacity: rules.hammocksPerTree,
      conflicts,
      classes: [{ people: input.people, costUnits: costsOf(places, rules.spanIdealM) }],
    },
    tools,
  );
  const chosen = search.chosen.flatMap(({ place }) => places[place] ?? []);
  const faults = placeFaults(ground, chosen);
  if (faults.length > 0) throw new Error(`the layout breaks a rule of the ground: ${faults.join("; ")}`);
  const costM = search.costUnits / UNITS_A_METRE;
  const lowerBoundM = search.lowerBoundUnits / UNITS_A_METRE;
  return succeed({
    placed: search.placed,
    bound: search.bound,
    costM,
    lowerBoundM,
    gap: (costM - lowerBoundM) / Math.max(costM, 1 / UNITS_A_METRE),
    proven: search.proven,
    method: search.method,
    berths: chosen.map((place) => ({ trees: idsOf(input.trees, place), spanM: place.spanM })),
    basis: BASIS,
  });
}

function groundOf({ trees }: LayoutModelInput, rules: LayoutRules): PlacesInput {
  return {
    trees,
    obstacles: [],
    spanMinM: rules.spanMinM,
    spanMaxM: rules.spanMaxM,
    trunkMinM: rules.trunkMinM,
    halfWidthM: rules.tarpHalfWidthM,
    deadTreeHeights: rules.deadTreeHeights,
    doubtfulTreeHeights: 0,
  };
}

function costsOf(places: readonly Place[], spanIdealM: number): Float64Array {
  return Float64Array.from(places, ({ spanM }) => Math.round(UNITS_A_METRE * Math.abs(spanM - spanIdealM)));
}

function idsOf(trees: readonly Tree[], { first, second }: Place): readonly [string, string] {
  return [trees[first]?.id ?? "", trees[second]?.id ?? ""];
}

/** Costs are whole tenths of a millimetre. Source: house-convention. */
const UNITS_A_METRE = 10_000;

const BASIS: Basis = {
  rule: "layout",
  source: "layout-search",
  assumes: [
    "everybody's kit is alike",
    "the ground is level and the stems stand where the list says",
    "healthy and not-looked-at trees serve; doubtful and dead ones do not",
  ],
};
