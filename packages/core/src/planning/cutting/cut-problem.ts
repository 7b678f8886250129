import { commonDivisor } from "./common-divisor.ts";
import type { CutProblem, CutStock, CuttingInput } from "./cutting-types.ts";

export interface WholeProblem extends CutProblem {
  /** Lengths of pieces and of stocks, in the problem's order [mm]. */
  readonly piecesMm: readonly number[];
  readonly stocksMm: readonly number[];
}

/**
 * Pieces and stocks put into whole units: n pieces cost n − 1 kerfs, so each piece and each stock is one kerf longer. One
 * stock length costs 1 each, of several each costs its length.
 */
export function wholeProblem({ stock, pieces, kerfMm }: CuttingInput): WholeProblem {
  const demands = sums(pieces.map(({ lengthMm, count }) => [lengthMm, count]));
  const counts = sums(stock.map(({ lengthMm, count }) => [lengthMm, count ?? Infinity]));
  const piecesMm = [...demands].filter(([, count]) => count > 0).map(([length]) => length);
  const stocksMm = [...counts].filter(([, count]) => count > 0).map(([length]) => length);
  piecesMm.sort((a, b) => b - a);
  stocksMm.sort((a, b) => b - a);
  const unit = piecesMm.map((length) => length + kerfMm).reduce(commonDivisor, 0);
  const stocks = stocksMm.map((lengthMm): CutStock => {
    const capacity = Math.floor((lengthMm + kerfMm) / Math.max(1, unit));
    const cost = stocksMm.length === 1 ? 1 : lengthMm;
    return { capacity, cost, least: 0, most: counts.get(lengthMm) ?? 0 };
  });
  return {
    widths: Int32Array.from(piecesMm, (length) => (length + kerfMm) / unit),
    demand: Int32Array.from(piecesMm, (length) => demands.get(length) ?? 0),
    stocks,
    piecesMm,
    stocksMm,
  };
}

function sums(lines: readonly (readonly [number, number])[]): Map<number, number> {
  const total = new Map<number, number>();
  for (const [length, count] of lines) total.set(length, (total.get(length) ?? 0) + count);
  return total;
}
