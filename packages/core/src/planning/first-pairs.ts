import type { Camp } from "../plan/camp.ts";
import { columnsByCost, takeInOrder } from "./berth-search-greedy.ts";
import { searchModel } from "./berth-search-model.ts";
import type { CampPlaces } from "./camp-places-types.ts";
import { costTerms, placeCosts } from "./cost-terms.ts";

/** Pairs of trees that are spoken for on the way to a plan. Nobody has looked at a hang there: no verdict goes with it. */
export interface FirstPairs {
  readonly asked: number;
  /** Ids or tags of the two trees of each pair. */
  readonly pairs: readonly (readonly [string, string])[];
}

/**
 * The first pairs of a camp, by the ground alone and the cheapest first: there before anybody's hang is worked out.
 *
 * Shapes   places of the ground → so many pairs as there are sleepers, or as can be used together
 * Holds    no two pairs exclude each other, no tree has more hammocks than the house allows; pins, kit and groups are
 *          not looked at, so the plan may use others, and more or fewer
 * Source   layout-search (handbook/layout.md: the first pairs)
 */
export function firstPairs(camp: Camp, ground: CampPlaces): FirstPairs {
  const { rules, sleepers } = camp;
  const costUnits = placeCosts(ground.places, costTerms(rules.spanIdealM.value, { ...rules, ...camp }));
  const model = searchModel({
    trees: ground.anchors.length,
    places: ground.places,
    capacity: rules.hammocksPerTree.value,
    conflicts: ground.conflicts,
    classes: [{ people: sleepers.length, costUnits }],
  });
  const columns = takeInOrder(model, columnsByCost(model));
  return pairsAt(
    sleepers.length,
    ground,
    [...columns].map((column) => model.columnPlace[column] ?? -1),
  );
}

/** The pairs of some places. */
export function pairsAt(
  asked: number,
  { places, anchors }: CampPlaces,
  chosen: readonly number[],
): FirstPairs {
  return {
    asked,
    pairs: chosen.flatMap((place) => {
      const { first = -1, second = -1 } = places[place] ?? {};
      const [one, other] = [anchors[first]?.id, anchors[second]?.id];
      return one === undefined || other === undefined ? [] : [[one, other] as const];
    }),
  };
}
