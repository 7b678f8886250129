import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dealWarmth, type ComesFirst, type WarmthHalfTable } from "./deal-warmth.ts";

const PEOPLE = 4;

/** A half of three lines of one or two pieces, and nothing. */
const half = fc
  .tuple(
    fc.array(fc.integer({ min: 1, max: 2 }), { minLength: 3, maxLength: 3 }),
    fc.array(fc.integer({ min: -6, max: 6 }), { minLength: PEOPLE * 3, maxLength: PEOPLE * 3 }),
    fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 3, maxLength: 3 }),
  )
  .map(([room, margins, massG]): WarmthHalfTable => {
    const rows = Array.from({ length: PEOPLE }, (_, person) => [
      ...margins.slice(3 * person, 3 * person + 3).map((margin) => 100 * margin),
      -2000,
    ]);
    return {
      room: Int32Array.from([...room, PEOPLE]),
      margin: Float64Array.from(rows.flat()),
      massG: Int32Array.from([...massG, 0]),
    };
  });

const first = fc.array(fc.constantFrom<ComesFirst[]>(0, 1, 2), { minLength: PEOPLE, maxLength: PEOPLE });

interface Score {
  readonly enough: number;
  readonly children: number;
  readonly youths: number;
  readonly least: number;
  readonly massG: number;
}

function everyDealing({ room }: WarmthHalfTable): number[][] {
  const all = (people: number, left: readonly number[]): number[][] =>
    people === 0
      ? [[]]
      : left.flatMap((pieces, line) =>
          pieces === 0 ? [] : all(people - 1, left.with(line, pieces - 1)).map((rest) => [line, ...rest]),
        );
  return all(PEOPLE, [...room]);
}

function marginsOf({ room, margin }: WarmthHalfTable, lines: Iterable<number>): number[] {
  return [...lines].map((line, person) => margin[person * room.length + line] ?? NaN);
}

function scoreOf(
  under: WarmthHalfTable,
  over: WarmthHalfTable,
  a: readonly number[],
  b: readonly number[],
  ranks: readonly ComesFirst[],
): Score {
  const [low, high] = [marginsOf(under, a), marginsOf(over, b)];
  const both = low.map((margin, person) => Math.min(margin, high[person] ?? NaN));
  const mass = ({ massG }: WarmthHalfTable, lines: readonly number[]) =>
    lines.reduce((sum, line) => sum + (massG[line] ?? 0), 0);
  const warmOf = (rank: ComesFirst) =>
    both.filter((margin, person) => margin >= 0 && ranks[person] === rank).length;
  return {
    children: warmOf(2),
    youths: warmOf(1),
    enough: both.filter((margin) => margin >= 0).length,
    least: Math.min(...both),
    massG: mass(under, a) + mass(over, b),
  };
}

function bestScore(under: WarmthHalfTable, over: WarmthHalfTable, ranks: readonly ComesFirst[]): Score {
  let best: Score = { enough: -1, children: 0, youths: 0, least: -Infinity, massG: Infinity };
  const overs = everyDealing(over);
  for (const a of everyDealing(under)) {
    for (const b of overs) {
      const score = scoreOf(under, over, a, b, ranks);
      const order =
        score.enough - best.enough ||
        score.children - best.children ||
        score.youths - best.youths ||
        score.least - best.least ||
        best.massG - score.massG;
      if (order > 0) best = score;
    }
  }
  return best;
}

describe("dealWarmth", () => {
  it("leaves as few below the margin as any dealing, of those as few children and then youths, then has the largest least margin, then the least mass", () => {
    fc.assert(
      fc.property(half, half, first, (under, over, ranks) => {
        const found = dealWarmth(PEOPLE, under, over, ranks);
        const score = scoreOf(under, over, [...found.under], [...found.over], ranks);
        const best = bestScore(under, over, ranks);
        expect(score.enough).toBe(best.enough);
        expect(found.enough.reduce((sum, flag) => sum + flag, 0)).toBe(best.enough);
        expect([score.children, score.youths]).toEqual([best.children, best.youths]);
        if (found.isLeastProven) expect(score.least).toBe(best.least);
        if (found.proven) expect([found.isLeastProven, score.least]).toEqual([true, best.least]);
        if (best.enough === PEOPLE) {
          expect(found.proven).toBe(true);
          expect(score.massG).toBe(best.massG);
        }
      }),
      { seed: 1, numRuns: 100 },
    );
  });

  it("brings those who cannot have enough as near as can be", () => {
    const room = Int32Array.of(1, 1, 2);
    const under = {
      room,
      margin: Float64Array.of(100, -300, -2000, 100, -300, -2000),
      massG: Int32Array.of(900, 700, 0),
    };
    const over = { room: Int32Array.of(2), margin: Float64Array.of(0, 0), massG: Int32Array.of(1) };
    const { under: lines, enough, proven } = dealWarmth(2, under, over);
    expect([...lines].sort()).toEqual([0, 1]);
    expect(enough.reduce((sum, flag) => sum + flag, 0)).toBe(1);
    expect(proven).toBe(true);
  });
});
