import { refuse, succeed, type Outcome } from "@nightspan/core";
import { keysTwice } from "./keys-twice.ts";

/** 20 MB, the most that a camp file may hold. */
export const MOST_BYTES = 20_000_000;

/**
 * The JSON in a text. A byte-order mark is no fault; anything else is told with its line and column, and a field
 * written twice by its path.
 */
export function parseJson(text: string): Outcome<unknown> {
  if (text.length * 3 > MOST_BYTES && new TextEncoder().encode(text).length > MOST_BYTES) {
    return refuse("file", `${text.length} characters`, "at most 20 MB");
  }
  const body = text.startsWith("\uFEFF") ? text.slice(1) : text;
  try {
    const value: unknown = JSON.parse(body);
    const refusals = keysTwice(body);
    return refusals.length === 0 ? succeed(value) : { ok: false, refusals };
  } catch {
    const fault = findFault(body);
    const { line, column } = lineAndColumn(body, fault.at);
    return refuse(`line ${line}, column ${column}`, shown(body, fault.at), fault.need);
  }
}

/** Line and column of a place in a text, both counted from 1. */
export function lineAndColumn(text: string, at: number): { line: number; column: number } {
  const before = text.slice(0, at).split("\n");
  return { line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
}

function shown(text: string, at: number): string {
  const next = /^\s*(\S{1,12})/.exec(text.slice(at))?.[1];
  return next ?? (text.trim() === "" ? "nothing at all" : "the end of the text");
}

interface Fault {
  readonly at: number;
  readonly need: string;
}

const SPACE = /[\t\n\r ]*/y;
const SCALAR =
  /"(?:[ !#-[\]-\uffff]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null/y;
const STRING_START = '"';

/**
 * The first place where a text stops being JSON. Engines word and place this differently, so it is found here:
 * a walk over the tokens with a stack of open brackets.
 */
function findFault(text: string): Fault {
  const open: ("{" | "[")[] = [];
  let expects: Expects = "value";
  let at = 0;
  for (;;) {
    at = match(SPACE, text, at) ?? at;
    const step = take(text, at, expects, open);
    if (typeof step === "string") return { at, need: step };
    ({ at, expects } = step);
    if (expects === "end" && open.length > 0) expects = "next";
  }
}

type Expects = "value" | "value-or-close" | "key" | "key-or-close" | "colon" | "next" | "end";

/** One token: where it ends and what may follow, or what was needed instead. */
function take(text: string, at: number, expects: Expects, open: ("{" | "[")[]): Step | string {
  const sign = text[at];
  const inside = open.at(-1);
  if ((sign === "}" && inside === "{") || (sign === "]" && inside === "[")) {
    if (!["value-or-close", "key-or-close", "next"].includes(expects)) return NEEDS[expects];
    open.pop();
    return { at: at + 1, expects: "end" };
  }
  if (expects === "colon") return sign === ":" ? { at: at + 1, expects: "value" } : NEEDS.colon;
  if (expects === "next") {
    if (sign !== ",") return inside === "{" ? 'a comma or "}"' : 'a comma or "]"';
    return { at: at + 1, expects: inside === "{" ? "key" : "value" };
  }
  if (expects === "end") return NEEDS.end;
  return takeValue(text, at, expects, open);
}

function takeValue(text: string, at: number, expects: Expects, open: ("{" | "[")[]): Step | string {
  const sign = text[at];
  const key = expects === "key" || expects === "key-or-close";
  if (!key && (sign === "{" || sign === "[")) {
    open.push(sign);
    return { at: at + 1, expects: sign === "{" ? "key-or-close" : "value-or-close" };
  }
  const end = match(SCALAR, text, at);
  if (end === undefined || (key && sign !== STRING_START)) {
    return sign === STRING_START ? "a text that ends with a quotation mark on its own line" : NEEDS[expects];
  }
  return { at: end, expects: key ? "colon" : "end" };
}

interface Step {
  readonly at: number;
  readonly expects: Expects;
}

const NEEDS: Readonly<Record<Expects, string>> = {
  value: "a value",
  "value-or-close": 'a value or "]"',
  key: "a field name in quotation marks",
  "key-or-close": 'a field name in quotation marks or "}"',
  colon: "a colon",
  next: "a comma",
  end: "nothing more",
};

function match(pattern: RegExp, text: string, at: number): number | undefined {
  pattern.lastIndex = at;
  return pattern.test(text) ? pattern.lastIndex : undefined;
}
