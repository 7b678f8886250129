import Papa from "papaparse";
import { refuse, succeed, type Outcome, type Refusal } from "@nightspan/core";
import { readCell, type CellKind } from "./cells.ts";
import type { RawRow } from "./raw-row.ts";

/** What a list may have in its columns: each field's name, and how its cells are read. */
export type Columns<F extends string> = Readonly<Record<F, CellKind>>;

export interface CsvTable<F extends string> {
  readonly fields: readonly F[];
  readonly rows: readonly RawRow[];
  /** Headings that mean nothing here. */
  readonly leftOut: readonly string[];
}

/**
 * A CSV text with a line of headings: any order, any case, comma, semicolon or tab between cells; empty lines are
 * passed over. Rows are told by the line that each starts on. A heading twice, or one that is needed and lacks, is
 * refused; `needs` names fields of which each inner list wants one.
 */
export function readCsvTable<F extends string>(
  text: string,
  columns: Columns<F>,
  needs: readonly (readonly F[])[],
  what: string,
): Outcome<CsvTable<F>> {
  const body = text.startsWith("\uFEFF") ? text.slice(1) : text;
  const [head, ...lines] = linesOf(body);
  const wanted = needs.map((fields) => fields.join(" or "));
  if (head === undefined) return refuse("line 1", undefined, `headings: ${wanted.join(", ")}`);
  const known = namesOf(columns);
  const found = head.cells.map((cell) => known.find((name) => name === headingName(cell)));
  const faults = headFaults(head, found, known, needs);
  if (faults.length > 0) return { ok: false, refusals: faults };
  if (lines.length === 0) return refuse(`line ${head.line + 1}`, undefined, `at least one ${what}`);
  return succeed({
    fields: known.filter((name) => found.includes(name)),
    rows: lines.map((line) => rawRow(line, found, columns)),
    leftOut: head.cells.filter((cell, index) => found[index] === undefined && cell.trim() !== ""),
  });
}

/** The names in the first line of a CSV text, as they are compared; none where it has no line. */
export function csvHeadings(text: string): readonly string[] {
  const body = text.startsWith("\uFEFF") ? text.slice(1) : text;
  const head = body.split(/\r|\n/).find((line) => line.trim() !== "") ?? "";
  return (linesOf(head)[0]?.cells ?? []).map(headingName);
}

function namesOf<F extends string>(columns: Columns<F>): readonly F[] {
  const isName = (key: string): key is F => Object.hasOwn(columns, key);
  return Object.keys(columns).filter(isName);
}

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

function headingName(heading: string): string {
  return heading
    .trim()
    .toLowerCase()
    .replaceAll(/[\s-]+/g, "_");
}

function headFaults<F extends string>(
  { line, cells }: Line,
  found: readonly (F | undefined)[],
  known: readonly F[],
  needs: readonly (readonly F[])[],
): readonly Refusal[] {
  const got = cells.map((cell) => cell.trim()).join(", ");
  const missing = needs.filter((fields) => !fields.some((name) => found.includes(name)));
  const double = known.filter((name) => found.filter((other) => other === name).length > 1);
  return [
    ...missing.map((fields) => ({ field: `line ${line}`, got, need: `a heading ${fields.join(" or ")}` })),
    ...double.map((name) => ({ field: `line ${line}`, got, need: `the heading ${name} only once` })),
  ];
}

function rawRow<F extends string>(
  { line, cells }: Line,
  found: readonly (F | undefined)[],
  columns: Columns<F>,
): RawRow {
  const place = `line ${line}`;
  const faults: Refusal[] = [];
  const read: Record<string, unknown> = {};
  if (cells.length > found.length && cells.slice(found.length).some((cell) => cell.trim() !== "")) {
    const need = `${found.length} cells, as in the headings; a decimal comma makes one more`;
    return {
      place,
      cells: {},
      unreadable: true,
      faults: [{ field: "row", got: `${cells.length} cells`, need }],
    };
  }
  found.forEach((name, index) => {
    if (name === undefined) return;
    const { value, fault } = readCell(name, columns[name], cells[index] ?? "");
    if (fault !== undefined) faults.push(fault);
    if (value !== undefined) read[name] = value;
  });
  return { place, cells: read, faults };
}
