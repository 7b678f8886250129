import type { Limit, Refusal } from "@nightspan/core";
import { plainText } from "./plain-text.ts";

const LONGEST = 60;

/** One line a refusal: file, field, what was found, what is needed. */
export function sayRefusal(file: string, { field, got, need }: Refusal): string {
  const where = field === "" || field === "file" ? file : `${file}: ${field}`;
  return plainText(`${where}: found ${shown(got)}, needed ${need}`);
}

function shown(got: unknown): string {
  if (got === undefined) return "nothing";
  if (typeof got === "number") return String(got);
  const text = JSON.stringify(got);
  return text.length > LONGEST ? `${text.slice(0, LONGEST)}…` : text;
}

/** A text of many lines or a whole file is told by how it begins. */
const LONGEST_TEXT = 200;

function toldGot(got: unknown): unknown {
  if (typeof got === "number" && !Number.isFinite(got)) return String(got);
  if (typeof got === "string" && got.length > LONGEST_TEXT) return `${got.slice(0, LONGEST_TEXT)}…`;
  return got ?? null;
}

/** A refusal as JSON: what cannot be written in JSON is told as text, what is missing as null. */
export interface RefusalJson {
  readonly field: string;
  readonly got: unknown;
  readonly need: string;
  readonly binds?: Limit;
}

export function refusalJson({ field, got, need, binds }: Refusal): RefusalJson {
  return { field, got: toldGot(got), need, ...(binds === undefined ? {} : { binds }) };
}
