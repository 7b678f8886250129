import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { storeCutting, type StoreCuttingInput } from "./store-cutting.ts";

type Order = readonly [bought: number, spools: number, used: number];

function isLess(a: Order, b: Order): boolean {
  const at = a.findIndex((value, index) => value !== b[index]);
  return at !== -1 && (a[at] ?? 0) < (b[at] ?? 0);
}

/** The least in order over every way of giving the pieces to spools, one after the other. */
function leastByTrying({ onHand, soldMm, pieces, kerfMm }: StoreCuttingInput): Order | undefined {
  const all = pieces.flatMap(({ lengthMm, count }) => Array.from({ length: count }, () => lengthMm));
  const begun: { size: number; line: number; left: number }[] = [];
  let best: Order | undefined;
  const orderNow = (): Order => [
    begun.reduce((sum, { size, line }) => sum + (line === -1 ? size : 0), 0),
    begun.length,
    begun.reduce((sum, { size }) => sum + size, 0),
  ];
  const begin = (index: number, size: number, line: number, piece: number): void => {
    begun.push({ size, line, left: size - piece });
    give(index + 1);
    begun.pop();
  };
  const give = (index: number): void => {
    const piece = all[index];
    if (best !== undefined && !isLess(orderNow(), best)) return;
    if (piece === undefined) {
      best = orderNow();
      return;
    }
    for (const spool of begun) {
      if (spool.left < piece + kerfMm) continue;
      spool.left -= piece + kerfMm;
      give(index + 1);
      spool.left += piece + kerfMm;
    }
    for (const [line, { lengthMm, count }] of onHand.entries()) {
      const there = count - begun.filter((spool) => spool.line === line).length;
      if (lengthMm >= piece && there > 0) begin(index, lengthMm, line, piece);
    }
    for (const lengthMm of soldMm) if (lengthMm >= piece) begin(index, lengthMm, -1, piece);
  };
  give(0);
  return best;
}

/** What a list of patterns makes of each length, and begins of each kind; spools overfilled. */
function tally({ patterns }: NonNullable<ReturnType<typeof storeCutting>>, kerfMm: number) {
  const made = new Map<number, number>();
  const begun = new Map<string, number>();
  let overfilled = 0;
  for (const { stockMm, isBought, times, cuts } of patterns) {
    const key = `${isBought ? "bought" : "held"} ${stockMm}`;
    begun.set(key, (begun.get(key) ?? 0) + times);
    const count = cuts.reduce((sum, line) => sum + line.count, 0);
    const length = cuts.reduce((sum, line) => sum + line.count * line.lengthMm, 0);
    if (length + (count - 1) * kerfMm > stockMm) overfilled++;
    for (const line of cuts) made.set(line.lengthMm, (made.get(line.lengthMm) ?? 0) + times * line.count);
  }
  return { made, begun, overfilled };
}

describe("storeCutting", () => {
  const line = (longest: number, most: number) =>
    fc.record({
      lengthMm: fc.integer({ min: 1, max: longest }),
      count: fc.integer({ min: 0, max: most }),
    });
  const input = fc.record({
    onHand: fc.array(line(24, 2), { maxLength: 3 }),
    soldMm: fc.uniqueArray(fc.constantFrom(10, 15, 25), { maxLength: 3 }),
    pieces: fc.array(line(14, 2), { minLength: 1, maxLength: 4 }),
    kerfMm: fc.integer({ min: 0, max: 2 }),
  });

  it("buys the least, then begins the fewest, then the least length, as every way tried shows", () => {
    fc.assert(
      fc.property(input, (asked) => {
        const found = storeCutting(asked);
        const least = leastByTrying(asked);
        if (found === undefined || least === undefined) return found === undefined && least === undefined;
        expect([found.boughtMm, found.spools, found.usedMm]).toEqual(least);
        expect(found).toMatchObject({ leastBoughtMm: least[0], leastSpools: least[1], proven: true });
        const { made, begun, overfilled } = tally(found, asked.kerfMm);
        expect(overfilled).toBe(0);
        for (const { lengthMm } of asked.pieces) {
          const wanted = asked.pieces.reduce(
            (sum, piece) => sum + (piece.lengthMm === lengthMm ? piece.count : 0),
            0,
          );
          expect(made.get(lengthMm) ?? 0).toBe(wanted);
        }
        for (const { lengthMm } of asked.onHand) {
          const there = asked.onHand.reduce(
            (sum, spool) => sum + (spool.lengthMm === lengthMm ? spool.count : 0),
            0,
          );
          expect(begun.get(`held ${lengthMm}`) ?? 0).toBeLessThanOrEqual(there);
        }
        return true;
      }),
      { seed: 1, numRuns: 300 },
    );
  });

  it("uses up what lies in the store before it buys the rest", () => {
    const found = storeCutting({
      onHand: [{ lengthMm: 30_000, count: 1 }],
      soldMm: [10_000, 25_000, 50_000],
      pieces: [{ lengthMm: 3_000, count: 12 }],
      kerfMm: 0,
    });
    expect(found).toMatchObject({ boughtMm: 10_000, spools: 2, usedMm: 40_000, proven: true });
  });

  it("cuts nothing from nothing, and nothing that is longer than every spool", () => {
    expect(storeCutting({ onHand: [], soldMm: [], pieces: [], kerfMm: 0 })).toMatchObject({
      boughtMm: 0,
      spools: 0,
      proven: true,
    });
    const long = { onHand: [], soldMm: [10], pieces: [{ lengthMm: 11, count: 1 }], kerfMm: 0 };
    expect(storeCutting(long)).toBeUndefined();
  });

  it("proves three hundred pieces of forty lengths from a store that is short of them", () => {
    const pieces = Array.from({ length: 40 }, (_, index) => ({
      lengthMm: 50 * (12 + ((index * 29) % 83)),
      count: 7 + (index % 2),
    }));
    const found = storeCutting({
      onHand: [
        { lengthMm: 50_000, count: 4 },
        { lengthMm: 30_000, count: 3 },
        { lengthMm: 12_500, count: 6 },
      ],
      soldMm: [10_000, 25_000, 50_000],
      pieces,
      kerfMm: 0,
    });
    const total = pieces.reduce((sum, { lengthMm, count }) => sum + lengthMm * count, 0);
    expect(found?.proven).toBe(true);
    expect(found?.boughtMm).toBeGreaterThanOrEqual(total - 365_000);
    expect(found?.boughtMm).toBe(found?.leastBoughtMm);
  });
});
