import { checks } from "@nightspan/checks";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { leastCostAssignment } from "./least-cost-assignment.ts";
import rows from "./least-cost-assignment.checks.json" with { type: "json" };

type Table = readonly (readonly number[])[];

function assigned(table: Table, columns = table[0]?.length ?? 0): Int32Array | undefined {
  return leastCostAssignment({
    rows: table.length,
    columns,
    cost: (row, column) => table[row]?.[column] ?? Infinity,
  });
}

function total(table: Table, columns: Int32Array): number {
  return columns.reduce((sum, column, row) => sum + (table[row]?.[column] ?? Infinity), 0);
}

checks(rows, ({ cost }) => {
  const found = assigned(cost);
  return { total: found === undefined ? NaN : total(cost, found) };
});

describe("leastCostAssignment", () => {
  it("says when no full assignment is allowed", () => {
    expect(
      assigned([
        [1, Infinity],
        [1, Infinity],
      ]),
    ).toBeUndefined();
    expect(assigned([])).toEqual(new Int32Array(0));
  });

  it.each([
    [10, 220],
    [100, 171_700],
    [200, 1_353_400],
  ])("finds the optimum of the products table of %i, worked out by hand", (n, expected) => {
    // Row i, column j cost i · j; the sum is least where one rises as the other falls: n (n + 1)(n + 2) / 6.
    const table = Array.from({ length: n }, (_, i) =>
      Array.from({ length: n }, (_same, j) => (i + 1) * (j + 1)),
    );
    const found = assigned(table);
    expect(found === undefined ? NaN : total(table, found)).toBe(expected);
  });

  it("costs no more than any other assignment", () => {
    const price = fc.oneof(
      { weight: 4, arbitrary: fc.integer({ min: 0, max: 9 }) },
      { weight: 1, arbitrary: fc.constant(Infinity) },
    );
    const table = fc.array(fc.array(price, { minLength: 6, maxLength: 6 }), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(table, (costs) => {
        const found = assigned(costs);
        const least = cheapest(costs, new Set());
        if (found === undefined) return least === Infinity;
        return new Set(found).size === costs.length && total(costs, found) === least;
      }),
      { seed: 1, numRuns: 300 },
    );
  });
});

function cheapest([row, ...rest]: Table, taken: ReadonlySet<number>): number {
  if (row === undefined) return 0;
  return row.reduce(
    (least, cost, column) =>
      taken.has(column) || cost === Infinity
        ? least
        : Math.min(least, cost + cheapest(rest, new Set([...taken, column]))),
    Infinity,
  );
}
