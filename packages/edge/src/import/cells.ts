import type { Refusal } from "@nightspan/core";

/** How a cell is read: "word" in small letters with hyphens, "text" as it stands, "list" parted by "|". */
export type CellKind = "number" | "text" | "word" | "flag" | "list";

/** A cell's text as the field's value, or what is wrong with it. Empty and NA cells are left out. */
export function readCell(
  field: string,
  kind: CellKind,
  written: string,
): { value?: unknown; fault?: Refusal } {
  const text = written.trim().replace(FORMULA_GUARD, "");
  if (text === "" || text === "NA") return {};
  switch (kind) {
    case "number":
      return readNumber(field, text);
    case "text":
      return { value: text };
    case "word":
      return { value: text.toLowerCase().replaceAll(/[\s_]+/g, "-") };
    case "list":
      return {
        value: text
          .split(/(?<!\\)\|/)
          .map((part) => part.trim().replaceAll("\\|", "|"))
          .filter((part) => part !== ""),
      };
    case "flag":
      return readFlag(field, text);
  }
}

/** What lists are written with before a text that a spreadsheet would take for a formula. */
const FORMULA_GUARD = /^'(?='*[=+\-@\t\r])/;

const NUMBER = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/;
const DECIMAL_COMMA = /^[+-]?\d*,\d+$/;

function readNumber(field: string, text: string): { value?: unknown; fault?: Refusal } {
  const plain = text.replace("\u2212", "-");
  if (NUMBER.test(plain)) return { value: Number(plain) };
  const need = DECIMAL_COMMA.test(plain)
    ? `a number with a point and not a comma, ${plain.replace(",", ".")}`
    : "a number";
  return { fault: { field, got: text, need } };
}

function readFlag(field: string, text: string): { value?: unknown; fault?: Refusal } {
  const word = text.toLowerCase();
  if (YES.includes(word)) return { value: true };
  if (NO.includes(word)) return { value: false };
  return { fault: { field, got: text, need: "true or false" } };
}

const YES = ["true", "yes", "1"];
const NO = ["false", "no", "0"];
