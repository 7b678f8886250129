import { succeed, type Outcome } from "@nightspan/core";
import { readCsvTable } from "./csv-table.ts";
import { gathered, TREE_COLUMNS } from "./tree-columns.ts";
import { judgeRows, type TreeList } from "./tree-list.ts";

/**
 * Trees from a CSV text with a line of headings: `id`, `x_m`, `y_m` and `dbh_cm` or `girth_cm`. Faulty rows are told
 * by line; a heading that lacks what is needed is refused.
 */
export function readTreesCsv(text: string): Outcome<TreeList> {
  const needs = [["id"], ["x_m"], ["y_m"], ["dbh_cm", "girth_cm"]] as const;
  const table = readCsvTable(text, TREE_COLUMNS, needs, "tree");
  if (!table.ok) return table;
  const { rows, leftOut } = table.value;
  return succeed({ ...judgeRows(rows.map((row) => ({ ...row, cells: gathered(row.cells) }))), leftOut });
}
