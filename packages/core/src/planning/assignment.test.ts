import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { assignment, type AssignmentModelValue } from "./assignment.ts";

type Table = readonly (readonly (number | null)[])[];

function assigned(cost: Table): AssignmentModelValue {
  const found = assignment({ cost });
  if (!found.ok) throw new Error(JSON.stringify(found.refusals));
  return found.value;
}

describe("assignment", () => {
  it("makes one more pair rather than a cheaper one", () => {
    expect(
      assigned([
        [1, 100],
        [0, null],
      ]),
    ).toMatchObject({
      total: 100,
      pairs: [
        [0, 1],
        [1, 0],
      ],
      unmatched: { rows: [], columns: [] },
    });
  });

  it("tells who stays alone in a table that is no square", () => {
    expect(assigned([[5], [3], [4]])).toMatchObject({
      total: 3,
      pairs: [[1, 0]],
      unmatched: { rows: [0, 2], columns: [] },
    });
    expect(assigned([[null, null, -2]])).toMatchObject({
      total: -2,
      unmatched: { rows: [], columns: [0, 1] },
    });
    expect(assigned([[null]])).toMatchObject({ total: 0, pairs: [], unmatched: { rows: [0], columns: [0] } });
    expect(assigned([])).toMatchObject({ total: 0, pairs: [] });
    expect(assigned([[], []])).toMatchObject({
      total: 0,
      pairs: [],
      unmatched: { rows: [0, 1], columns: [] },
    });
  });

  it("refuses a ragged table and what is no number", () => {
    const found = assignment({ cost: [[1, 2], [1], [NaN, null]] });
    expect(found.ok ? [] : found.refusals.map(({ field }) => field)).toEqual(["cost.1", "cost.2.0"]);
  });

  it("pairs as many as any way does, for no more", () => {
    const price = fc.oneof(
      { weight: 3, arbitrary: fc.integer({ min: -5, max: 9 }) },
      { weight: 2, arbitrary: fc.constant(null) },
    );
    const table = fc
      .tuple(fc.integer({ min: 1, max: 5 }), fc.integer({ min: 1, max: 5 }))
      .chain(([rows, columns]) =>
        fc.array(fc.array(price, { minLength: columns, maxLength: columns }), {
          minLength: rows,
          maxLength: rows,
        }),
      );
    fc.assert(
      fc.property(table, (cost) => {
        const { pairs, total } = assigned(cost);
        expect([pairs.length, total]).toEqual(bestOf(cost, new Set()));
        expect(new Set(pairs.map(([, column]) => column)).size).toBe(pairs.length);
      }),
      { seed: 1, numRuns: 300 },
    );
  });
});

/** Most pairs and their least total, over every way. */
function bestOf([row, ...rest]: Table, taken: ReadonlySet<number>): [number, number] {
  if (row === undefined) return [0, 0];
  let best = bestOf(rest, taken);
  for (const [column, cost] of row.entries()) {
    if (cost === null || taken.has(column)) continue;
    const [pairs, total] = bestOf(rest, new Set([...taken, column]));
    if (pairs + 1 > best[0] || (pairs + 1 === best[0] && total + cost < best[1]))
      best = [pairs + 1, total + cost];
  }
  return best;
}
