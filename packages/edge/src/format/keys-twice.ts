import type { Refusal } from "@nightspan/core";
import { fieldPath } from "./raw.ts";

/**
 * Fields that a JSON text writes more than once, each by its path. A reader of JSON keeps the last without a word, and
 * a file edited by hand loses what stood there before.
 *
 * Holds: the text is JSON.
 */
export function keysTwice(text: string): readonly Refusal[] {
  const open: Level[] = [];
  const found = new Map<string, Refusal>();
  for (const { 0: sign, 1: colon, index } of text.matchAll(TOKEN)) {
    const inside = open.at(-1);
    if (sign === "{") open.push({ step: "", keys: new Map() });
    else if (sign === "[") open.push({ step: 0 });
    else if (sign === "}" || sign === "]") open.pop();
    else if (sign === "," && typeof inside?.step === "number") inside.step += 1;
    else if (colon !== undefined && inside?.keys !== undefined) {
      inside.step = keyOf(sign.slice(0, sign.length - colon.length));
      noteKey(inside.step, index, open, text, found);
    }
  }
  return [...found.values()];
}

/** An object that is being read, with its keys and where each first stood, or a list with its place in it. */
interface Level {
  step: string | number;
  readonly keys?: Map<string, number>;
}

/** Texts, with the colon after those that are keys, brackets and commas; numbers and words are passed over. */
const TOKEN = /"(?:[^"\\]|\\.)*"(\s*:)?|[{}[\],]/g;

function keyOf(quoted: string): string {
  if (!quoted.includes("\\")) return quoted.slice(1, -1);
  const key: unknown = JSON.parse(quoted);
  return String(key);
}

function noteKey(
  key: string,
  index: number,
  open: readonly Level[],
  text: string,
  found: Map<string, Refusal>,
): void {
  const keys = open.at(-1)?.keys;
  const before = keys?.get(key);
  if (before === undefined) {
    keys?.set(key, index);
    return;
  }
  const field = fieldPath(open.map(({ step }) => step));
  const got = `two values, on lines ${lineOf(text, before)} and ${lineOf(text, index)}`;
  found.set(field, { field, got, need: "to be written once" });
}

function lineOf(text: string, at: number): number {
  return text.slice(0, at).split("\n").length;
}
