import { commonDivisor } from "./common-divisor.ts";
import { wholePieces } from "./cut-problem.ts";
import { leastSpools, type SpoolKind } from "./least-spools.ts";
import type { CutUse, CuttingInput, CuttingPattern } from "./cutting-types.ts";

/** Spools that lie in the store, so many of each, and lengths that can be bought as often as wanted; whole millimetres. */
export interface StoreCuttingInput {
  readonly onHand: readonly { readonly lengthMm: number; readonly count: number }[];
  readonly soldMm: readonly number[];
  readonly pieces: CuttingInput["pieces"];
  readonly kerfMm: number;
}

export interface StoreCutting {
  readonly boughtMm: number;
  readonly spools: number;
  readonly usedMm: number;
  /** Proven least to buy [mm], and of spools begun with that. */
  readonly leastBoughtMm: number;
  readonly leastSpools: number;
  /** True where no other way is better in this order. */
  readonly proven: boolean;
  readonly patterns: readonly StorePattern[];
}

export interface StorePattern extends CuttingPattern {
  readonly isBought: boolean;
}

/** One kind of spool: its length, how many there are, and whether it must be bought. */
interface Kind {
  readonly lengthMm: number;
  readonly most: number;
  readonly isBought: boolean;
}

/**
 * Pieces from what lies in the store first: the least length bought; then the fewest spools begun; then the least length begun.
 *
 * The relaxation of bought · K + 1 a spool, K above any number of spools, tells where to begin. From there all numbers of spools that
 * are long enough between them are tried in that order, each by `cutWithin`, until one serves.
 *
 * Shapes   spools on hand, lengths sold, pieces → patterns
 * Units    whole millimetres
 * Holds    whole lengths > 0, kerf ≥ 0; nothing where the spools do not make every piece
 * Error    none where `proven`; else the bounds tell how far each may be from the least
 * Source   pattern-cutting (handbook/kit.md)
 */
export function storeCutting(input: StoreCuttingInput): StoreCutting | undefined {
  const kinds = kindsOf(input);
  const pieces = wholePieces(input.pieces, input.kerfMm);
  const longest = Math.max(0, ...kinds.map(({ lengthMm }) => lengthMm));
  if (pieces.piecesMm.length === 0) return NOTHING;
  if (pieces.piecesMm.some((lengthMm) => lengthMm > longest)) return undefined;
  const step = Math.max(1, input.soldMm.reduce(commonDivisor, 0));
  const spools = kinds.map(({ lengthMm, most, isBought }): SpoolKind => {
    const bought = isBought ? lengthMm / step : 0;
    return { capacity: pieces.capacityOf(lengthMm), length: lengthMm, bought, most };
  });
  const found = leastSpools(pieces, spools);
  if (found === undefined) return undefined;
  const { uses, least, isProven } = found;
  return {
    boughtMm: step * total(uses, spools, "bought"),
    spools: uses.reduce((sum, { times }) => sum + times, 0),
    usedMm: total(uses, spools, "length"),
    leastBoughtMm: step * least.bought,
    leastSpools: least.spools,
    proven: isProven,
    patterns: patternsOf(uses, kinds, pieces.piecesMm),
  };
}

const NOTHING: StoreCutting = {
  boughtMm: 0,
  spools: 0,
  usedMm: 0,
  leastBoughtMm: 0,
  leastSpools: 0,
  proven: true,
  patterns: [],
};

/** Spools of one length are one kind, the longest first; those of the store before those to buy. */
function kindsOf({ onHand, soldMm }: StoreCuttingInput): Kind[] {
  const counts = new Map<number, number>();
  for (const { lengthMm, count: many } of onHand) counts.set(lengthMm, (counts.get(lengthMm) ?? 0) + many);
  const held = [...counts].map(([lengthMm, most]): Kind => ({ lengthMm, most, isBought: false }));
  const sold = soldMm.map((lengthMm): Kind => ({ lengthMm, most: Infinity, isBought: true }));
  const byLength = (a: Kind, b: Kind) => b.lengthMm - a.lengthMm;
  return [...held.sort(byLength), ...sold.sort(byLength)].filter(({ most }) => most > 0);
}

/** Ways to cut that are alike put together: the store's first, the longest first, the most used first. */
function patternsOf(
  uses: readonly CutUse[],
  kinds: readonly Kind[],
  piecesMm: readonly number[],
): StorePattern[] {
  const alike = new Map<string, CutUse>();
  for (const use of uses) {
    const key = `${use.stock} ${use.cuts.join(" ")}`;
    alike.set(key, { ...use, times: use.times + (alike.get(key)?.times ?? 0) });
  }
  return [...alike.values()]
    .sort((a, b) => a.stock - b.stock || b.times - a.times)
    .map(({ stock, times, cuts }) => ({
      stockMm: kinds[stock]?.lengthMm ?? 0,
      isBought: kinds[stock]?.isBought ?? true,
      times,
      cuts: piecesMm.flatMap((lengthMm, piece) => {
        const many = cuts[piece] ?? 0;
        return many > 0 ? [{ lengthMm, count: many }] : [];
      }),
    }));
}

function total(uses: readonly CutUse[], spools: readonly SpoolKind[], of: "bought" | "length"): number {
  return uses.reduce((sum, { stock, times }) => sum + times * (spools[stock]?.[of] ?? 0), 0);
}
