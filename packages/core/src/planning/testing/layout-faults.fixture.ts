import type { Camp } from "../../plan/camp.ts";
import type { GroundXY } from "../../site/obstacle.ts";
import { placeFaults } from "../../site/place-faults.ts";
import type { Place } from "../../site/places-types.ts";
import type { Tree } from "../../site/tree.ts";

/** Two trees between which somebody lies, or might. */
export interface Hung {
  readonly headTree: string;
  readonly footTree: string;
  readonly spanM: number;
}

/** What is wrong with berths on the map, from the trees of the camp file alone; nothing where all is well. */
export function layoutFaults({ ground, rules }: Camp, berths: readonly Hung[]): readonly string[] {
  const trees = ground?.trees ?? [];
  const input = {
    trees,
    obstacles: ground?.obstacles ?? [],
    spanMinM: rules.spanMinM.value,
    spanMaxM: rules.spanMaxM.value,
    trunkMinM: rules.trunkMinM.value,
    halfWidthM: rules.footprintHalfWidthM.value,
    keptHalfWidthM: Math.max(rules.footprintHalfWidthM.value, rules.tarpHalfWidthM?.value ?? 0),
    deadTreeHeights: rules.deadTreeHeights.value,
    doubtfulTreeHeights: (rules.doubtfulTreeHeights ?? rules.deadTreeHeights).value,
  };
  const loads = new Map<string, number>();
  for (const { headTree, footTree } of berths) {
    for (const id of [headTree, footTree]) loads.set(id, (loads.get(id) ?? 0) + 1);
  }
  const overloaded = [...loads].filter(([, load]) => load > rules.hammocksPerTree.value);
  return [
    ...placeFaults(
      input,
      berths.map((berth) => placeOf(berth, trees, input.keptHalfWidthM)),
    ),
    ...overloaded.map(([id, load]) => `${id}: ${load} hammocks`),
  ];
}

function placeOf({ headTree, footTree, spanM }: Hung, trees: readonly Tree[], halfWidthM: number): Place {
  const first = trees.findIndex(({ id }) => id === headTree);
  const second = trees.findIndex(({ id }) => id === footTree);
  return { first, second, spanM, footprint: strip(trees[first], trees[second], halfWidthM) };
}

/** (0, 0), a quarter along and half a width to either side, three quarters along, the other tree. */
function strip(from: Tree | undefined, to: Tree | undefined, halfWidthM: number): GroundXY[] {
  if (from === undefined || to === undefined) return [];
  const [east, north] = [to.xM - from.xM, to.yM - from.yM];
  const spanM = Math.hypot(east, north);
  const spot = (along: number, across: number): GroundXY => [
    from.xM + along * east - (across * halfWidthM * north) / spanM,
    from.yM + along * north + (across * halfWidthM * east) / spanM,
  ];
  return [spot(0, 0), spot(0.25, -1), spot(0.75, -1), spot(1, 0), spot(0.75, 1), spot(0.25, 1)];
}
