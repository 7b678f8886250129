import type { CutColumn, CutProblem, CutUse } from "./cutting-types.ts";

/** What is left to cut after some patterns, each clipped to what is still wanted. */
export interface CutRest {
  readonly problem: CutProblem;
  readonly uses: readonly CutUse[];
  readonly cost: number;
}

/** Uses of patterns one after the other, as far as pieces are wanted and stock is there. */
export function afterCutting(
  problem: CutProblem,
  wanted: readonly { readonly column: CutColumn; readonly times: number }[],
): CutRest {
  const demand = problem.demand.slice();
  const begun = problem.stocks.map(() => 0);
  const uses: CutUse[] = [];
  let cost = 0;
  for (const { column, times } of wanted) {
    for (let left = times; left > 0;) {
      const room = (problem.stocks[column.stock]?.most ?? 0) - (begun[column.stock] ?? 0);
      const cuts = column.cuts.map((count, piece) => Math.min(count, demand[piece] ?? 0));
      const again = Math.min(left, room, timesWanted(cuts, demand));
      if (!(again > 0) || again === Infinity) break;
      cuts.forEach((count, piece) => (demand[piece] = (demand[piece] ?? 0) - count * again));
      begun[column.stock] = (begun[column.stock] ?? 0) + again;
      cost += again * (problem.stocks[column.stock]?.cost ?? 0);
      uses.push({ stock: column.stock, cuts, times: again });
      left -= again;
    }
  }
  const stocks = problem.stocks.map((stock, index) => ({
    ...stock,
    most: stock.most - (begun[index] ?? 0),
    least: Math.max(0, stock.least - (begun[index] ?? 0)),
  }));
  return { problem: { ...problem, demand, stocks }, uses, cost };
}

/** How often a pattern can be cut before it makes more of a piece than is wanted; 0 for one that makes none. */
function timesWanted(cuts: Int32Array, demand: Int32Array): number {
  let times = Infinity;
  for (const [piece, count] of cuts.entries()) {
    if (count > 0) times = Math.min(times, Math.floor((demand[piece] ?? 0) / count));
  }
  return times === Infinity ? 0 : times;
}

export function isDone({ demand }: CutProblem): boolean {
  return demand.every((count) => count === 0);
}

/**
 * A way to cut all, made quickly: stock after stock, each filled with the widest that still goes in; of several stocks
 * the one that costs least for what it holds. What no stock takes stays in `problem.demand`.
 */
export function cutGreedily(problem: CutProblem): CutRest {
  let rest: CutRest = { problem, uses: [], cost: 0 };
  while (!isDone(rest.problem)) {
    const next = bestFirstFit(rest.problem);
    if (next === undefined) break;
    const step = afterCutting(rest.problem, [
      { column: next, times: timesWanted(next.cuts, rest.problem.demand) },
    ]);
    rest = {
      problem: step.problem,
      uses: [...rest.uses, ...step.uses],
      cost: rest.cost + step.cost,
    };
  }
  return rest;
}

function bestFirstFit({ widths, demand, stocks }: CutProblem): CutColumn | undefined {
  let best: { readonly column: CutColumn; readonly each: number } | undefined;
  for (const [stock, { capacity, cost, most }] of stocks.entries()) {
    if (most <= 0) continue;
    const cuts = new Int32Array(widths.length);
    let left = capacity;
    for (const [piece, width] of widths.entries()) {
      const count = Math.min(demand[piece] ?? 0, Math.floor(left / width));
      cuts[piece] = count;
      left -= count * width;
    }
    if (left === capacity) continue;
    const each = cost / (capacity - left);
    if (best === undefined || each < best.each) best = { column: { stock, cuts }, each };
  }
  return best?.column;
}
