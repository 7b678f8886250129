import type { SheetCell, SheetTable, Words } from "@nightspan/drawing";

/** A table as CSV, to be filled in and kept in a spreadsheet: a heading stands in a first column of its own. */
export function sheetCsv({ columns, rows }: SheetTable, { labels }: Words): string {
  const headed = rows.some((row) => "heading" in row);
  let heading = "";
  const lines = [[...(headed ? [""] : []), ...columns.map(({ title }) => labels(title))]];
  for (const row of rows) {
    if ("heading" in row) heading = labels(row.heading);
    else lines.push([...(headed ? [heading] : []), ...row.map((cell) => cellText(cell, labels))]);
  }
  return lines.map((cells) => `${cells.map(quoted).join(",")}\r\n`).join("");
}

function cellText(cell: SheetCell, labels: Words["labels"]): string {
  return typeof cell === "string" ? "" : labels(cell);
}

/** Quoted where it must be; what a spreadsheet would take for a formula is told as text. */
function quoted(cell: string): string {
  const plain = cell.replaceAll(ISOLATES, "").replaceAll("\u00a0", " ");
  const text = /^[=+\-@\t\r]/.test(plain) ? `'${plain}` : plain;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

const ISOLATES = /[\u2066-\u2069]/g;
