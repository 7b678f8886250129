import type { Counterfactual } from "../../plan/explanation.ts";
import type { LinearSolver } from "../linear-solver.ts";
import { prepareCamp, type PreparedCamp } from "../prepare-camp.ts";
import type { Change } from "./change.ts";
import { changesOf } from "./changes.ts";
import { countPlaced } from "./count-placed.ts";
import { kitToBring } from "./kit-to-bring.ts";

export interface CounterfactualOptions {
  readonly solver?: LinearSolver;
  /** Tell also the changes that gain nobody. */
  readonly all?: boolean;
}

/**
 * What one change alone would do: the camp is counted anew with each, and those that gain people are told, most first.
 *
 * What is placed without the change can be placed with it too, so a count never falls. Changes that touch what may
 * fall, how stout a trunk must be or whether a tree is sound are information and never advice.
 *
 * Shapes   one camp, how many are placed → at most 20 changes and 4 kinds of kit, sorted by people gained, advice before information
 * Units    SI
 * Holds    any camp; nothing where everybody has a berth
 * Error    exact for each change that is `proven`; else at least so many
 * Source   common-practice (handbook/planning.md: what would change it)
 */
export function counterfactuals(
  prepared: PreparedCamp,
  placed: number,
  { solver, all = false }: CounterfactualOptions = {},
): Counterfactual[] {
  if (placed >= prepared.camp.sleepers.length) return [];
  const told = changesOf(prepared, placed)
    .slice(0, MOST_COUNTED)
    .map((change) => counted(change, placed, solver));
  return [...told, ...kitToBring(prepared, placed, solver)]
    .filter(({ gained }) => all || gained > 0)
    .sort((a, b) => b.gained - a.gained || Number(b.advice) - Number(a.advice));
}

/** Camps that are counted anew, however many obstacles there are. */
const MOST_COUNTED = 20;

function counted(
  { camp, ...change }: Change,
  before: number,
  solver: LinearSolver | undefined,
): Counterfactual {
  const found = countPlaced(prepareCamp(camp), solver);
  const placed = Math.max(before, found.placed);
  return { ...change, placed, gained: placed - before, proven: placed === found.bound };
}
