import type { Camp } from "../plan/camp.ts";
import type { GroundXY } from "../site/obstacle.ts";
import { placeFaults } from "../site/place-faults.ts";
import type { Place } from "../site/places-types.ts";
import type { Tree } from "../site/tree.ts";

/** Two trees between which somebody lies, or might. */
export interface Hung {
  readonly headTree: string;
  readonly footTree: string;
}

/**
 * What is wrong with berths on the map, from the trees of the camp alone and by other arithmetic than the one that found
 * them; nothing where all is well. Berths with a tree that is not on the map are passed over.
 *
 * Shapes   a camp and its berths → sentences
 * Units    metres
 * Holds    positions as surveyed
 * Source   layout-search (handbook/layout.md: looked at again)
 */
export function layoutFaults(
  { ground, rules }: Pick<Camp, "ground" | "rules">,
  berths: readonly Hung[],
): readonly string[] {
  const trees = ground?.trees ?? [];
  const indexOf = new Map(trees.map(({ id }, index) => [id, index]));
  const halfWidthM = rules.footprintHalfWidthM.value;
  const keptHalfWidthM = Math.max(halfWidthM, rules.tarpHalfWidthM?.value ?? 0);
  const input = {
    trees,
    obstacles: ground?.obstacles ?? [],
    spanMinM: rules.spanMinM.value,
    spanMaxM: rules.spanMaxM.value,
    trunkMinM: rules.trunkMinM.value,
    halfWidthM,
    keptHalfWidthM,
    deadTreeHeights: rules.deadTreeHeights.value,
    doubtfulTreeHeights: (rules.doubtfulTreeHeights ?? rules.deadTreeHeights).value,
  };
  const places = berths.flatMap(({ headTree, footTree }) => {
    const [first, second] = [indexOf.get(headTree), indexOf.get(footTree)];
    return first === undefined || second === undefined ? [] : placeOf(trees, first, second, keptHalfWidthM);
  });
  return [...placeFaults(input, places), ...overloaded(berths, rules.hammocksPerTree.value)];
}

function overloaded(berths: readonly Hung[], most: number): string[] {
  const loads = new Map<string, number>();
  for (const { headTree, footTree } of berths) {
    for (const id of [headTree, footTree]) loads.set(id, (loads.get(id) ?? 0) + 1);
  }
  return [...loads].flatMap(([id, load]) => (load > most ? [`${id}: ${load} hammocks`] : []));
}

function placeOf(trees: readonly Tree[], first: number, second: number, halfWidthM: number): Place[] {
  const [from, to] = [trees[first], trees[second]];
  if (from === undefined || to === undefined) return [];
  const spanM = Math.hypot(to.xM - from.xM, to.yM - from.yM);
  return [{ first, second, spanM, footprint: strip(from, to, spanM, halfWidthM) }];
}

/** (0, 0), a quarter along and half a width to either side, three quarters along, the other tree. */
function strip(from: Tree, to: Tree, spanM: number, halfWidthM: number): GroundXY[] {
  const [east, north] = [to.xM - from.xM, to.yM - from.yM];
  const spot = (along: number, across: number): GroundXY => [
    from.xM + along * east - (across * halfWidthM * north) / spanM,
    from.yM + along * north + (across * halfWidthM * east) / spanM,
  ];
  return [spot(0, 0), spot(0.25, -1), spot(0.75, -1), spot(1, 0), spot(0.75, 1), spot(0.25, 1)];
}
