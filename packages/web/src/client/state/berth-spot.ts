import type { Camp, GroundXY, Plan, PlannedBerth } from "@nightspan/core";

/** Where the middle of a berth lies; nothing where there is no map. */
export function berthSpot(camp: Camp, { headTree, footTree, pair }: PlannedBerth): GroundXY | undefined {
  if (pair !== undefined) return undefined;
  const trees = camp.ground?.trees ?? [];
  const head = trees.find(({ id }) => id === headTree);
  const foot = trees.find(({ id }) => id === footTree);
  if (head === undefined || foot === undefined) return undefined;
  return [(head.xM + foot.xM) / 2, (head.yM + foot.yM) / 2];
}

/** How far apart two people lie, berth middle to berth middle [m]; nothing where nobody knows. */
export function apartM(plan: Plan, camp: Camp, one: string, other: string): number | undefined {
  const spotOf = (id: string): GroundXY | undefined => {
    const berth = plan.berths.find(({ sleeper }) => sleeper === id);
    return berth === undefined ? undefined : berthSpot(camp, berth);
  };
  const [a, b] = [spotOf(one), spotOf(other)];
  return a === undefined || b === undefined ? undefined : Math.hypot(a[0] - b[0], a[1] - b[1]);
}
