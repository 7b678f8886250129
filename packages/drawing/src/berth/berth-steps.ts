import type { Camp, PlannedBerth } from "@nightspan/core";

/** How far it is from one tree to the other for somebody who steps it out. */
export interface BerthSteps {
  /** Steps of the sleeper; to be told to the half. */
  readonly steps: number;
  /** From bark to bark [m]. */
  readonly barkToBarkM: number;
  /** The pair was stated in steps: its distance is what somebody stepped, trunks and all. */
  readonly stepped: boolean;
}

/**
 * The sleeper's own steps between the two trees: from bark to bark, as a person steps. Of a pair that somebody
 * stepped, the stated distance itself, so that who stepped it reads the number that was counted.
 */
export function berthSteps(berth: PlannedBerth, camp: Camp): BerthSteps {
  const sleeper = camp.sleepers.find(({ id }) => id === berth.sleeper);
  if (sleeper === undefined) throw new Error(`the camp has no sleeper ${berth.sleeper}`);
  const stated = camp.ground?.pairs.find(({ id }) => id === berth.pair);
  const [first, second] = stated?.dbhM ?? [trunkOf(berth.headTree, camp), trunkOf(berth.footTree, camp)];
  const barkToBarkM = berth.spanM - (first + second) / 2;
  const stepped = stated?.stepped === true;
  return { steps: (stepped ? berth.spanM : barkToBarkM) / sleeper.stepM, barkToBarkM, stepped };
}

function trunkOf(id: string, { ground }: Camp): number {
  return ground?.trees.find((tree) => tree.id === id)?.dbhM ?? 0;
}
