import type { Basis } from "../outcome/basis.ts";
import { refuseAll, succeed, type Outcome, type Refusal } from "../outcome/outcome.ts";
import { leastCostAssignment } from "./least-cost-assignment.ts";

export interface AssignmentModelInput {
  /** rows × columns; null where the two must not meet. Every row has as many entries. */
  readonly cost: readonly (readonly (number | null)[])[];
}

export interface AssignmentModelValue {
  readonly total: number;
  /** By row. */
  readonly pairs: readonly (readonly [row: number, column: number])[];
  readonly unmatched: { readonly rows: readonly number[]; readonly columns: readonly number[] };
  readonly basis: Basis;
}

/**
 * Rows and columns put into pairs: as many pairs as are allowed, then for the least total.
 *
 *   max number of pairs, then min Σ cost
 *
 * Each row (each column, where there are fewer) may also stay alone, at a price above any difference that costs can make.
 *
 * Shapes   rows × columns costs → pairs, and who stays alone
 * Holds    finite costs of either sign, rows of one length; any may be empty
 * Error    exact for whole costs; for others rounding below 1e-9 of the sum of their sizes
 * Source   least-cost-assignment (handbook/kit.md)
 */
export function assignment({ cost }: AssignmentModelInput): Outcome<AssignmentModelValue> {
  const faults = refuseAll(costFaults(cost));
  if (faults !== undefined) return faults;
  const rows = cost.length;
  const columns = cost[0]?.length ?? 0;
  const flip = rows > columns;
  const at = (row: number, column: number) => (flip ? cost[column]?.[row] : cost[row]?.[column]) ?? Infinity;
  const matched = mostPairs(Math.min(rows, columns), Math.max(rows, columns), at);
  const pairs = matched.map(([a, b]): [number, number] => (flip ? [b, a] : [a, b]));
  pairs.sort(([a], [b]) => a - b);
  const total = pairs.reduce((sum, [row, column]) => sum + (cost[row]?.[column] ?? 0), 0);
  const taken = (side: 0 | 1) => new Set(pairs.map((pair) => pair[side]));
  return succeed({
    total,
    pairs,
    unmatched: { rows: without(rows, taken(0)), columns: without(columns, taken(1)) },
    basis: BASIS,
  });
}

function mostPairs(
  rows: number,
  columns: number,
  at: (row: number, column: number) => number,
): (readonly [number, number])[] {
  let largest = 0;
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const size = Math.abs(at(row, column));
      if (size < Infinity) largest = Math.max(largest, size);
    }
  }
  const alone = 2 * rows * largest + 1;
  const cost = (row: number, column: number) => {
    if (column < columns) return at(row, column);
    return column - columns === row ? alone : Infinity;
  };
  const columnOf = leastCostAssignment({ rows, columns: columns + rows, cost });
  if (columnOf === undefined) throw new Error("everybody may stay alone, and yet there is no assignment");
  return Array.from(columnOf, (column, row) => [row, column] as const).filter(
    ([, column]) => column < columns,
  );
}

function without(count: number, taken: ReadonlySet<number>): number[] {
  return Array.from({ length: count }, (_, index) => index).filter((index) => !taken.has(index));
}

function costFaults(cost: AssignmentModelInput["cost"]): Refusal[] {
  const columns = cost[0]?.length ?? 0;
  return cost.flatMap((row, at): Refusal[] => {
    const name = `cost.${at}`;
    if (row.length !== columns)
      return [{ field: name, got: row.length, need: `${columns} entries, as in the first row` }];
    return row.flatMap((value, column) =>
      value === null || Number.isFinite(value)
        ? []
        : [
            {
              field: `${name}.${column}`,
              got: value,
              need: "a finite number, or null where the two must not meet",
            },
          ],
    );
  });
}

const BASIS: Basis = {
  rule: "least-cost-assignment",
  source: "least-cost-assignment",
  assumes: ["one column a row and one row a column", "one more pair is worth any cost"],
};
