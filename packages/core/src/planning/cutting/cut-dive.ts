import { relaxCutting } from "./cut-relaxation.ts";
import { afterCutting, cutGreedily, isDone, type CutRest } from "./cut-rounds.ts";
import type { CutColumn, CutProblem, CutUse } from "./cutting-types.ts";

export interface DiveTools {
  readonly pool: CutColumn[];
  /** Every cost is a multiple of it. */
  readonly grain: number;
  /** Relaxations that may still be solved. */
  budget: number;
}

/**
 * A way to cut all for no more than `target`, or nothing where none was found.
 *
 * The relaxation is solved, whole uses of its patterns are cut, and the rest is solved anew; where no pattern is used once
 * whole, the fullest used is cut once, and another is tried where that leads nowhere.
 */
export function diveCutting(
  problem: CutProblem,
  target: number,
  tools: DiveTools,
): readonly CutUse[] | undefined {
  const quick = cutGreedily(problem);
  if (isDone(quick.problem) && quick.cost <= target) return quick.uses;
  if (tools.budget <= 0) return undefined;
  tools.budget--;
  const { bound, uses } = relaxCutting(problem, tools.pool, tools.grain);
  if (bound > target + SLACK) return undefined;
  for (const wanted of choices(uses)) {
    const rest = afterCutting(problem, wanted);
    if (rest.uses.length === 0) continue;
    const tail = finish(rest, target, tools);
    if (tail !== undefined) return [...rest.uses, ...tail];
  }
  return undefined;
}

type Fraction = readonly { readonly column: CutColumn; readonly times: number }[];

function finish({ problem, cost }: CutRest, target: number, tools: DiveTools): readonly CutUse[] | undefined {
  if (cost > target) return undefined;
  return isDone(problem) ? [] : diveCutting(problem, target - cost, tools);
}

/** What may be cut next: all that is whole; or else one of the patterns used most, or the next. */
function choices(uses: Fraction): Fraction[] {
  const whole = uses.flatMap(({ column, times }) => {
    const count = Math.floor(times + NEARLY);
    return count > 0 ? [{ column, times: count }] : [];
  });
  if (whole.length > 0) return [whole];
  return [...uses]
    .sort((a, b) => b.times - a.times)
    .slice(0, TRIED)
    .map(({ column }) => [{ column, times: 1 }]);
}

const NEARLY = 1e-6;
const TRIED = 3;
const SLACK = 1e-6;
