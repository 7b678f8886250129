import type { Cord, KitItem } from "../../plan/kit.ts";
import type { PlannedBerth } from "../../plan/plan.ts";
import type { CutList, CutMaterial, CutPattern, CutPiece, MaterialCuts } from "../../plan/store-types.ts";
import { piecesInUse } from "../store/pieces-in-use.ts";
import { cutting } from "./cutting.ts";
import type { Cutting, CuttingInput } from "./cutting-types.ts";
import { wantedPieces } from "./wanted-pieces.ts";

/**
 * The cord cut list of a plan: what to cut for the berths, and from which spools, the least length begun.
 *
 * What is on hand is used where it makes every piece; else spools to buy are added in usual lengths. Webbing is cut from webbing
 * at least as wide.
 *
 * Shapes   berths + lines of the store → cuts by material
 * Holds    spools in use whose length and material are known
 * Error    as `cutting`: proven, or with its bound
 * Source   pattern-cutting (handbook/kit.md)
 */
export function planCuts(berths: readonly PlannedBerth[], kit: readonly KitItem[]): CutList {
  const lots = new Map<string, CutPiece[]>();
  for (const piece of wantedPieces(berths, kit)) {
    const key = `${MATERIALS.indexOf(piece.material)} ${piece.widthM ?? ""}`;
    lots.set(key, [...(lots.get(key) ?? []), piece]);
  }
  const sorted = [...lots].sort(([a], [b]) => (a < b ? -1 : 1));
  return { materials: sorted.flatMap(([, pieces]) => materialCuts(pieces, kit) ?? []) };
}

const MATERIALS: readonly CutMaterial[] = ["webbing", "ridge-cord", "guy-cord", "thin-cord"];

/** Spools as they are sold [m]. Source: common-practice. */
const SOLD_M = [10, 25, 50] as const;

function materialCuts(pieces: readonly CutPiece[], kit: readonly KitItem[]): MaterialCuts | undefined {
  const [first] = pieces;
  if (first === undefined) return undefined;
  const { material, widthM } = first;
  const spools = spoolsFor(kit, material, widthM);
  const onHand = spools.map(({ lengthM, item }) => ({ lengthMm: mm(lengthM), count: piecesInUse(item) }));
  const lines = pieces.map(({ lengthM, count }) => ({ lengthMm: mm(lengthM), count }));
  const sold = SOLD_M.map((lengthM) => ({ lengthMm: mm(lengthM) }));
  const found = cutFrom(onHand, lines) ?? cutFrom([...onHand, ...sold], lines);
  if (found === undefined) return undefined;
  const { patterns, toBuy } = spoolsTaken(found, spools);
  const usedM = patterns.reduce((sum, { stockM, times }) => sum + stockM * times, 0);
  return {
    material,
    ...(widthM === undefined ? {} : { widthM }),
    pieces,
    patterns,
    toBuy,
    usedM,
    boundM: found.proven ? usedM : (usedM * found.bound) / found.objective,
    piecesM: pieces.reduce((sum, { lengthM, count }) => sum + lengthM * count, 0),
    proven: found.proven,
  };
}

function cutFrom(stock: CuttingInput["stock"], pieces: CuttingInput["pieces"]): Cutting | undefined {
  const found = cutting({ stock, pieces, kerfMm: 0 });
  return found.ok ? found.value : undefined;
}

interface Spool {
  readonly item: Cord;
  readonly lengthM: number;
}

function spoolsFor(kit: readonly KitItem[], material: CutMaterial, widthM: number | undefined): Spool[] {
  return kit.flatMap((item) => {
    if (item.kind !== "cord" || item.lengthM === undefined || item.material !== material) return [];
    const isWide = widthM === undefined || (item.widthM ?? 0) >= widthM - 1e-9;
    return isWide ? [{ item, lengthM: item.lengthM }] : [];
  });
}

/** Which line each pattern is cut from; what the store does not have is bought. */
function spoolsTaken({ patterns }: Cutting, spools: readonly Spool[]) {
  const left = new Map(spools.map(({ item }) => [item.id, piecesInUse(item)]));
  const told: CutPattern[] = [];
  const toBuy = new Map<number, number>();
  for (const { stockMm, times, cuts } of patterns) {
    const usedMm = cuts.reduce((sum, { lengthMm, count }) => sum + lengthMm * count, 0);
    const one = {
      stockM: stockMm / 1000,
      cuts: cuts.map(({ lengthMm, count }) => ({ lengthM: lengthMm / 1000, count })),
      restM: (stockMm - usedMm) / 1000,
    };
    let wanted = times;
    for (const { item } of spools.filter(({ lengthM }) => mm(lengthM) === stockMm)) {
      const taken = Math.min(wanted, left.get(item.id) ?? 0);
      if (taken === 0) continue;
      left.set(item.id, (left.get(item.id) ?? 0) - taken);
      told.push({ item: item.id, ...one, times: taken });
      wanted -= taken;
    }
    if (wanted === 0) continue;
    told.push({ ...one, times: wanted });
    toBuy.set(stockMm, (toBuy.get(stockMm) ?? 0) + wanted);
  }
  const bought = [...toBuy].map(([lengthMm, count]) => ({ lengthM: lengthMm / 1000, count }));
  return { patterns: told, toBuy: bought };
}

function mm(lengthM: number): number {
  return Math.round(lengthM * 1000);
}
