import type { Cord, KitItem } from "../../plan/kit.ts";
import type { PlannedBerth } from "../../plan/plan.ts";
import type { CutList, CutMaterial, CutPattern, CutPiece, MaterialCuts } from "../../plan/store-types.ts";
import { piecesInUse } from "../store/pieces-in-use.ts";
import { storeCutting, type StoreCutting } from "./store-cutting.ts";
import { wantedPieces } from "./wanted-pieces.ts";

/**
 * The cord cut list of a plan: what to cut for the berths, and from which spools.
 *
 * What lies in the store is cut first: the least bought, then the fewest spools begun, then the least length begun. Webbing is cut
 * from webbing at least as wide, the widest wanted first, and no spool twice.
 *
 * Shapes   berths + lines of the store → cuts by material
 * Holds    spools in use whose length and material are known
 * Error    as `storeCutting`: proven, or with its bounds
 * Source   pattern-cutting (handbook/kit.md)
 */
export function planCuts(berths: readonly PlannedBerth[], kit: readonly KitItem[]): CutList {
  const lots = new Map<string, CutPiece[]>();
  for (const piece of wantedPieces(berths, kit)) {
    const key = `${piece.material} ${piece.widthM ?? ""}`;
    lots.set(key, [...(lots.get(key) ?? []), piece]);
  }
  const sorted = [...lots.values()].sort((a, b) => orderOf(a) - orderOf(b));
  const left = new Map(kit.map((item) => [item.id, piecesInUse(item)]));
  return { materials: sorted.flatMap((pieces) => materialCuts(pieces, kit, left) ?? []) };
}

/** By material; of webbing the widest first, for it is cut from the fewest spools. */
function orderOf([first]: readonly CutPiece[]): number {
  return first === undefined ? 0 : MATERIALS.indexOf(first.material) - Math.min(0.9, first.widthM ?? 0);
}

const MATERIALS: readonly CutMaterial[] = ["webbing", "ridge-cord", "guy-cord", "thin-cord"];

/** Spools as they are sold [m]. Source: common-practice. */
const SOLD_M = [10, 25, 50] as const;

/** Cuts for one lot; what is begun is taken off `left`. */
function materialCuts(
  pieces: readonly CutPiece[],
  kit: readonly KitItem[],
  left: Map<string, number>,
): MaterialCuts | undefined {
  const [first] = pieces;
  if (first === undefined) return undefined;
  const { material, widthM } = first;
  const spools = spoolsFor(kit, material, widthM);
  const found = storeCutting({
    onHand: spools.map(({ lengthM, item }) => ({ lengthMm: mm(lengthM), count: left.get(item.id) ?? 0 })),
    soldMm: SOLD_M.map(mm),
    pieces: pieces.map(({ lengthM, count }) => ({ lengthMm: mm(lengthM), count })),
    kerfMm: 0,
  });
  if (found === undefined) return undefined;
  const { patterns, toBuy } = spoolsTaken(found, spools, left);
  return {
    material,
    ...(widthM === undefined ? {} : { widthM }),
    pieces,
    patterns,
    toBuy,
    usedM: found.usedMm / 1000,
    boughtM: found.boughtMm / 1000,
    leastBoughtM: found.leastBoughtMm / 1000,
    leastSpools: found.leastSpools,
    piecesM: pieces.reduce((sum, { lengthM, count }) => sum + lengthM * count, 0),
    proven: found.proven,
  };
}

interface Spool {
  readonly item: Cord;
  readonly lengthM: number;
}

/** Of webbing the narrowest that will do first. */
function spoolsFor(kit: readonly KitItem[], material: CutMaterial, widthM: number | undefined): Spool[] {
  const spools = kit.flatMap((item) => {
    if (item.kind !== "cord" || item.lengthM === undefined || item.material !== material) return [];
    const isWide = widthM === undefined || (item.widthM ?? 0) >= widthM - 1e-9;
    return isWide ? [{ item, lengthM: item.lengthM }] : [];
  });
  return spools.sort((a, b) => (a.item.widthM ?? 0) - (b.item.widthM ?? 0));
}

/** Which line each way to cut takes its spools from; what the store does not have is bought. */
function spoolsTaken({ patterns }: StoreCutting, spools: readonly Spool[], left: Map<string, number>) {
  const told: CutPattern[] = [];
  const toBuy = new Map<number, number>();
  for (const { stockMm, isBought, times, cuts } of patterns) {
    const usedMm = cuts.reduce((sum, { lengthMm, count }) => sum + lengthMm * count, 0);
    const one = {
      stockM: stockMm / 1000,
      cuts: cuts.map(({ lengthMm, count }) => ({ lengthM: lengthMm / 1000, count })),
      restM: (stockMm - usedMm) / 1000,
    };
    if (isBought) {
      told.push({ ...one, times });
      toBuy.set(stockMm, (toBuy.get(stockMm) ?? 0) + times);
      continue;
    }
    let wanted = times;
    for (const { item } of spools.filter(({ lengthM }) => mm(lengthM) === stockMm)) {
      const taken = Math.min(wanted, left.get(item.id) ?? 0);
      if (taken === 0) continue;
      left.set(item.id, (left.get(item.id) ?? 0) - taken);
      told.push({ item: item.id, ...one, times: taken });
      wanted -= taken;
    }
  }
  const bought = [...toBuy].map(([lengthMm, count]) => ({ lengthM: lengthMm / 1000, count }));
  return { patterns: told, toBuy: bought };
}

function mm(lengthM: number): number {
  return Math.round(lengthM * 1000);
}
