/** Columns of a tree list, by the camp file's names, and how each is read. */
export const TREE_COLUMNS = {
  id: "text",
  x_m: "number",
  y_m: "number",
  dbh_cm: "number",
  girth_cm: "number",
  species: "text",
  condition: "word",
  height_m: "number",
  elevation_m: "number",
  lean_deg: "number",
  tag: "text",
  use: "flag",
  looked_at_by: "text",
  looked_at_on: "text",
} as const;

export const TREE_FIELDS: readonly string[] = Object.keys(TREE_COLUMNS);

/** Cells under `looked_at_by` and `looked_at_on` make one `looked_at`. */
export function gathered(cells: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  const { looked_at_by: by, looked_at_on: on, ...rest } = cells;
  return by === undefined && on === undefined ? rest : { ...rest, looked_at: { by, on } };
}
