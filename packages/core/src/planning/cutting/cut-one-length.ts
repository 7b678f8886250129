import { diveCutting } from "./cut-dive.ts";
import { exactCutting } from "./cut-exact.ts";
import { relaxCutting } from "./cut-relaxation.ts";
import { cutGreedily, isDone } from "./cut-rounds.ts";
import type { CutColumn, CutProblem, CutUse } from "./cutting-types.ts";

export interface CutSearch {
  /** Undefined where no way was found; `bound` is Infinity where it is proven that there is none. */
  readonly uses: readonly CutUse[] | undefined;
  readonly cost: number;
  readonly bound: number;
}

/**
 * The fewest stocks of one length: the bound of the relaxation, rounded up, is dived for; where that fails all ways are
 * tried within a budget, and then one stock more is allowed.
 */
export function cutOneLength(problem: CutProblem): CutSearch {
  const pool: CutColumn[] = [];
  const quick = cutGreedily(problem);
  const most = isDone(quick.problem) ? quick.cost : (problem.stocks[0]?.most ?? 0) + 1;
  let bound = Math.ceil(relaxCutting(problem, pool, 1).bound - ROUNDING);
  let isCertain = true;
  for (let target = bound; target < most; target++) {
    const uses = diveCutting(problem, target, { pool, grain: 1, budget: DIVES });
    if (uses !== undefined) return { uses, cost: target, bound };
    const answer = isCertain ? exactCutting(problem, target, { pool, grain: 1, budget: TRIES }) : "unknown";
    if (answer === "none") bound = target + 1;
    else if (answer === "unknown") isCertain = false;
    else return { uses: answer, cost: target, bound };
  }
  if (isDone(quick.problem))
    return { uses: quick.uses, cost: quick.cost, bound: Math.min(bound, quick.cost) };
  return { uses: undefined, cost: Infinity, bound: isCertain ? Infinity : bound };
}

export const ROUNDING = 1e-6;
/** Relaxations that a dive may solve, and that trying all may. */
export const DIVES = 400;
export const TRIES = 300;
