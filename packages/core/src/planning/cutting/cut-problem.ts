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
  const whole = wholePieces(pieces, kerfMm);
  const counts = sums(stock.map(({ lengthMm, count }) => [lengthMm, count ?? Infinity]));
  const stocksMm = [...counts].filter(([, count]) => count > 0).map(([length]) => length);
  stocksMm.sort((a, b) => b - a);
  const stocks = stocksMm.map((lengthMm): CutStock => {
    const cost = stocksMm.length === 1 ? 1 : lengthMm;
    return { capacity: whole.capacityOf(lengthMm), cost, least: 0, most: counts.get(lengthMm) ?? 0 };
  });
  const { widths, demand, piecesMm } = whole;
  return { widths, demand, stocks, piecesMm, stocksMm };
}

export interface WholePieces extends Omit<CutProblem, "stocks"> {
  readonly piecesMm: readonly number[];
  /** What a stock of so many millimetres holds, in the pieces' unit. */
  readonly capacityOf: (stockMm: number) => number;
}

/** The pieces alone, lines alike put together, the widest first. */
export function wholePieces(pieces: CuttingInput["pieces"], kerfMm: number): WholePieces {
  const demands = sums(pieces.map(({ lengthMm, count }) => [lengthMm, count]));
  const piecesMm = [...demands].filter(([, count]) => count > 0).map(([length]) => length);
  piecesMm.sort((a, b) => b - a);
  const unit = piecesMm.map((length) => length + kerfMm).reduce(commonDivisor, 0);
  return {
    widths: Int32Array.from(piecesMm, (length) => (length + kerfMm) / unit),
    demand: Int32Array.from(piecesMm, (length) => demands.get(length) ?? 0),
    piecesMm,
    capacityOf: (stockMm) => Math.floor((stockMm + kerfMm) / Math.max(1, unit)),
  };
}

function sums(lines: readonly (readonly [number, number])[]): Map<number, number> {
  const total = new Map<number, number>();
  for (const [length, count] of lines) total.set(length, (total.get(length) ?? 0) + count);
  return total;
}
