import { relaxCutting } from "./cut-relaxation.ts";
import { afterCutting, isDone } from "./cut-rounds.ts";
import type { DiveTools } from "./cut-dive.ts";
import type { CutColumn, CutProblem, CutUse } from "./cutting-types.ts";

/** "none": proven that there is no way; "unknown": the budget ended first. */
export type ExactAnswer = readonly CutUse[] | "none" | "unknown";

/**
 * Whether all can be cut for no more than `target`: every filled stock that holds the widest piece left is tried, and so on.
 *
 * Only fillings into which no wanted piece fits any more are tried; a filling less full gains nothing. Of equal stocks that
 * begin with the same piece the later never holds the larger filling.
 */
export function exactCutting(
  problem: CutProblem,
  target: number,
  tools: DiveTools,
  before?: CutColumn,
): ExactAnswer {
  if (isDone(problem)) return [];
  if (target <= 0 || tools.budget-- <= 0) return target <= 0 ? "none" : "unknown";
  if (relaxCutting(problem, tools.pool, tools.grain).bound > target + SLACK) return "none";
  const fillings = fullFillings(problem);
  if (fillings === undefined) return "unknown";
  let answer: ExactAnswer = "none";
  for (const column of fillings) {
    if (before !== undefined && comesBefore(column, before)) continue;
    const rest = afterCutting(problem, [{ column, times: 1 }]);
    if (rest.cost > target) continue;
    const tail = exactCutting(rest.problem, target - rest.cost, tools, column);
    if (tail === "unknown") answer = tail;
    else if (tail !== "none") return [...rest.uses, ...tail];
  }
  return answer;
}

/** Of one stock and one widest piece: whether `column` would have been tried earlier than `before`. */
function comesBefore(column: CutColumn, before: CutColumn): boolean {
  if (column.stock !== before.stock) return false;
  const first = before.cuts.findIndex((count) => count > 0);
  if (column.cuts.findIndex((count) => count > 0) !== first) return false;
  for (const [piece, count] of column.cuts.entries()) {
    const other = before.cuts[piece] ?? 0;
    if (count !== other) return count > other;
  }
  return false;
}

/** All full fillings with the widest piece left, the greater first; undefined where there are too many. */
function fullFillings({ widths, demand, stocks }: CutProblem): CutColumn[] | undefined {
  const widest = demand.findIndex((count) => count > 0);
  const found: CutColumn[] = [];
  const fill = (stock: number, piece: number, left: number, cuts: Int32Array): boolean => {
    if (found.length > MOST_FILLINGS) return false;
    const width = widths[piece];
    if (width === undefined) {
      const isFull = widths.every((one, at) => one > left || (cuts[at] ?? 0) >= (demand[at] ?? 0));
      if (isFull) found.push({ stock, cuts: cuts.slice() });
      return true;
    }
    const most = Math.min(demand[piece] ?? 0, Math.floor(left / width));
    for (let count = most; count >= (piece === widest ? 1 : 0); count--) {
      cuts[piece] = count;
      if (!fill(stock, piece + 1, left - count * width, cuts)) return false;
    }
    cuts[piece] = 0;
    return true;
  };
  for (const [stock, { capacity, most }] of stocks.entries()) {
    if (most > 0 && !fill(stock, widest, capacity, new Int32Array(widths.length))) return undefined;
  }
  return found;
}

const MOST_FILLINGS = 5_000;
const SLACK = 1e-6;
