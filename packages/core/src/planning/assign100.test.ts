import { checks } from "@nightspan/checks";
import rows from "./assign100.checks.json" with { type: "json" };
import { leastCostAssignment } from "./least-cost-assignment.ts";

checks(rows, ({ n, costs }) => {
  const table = costs.map((line) => line.split(" ").map(Number));
  const cost = (row: number, column: number): number => table[row]?.[column] ?? Infinity;
  const found = leastCostAssignment({ rows: n, columns: n, cost });
  return { total: found?.reduce((sum, column, row) => sum + cost(row, column), 0) ?? NaN };
});
