import Papa from "papaparse";
import { refuse, succeed, type Outcome, type Refusal } from "@nightspan/core";
import { gathered, readCell, TREE_FIELDS, type TreeField } from "./cells.ts";
import { judgeRows, type RawRow, type TreeList } from "./tree-list.ts";

/**
 * Trees from a CSV text with a line of headings: `id`, `x_m`, `y_m` and `dbh_cm` or `girth_cm`; any order, any
 * case, comma, semicolon or tab between cells. Faulty rows are told by line; a heading that lacks what is needed
 * is refused.
 */
export function readTreesCsv(text: string): Outcome<TreeList> {
  const body = text.startsWith("\uFEFF") ? text.slice(1) : text;
  const lines = linesOf(body);
  const [head, ...rows] = lines;
  if (head === undefined) return refuse("line 1", undefined, `headings: ${NEEDED}`);
  const columns = head.cells.map(fieldOf);
  const lacking = headFaults(head, columns);
  if (lacking.length > 0) return { ok: false, refusals: lacking };
  if (rows.length === 0) return refuse(`line ${head.line + 1}`, undefined, "at least one tree");
  const leftOut = head.cells.filter((cell, index) => columns[index] === undefined && cell.trim() !== "");
  const judged = judgeRows(rows.map((row) => rawRow(row, columns)));
  return succeed({ ...judged, leftOut });
}

const NEEDED = "id, x_m, y_m and dbh_cm or girth_cm";

interface Line {
  readonly line: number;
  readonly cells: readonly string[];
}

/** Rows with the number of the line that each starts on; empty lines are left out. */
function linesOf(body: string): readonly Line[] {
  const { data } = Papa.parse<string[]>(body, { delimiter: delimiterOf(body), skipEmptyLines: false });
  let line = 1;
  return data.flatMap((cells) => {
    const start = line;
    line += 1 + cells.reduce((sum, cell) => sum + (cell.match(/\r\n|\r|\n/g)?.length ?? 0), 0);
    return cells.every((cell) => cell.trim() === "") ? [] : [{ line: start, cells }];
  });
}

/** The sign that comes most often in the headings. */
function delimiterOf(body: string): string {
  const head = body.split(/\r|\n/).find((line) => line.trim() !== "") ?? "";
  const counts = [",", ";", "\t"].map((sign) => ({ sign, count: head.split(sign).length }));
  return counts.reduce((most, next) => (next.count > most.count ? next : most)).sign;
}

function fieldOf(heading: string): TreeField | undefined {
  const name = heading
    .trim()
    .toLowerCase()
    .replaceAll(/[\s-]+/g, "_");
  return TREE_FIELDS.find((field) => field === name);
}

function headFaults({ line, cells }: Line, columns: readonly (TreeField | undefined)[]): readonly Refusal[] {
  const has = (field: TreeField) => columns.includes(field);
  const missing = ["id", "x_m", "y_m"].filter((field) => !columns.some((column) => column === field));
  if (!has("dbh_cm") && !has("girth_cm")) missing.push("dbh_cm or girth_cm");
  const got = cells.map((cell) => cell.trim()).join(", ");
  const faults = missing.map((field) => ({ field: `line ${line}`, got, need: `a heading ${field}` }));
  const double = TREE_FIELDS.filter((field) => columns.filter((column) => column === field).length > 1);
  return [
    ...faults,
    ...double.map((field) => ({ field: `line ${line}`, got, need: `the heading ${field} only once` })),
  ];
}

function rawRow({ line, cells }: Line, columns: readonly (TreeField | undefined)[]): RawRow {
  const place = `line ${line}`;
  const faults: Refusal[] = [];
  const read: Record<string, unknown> = {};
  if (cells.length > columns.length && cells.slice(columns.length).some((cell) => cell.trim() !== "")) {
    const need = `${columns.length} cells, as in the headings; a decimal comma makes one more`;
    return {
      place,
      cells: {},
      unreadable: true,
      faults: [{ field: "row", got: `${cells.length} cells`, need }],
    };
  }
  columns.forEach((field, index) => {
    if (field === undefined) return;
    const { value, fault } = readCell(field, cells[index] ?? "");
    if (fault !== undefined) faults.push(fault);
    if (value !== undefined) read[field] = value;
  });
  return { place, cells: gathered(read), faults };
}
