import { checks } from "@nightspan/checks";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import rows from "./cutting.checks.json" with { type: "json" };
import { cutting } from "./cutting.ts";
import type { Cutting, CuttingInput } from "./cutting-types.ts";

function cut(input: CuttingInput): Cutting {
  const found = cutting(input);
  if (!found.ok) throw new Error(JSON.stringify(found.refusals));
  return found.value;
}

function lines(text: string): { lengthMm: number; count: number }[] {
  return text.split(/\s+/).map((line) => {
    const [lengthMm = NaN, count = NaN] = line.split("x").map(Number);
    return { lengthMm, count };
  });
}

checks(rows, ({ stockMm, pieces }) => {
  const input = { stock: [{ lengthMm: stockMm }], pieces: lines(pieces), kerfMm: 0 };
  const found = cut(input);
  return { stocks: found.objective, bound: found.bound, faults: faultsOf(found, input).length };
});

/** All that a list of patterns gets wrong, one sentence each. */
function faultsOf({ patterns, stocksUsed }: Cutting, { stock, pieces, kerfMm }: CuttingInput): string[] {
  const faults: string[] = [];
  const total = (list: readonly { lengthMm: number; count: number }[], of: number) =>
    list.reduce((sum, { lengthMm, count }) => sum + (lengthMm === of ? count : 0), 0);
  for (const { stockMm, cuts } of patterns) {
    const count = cuts.reduce((sum, line) => sum + line.count, 0);
    const length = cuts.reduce((sum, line) => sum + line.count * line.lengthMm, 0);
    if (length + (count - 1) * kerfMm > stockMm) faults.push(`${stockMm} mm is not enough for ${length} mm`);
  }
  for (const { lengthMm } of pieces) {
    const made = patterns.reduce((sum, { times, cuts }) => sum + times * total(cuts, lengthMm), 0);
    if (made !== total(pieces, lengthMm)) faults.push(`${made} of ${lengthMm} mm`);
  }
  for (const { lengthMm } of stock) {
    const lot = stock.filter((line) => line.lengthMm === lengthMm);
    const there = lot.reduce((sum, { count }) => sum + (count ?? Infinity), 0);
    const begun = patterns.reduce((sum, { stockMm, times }) => sum + (stockMm === lengthMm ? times : 0), 0);
    if (begun > there) faults.push(`${begun} of ${there} stocks`);
  }
  const used = patterns.reduce((sum, { times }) => sum + times, 0);
  return used === stocksUsed ? faults : [...faults, `${used} stocks told as ${stocksUsed}`];
}

/** The least cost over every way of giving the pieces to stocks, one after the other; Infinity where none is. */
function leastByTrying({ stock, pieces, kerfMm }: CuttingInput): number {
  const all = pieces.flatMap(({ lengthMm, count }) => Array.from({ length: count }, () => lengthMm));
  const sizes = new Map<number, number>();
  for (const { lengthMm, count } of stock) {
    if (count !== 0) sizes.set(lengthMm, (sizes.get(lengthMm) ?? 0) + (count ?? Infinity));
  }
  let best = Infinity;
  const begun: { size: number; left: number }[] = [];
  const give = (index: number, cost: number): void => {
    const piece = all[index];
    if (cost >= best) return;
    if (piece === undefined) {
      best = cost;
      return;
    }
    for (const bin of begun) {
      if (bin.left < piece + kerfMm) continue;
      bin.left -= piece + kerfMm;
      give(index + 1, cost);
      bin.left += piece + kerfMm;
    }
    for (const [size, there] of sizes) {
      if (size < piece || begun.filter((bin) => bin.size === size).length >= there) continue;
      begun.push({ size, left: size - piece });
      give(index + 1, cost + (sizes.size === 1 ? 1 : size));
      begun.pop();
    }
  };
  give(0, 0);
  return best;
}

describe("cutting", () => {
  const piece = fc.record({
    lengthMm: fc.integer({ min: 1, max: 14 }),
    count: fc.integer({ min: 0, max: 3 }),
  });
  const spool = fc.record(
    { lengthMm: fc.integer({ min: 8, max: 24 }), count: fc.integer({ min: 0, max: 3 }) },
    { requiredKeys: ["lengthMm"] },
  );
  const input = fc.record({
    stock: fc.array(spool, { minLength: 1, maxLength: 3 }),
    pieces: fc.array(piece, { minLength: 1, maxLength: 4 }),
    kerfMm: fc.integer({ min: 0, max: 2 }),
  });

  it("finds and proves the least of all ways, or finds that there is none", () => {
    fc.assert(
      fc.property(input, (asked) => {
        const found = cutting(asked);
        const least = leastByTrying(asked);
        if (!found.ok) return least === Infinity;
        expect(faultsOf(found.value, asked)).toEqual([]);
        expect(found.value).toMatchObject({ objective: least, bound: least, proven: true });
        return true;
      }),
      { seed: 1, numRuns: 400 },
    );
  });

  it("names the pieces that the stock does not make", () => {
    const short = cutting({
      stock: [{ lengthMm: 1000, count: 2 }],
      pieces: [
        { lengthMm: 300, count: 3 },
        { lengthMm: 600, count: 3 },
      ],
      kerfMm: 0,
    });
    expect(short).toEqual({
      ok: false,
      refusals: [
        { field: "pieces.1", got: "600 mm, 1 of them not cut", need: "more stock" },
        { field: "pieces.0", got: "300 mm, 1 of them not cut", need: "more stock" },
      ],
    });
    const long = cutting({ stock: [{ lengthMm: 1000 }], pieces: [{ lengthMm: 1001, count: 1 }], kerfMm: 0 });
    expect(long.ok ? [] : long.refusals.map(({ field }) => field)).toEqual(["pieces.0"]);
  });

  it("pays one kerf fewer than there are pieces", () => {
    const three = (lengthMm: number) => ({
      stock: [{ lengthMm }],
      pieces: [{ lengthMm: 100, count: 3 }],
      kerfMm: 5,
    });
    expect(cut(three(310)).objective).toBe(1);
    expect(cut(three(309)).objective).toBe(2);
  });

  it("refuses every fault of the lines at once", () => {
    const found = cutting({
      stock: [{ lengthMm: 0 }, { lengthMm: 1000, count: -1 }],
      pieces: [{ lengthMm: 1.5, count: 1 }],
      kerfMm: NaN,
    });
    expect(found.ok ? [] : found.refusals.map(({ field }) => field)).toEqual([
      "stock.0.lengthMm",
      "stock.1.count",
      "pieces.0.lengthMm",
      "kerfMm",
    ]);
  });

  it("takes a million alike as quickly as one, and refuses what is finer than any table", () => {
    const million = { stock: [{ lengthMm: 1000 }], pieces: [{ lengthMm: 300, count: 1_000_000 }], kerfMm: 0 };
    expect(cut(million)).toMatchObject({ objective: 333_334, bound: 333_334, proven: true });
    const fine = {
      stock: [{ lengthMm: 90_000_001 }],
      pieces: [
        { lengthMm: 7, count: 1 },
        { lengthMm: 5, count: 1 },
      ],
    };
    const found = cutting({ ...fine, kerfMm: 0 });
    expect(found.ok ? [] : found.refusals.map(({ field }) => field)).toEqual(["pieces"]);
  });

  it("cuts nothing from nothing", () => {
    expect(cut({ stock: [], pieces: [], kerfMm: 0 })).toMatchObject({
      stocksUsed: 0,
      objective: 0,
      proven: true,
    });
  });
});
