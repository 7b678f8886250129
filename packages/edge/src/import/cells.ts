import type { Refusal } from "@nightspan/core";

/** A cell's text as the field's value, or what is wrong with it. Empty and NA cells are left out. */
export function readCell(field: TreeField, written: string): { value?: unknown; fault?: Refusal } {
  const text = written.trim();
  if (text === "" || text === "NA") return {};
  return KINDS[field] === "number" ? readNumber(field, text) : readWord(field, text);
}

/** Columns of a tree list, by the camp file's names. */
export const TREE_FIELDS = [
  "id",
  "x_m",
  "y_m",
  "dbh_cm",
  "girth_cm",
  "species",
  "condition",
  "height_m",
  "elevation_m",
  "lean_deg",
  "tag",
  "use",
  "looked_at_by",
  "looked_at_on",
] as const;

export type TreeField = (typeof TREE_FIELDS)[number];

const KINDS: Readonly<Record<TreeField, "number" | "text" | "word" | "flag">> = {
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
};

const NUMBER = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/;
const DECIMAL_COMMA = /^[+-]?\d*,\d+$/;

function readNumber(field: TreeField, text: string): { value?: unknown; fault?: Refusal } {
  const plain = text.replace("\u2212", "-");
  if (NUMBER.test(plain)) return { value: Number(plain) };
  const need = DECIMAL_COMMA.test(plain)
    ? `a number with a point and not a comma, ${plain.replace(",", ".")}`
    : "a number";
  return { fault: { field, got: text, need } };
}

function readWord(field: TreeField, text: string): { value?: unknown; fault?: Refusal } {
  if (KINDS[field] === "text") return { value: text };
  const word = text.toLowerCase();
  if (KINDS[field] === "word") return { value: word.replaceAll(/[\s_]+/g, "-") };
  if (YES.includes(word)) return { value: true };
  if (NO.includes(word)) return { value: false };
  return { fault: { field, got: text, need: "true or false" } };
}

const YES = ["true", "yes", "1"];
const NO = ["false", "no", "0"];

/** Cells under `looked_at_by` and `looked_at_on` make one `looked_at`. */
export function gathered(cells: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  const { looked_at_by: by, looked_at_on: on, ...rest } = cells;
  return by === undefined && on === undefined ? rest : { ...rest, looked_at: { by, on } };
}
