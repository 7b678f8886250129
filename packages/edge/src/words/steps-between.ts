import type { Camp, PlannedBerth } from "@nightspan/core";
import { steps } from "./quantities.ts";

/**
 * How many of the sleeper's own steps lie between the two trees, to the half: from bark to bark, as a person steps.
 * Of a pair that somebody stepped it is the stated distance itself.
 */
export function stepsBetween(
  { pair, spanM, headTree, footTree, sleeper: id }: PlannedBerth,
  camp: Camp,
): string {
  const sleeper = camp.sleepers.find((person) => person.id === id);
  if (sleeper === undefined) return "";
  const stated = camp.ground?.pairs.find((one) => one.id === pair);
  if (stated?.stepped === true) return steps(spanM, sleeper.stepM);
  const [first, second] = stated?.dbhM ?? [trunkOf(headTree, camp), trunkOf(footTree, camp)];
  return steps(spanM - (first + second) / 2, sleeper.stepM);
}

function trunkOf(id: string, { ground }: Camp): number {
  return ground?.trees.find((tree) => tree.id === id)?.dbhM ?? 0;
}
