import type { Camp, PlannedBerth } from "@nightspan/core";

/** How far it is from one tree to the other for somebody who steps it out. */
export interface BerthSteps {
  /** Steps of the sleeper from trunk middle to trunk middle; to be told to the half. */
  readonly steps: number;
  /** From bark to bark [m]. */
  readonly barkToBarkM: number;
  /** The pair was stated in steps: its distance is no closer than those. */
  readonly stepped: boolean;
}

/**
 * The sleeper's own steps between the two trees: span over step, so from beside the middle of one trunk to beside the
 * middle of the other, as steps are stated too.
 */
export function berthSteps(berth: PlannedBerth, camp: Camp): BerthSteps {
  const sleeper = camp.sleepers.find(({ id }) => id === berth.sleeper);
  if (sleeper === undefined) throw new Error(`the camp has no sleeper ${berth.sleeper}`);
  const stated = camp.ground?.pairs.find(({ id }) => id === berth.pair);
  const [first, second] = stated?.dbhM ?? [trunkOf(berth.headTree, camp), trunkOf(berth.footTree, camp)];
  const barkToBarkM = berth.spanM - (first + second) / 2;
  return { steps: berth.spanM / sleeper.stepM, barkToBarkM, stepped: stated?.stepped === true };
}

function trunkOf(id: string, { ground }: Camp): number {
  return ground?.trees.find((tree) => tree.id === id)?.dbhM ?? 0;
}
