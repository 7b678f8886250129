import Papa from "papaparse";
import type { CellKind } from "./cells.ts";
import { field } from "../format/raw.ts";

/**
 * Objects as a CSV text, a line each: those of the columns that any of them fills, in the columns' order. Lists are
 * parted by "|", which is written "\\|" within one; a text that a spreadsheet would take for a formula is guarded, and the reader takes the guard off.
 */
export function writeCsv(columns: Readonly<Record<string, CellKind>>, items: readonly object[]): string {
  const fields = Object.keys(columns).filter((name) => items.some((item) => field(item, name) !== undefined));
  const data = items.map((item) => fields.map((name) => cell(field(item, name))));
  return `${Papa.unparse({ fields, data }, { newline: "\n", escapeFormulae: FORMULA })}\n`;
}

/** Also over several lines, and where a guard is part of the text: the reader takes one off. */
const FORMULA = /^'*[=+\-@\t\r]/;

function cell(value: unknown): string | number {
  if (typeof value === "number" || typeof value === "string") return value;
  if (typeof value === "boolean") return String(value);
  return Array.isArray(value) ? value.map((one) => String(one).replaceAll("|", "\\|")).join("|") : "";
}
