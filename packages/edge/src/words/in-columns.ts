import { displayWidth, padded } from "./display-width.ts";

/** Rows in columns as wide as their widest cell, two spaces apart. */
export function inColumns(rows: readonly (readonly string[])[]): readonly string[] {
  const count = Math.max(0, ...rows.map((row) => row.length));
  const widths = Array.from({ length: count }, (_, column) =>
    Math.max(...rows.map((row) => displayWidth(row[column] ?? ""))),
  );
  return rows.map((row) =>
    row
      .map((cell, column) => padded(cell, widths[column] ?? 0))
      .join("  ")
      .trimEnd(),
  );
}
