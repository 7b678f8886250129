import type { Camp } from "../plan/camp.ts";
import type { RobustCount } from "../plan/plan.ts";
import { countPlaced } from "./explain/count-placed.ts";
import type { LinearSolver } from "./linear-solver.ts";
import { prepareCamp } from "./prepare-camp.ts";
import type { KitGiven } from "./redeal/redeal-types.ts";
import { surveyOffM } from "./survey-off.ts";

/**
 * How many would have a berth were the positions of the map off by their error.
 *
 * A layout found among places that serve wherever stems and obstacles really stand within the error holds for the
 * true ones; and no true ones within it allow more than the bound over places that may serve somewhere.
 *
 * Shapes   a camp → a count; nothing where positions were taped as well as is usual, or where there is no map
 * Units    metres; the error is of each axis, so a position may be off by √2 of it
 * Holds    pairs that are not on the map count as stated: they were measured by themselves
 * Source   layout-search (handbook/layout.md: position error)
 */
export function findRobustCount(
  camp: Camp,
  solver?: LinearSolver,
  given?: KitGiven,
): RobustCount | undefined {
  const { ground } = camp;
  if (ground === undefined || ground.trees.length === 0 || camp.sleepers.length === 0) return undefined;
  const errorM = ground.positionErrorM;
  const offM = surveyOffM(ground);
  if (offM === 0) return undefined;
  const off = (byM: number) =>
    countPlaced(prepareCamp({ ...camp, ground: { ...ground, offM: byM } }, undefined, given), solver);
  const isKept = camp.rules.surveyRoom?.value === true;
  return {
    errorM,
    placed: off(offM).placed,
    most: off(-offM).bound,
    ...(isKept ? { asSurveyed: off(0).placed } : {}),
  };
}
