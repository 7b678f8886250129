import * as z from "zod/mini";

/**
 * What is needed, in words, where a schema says nothing itself; and no code made from strings at run time, which the
 * page's Content-Security-Policy forbids.
 */
z.config({ jitless: true, customError: needed });

function needed(issue: z.core.$ZodRawIssue): string {
  switch (issue.code) {
    case "invalid_type":
      return KINDS[issue.expected] ?? "something else";
    case "invalid_value":
      return alternatives(issue.values.map((value) => JSON.stringify(value)));
    case "too_small":
      return `${issue.inclusive === false ? "more than" : "at least"} ${String(issue.minimum)}`;
    case "too_big":
      return `${issue.inclusive === false ? "less than" : "at most"} ${String(issue.maximum)}`;
    default:
      return "something else: this is of no known form";
  }
}

const KINDS: Readonly<Record<string, string>> = {
  object: "an object",
  record: "an object",
  array: "a list",
  tuple: "a list",
  string: "text",
  number: "a finite number",
  int: "a whole number",
  boolean: "true or false",
};

/** "a, b or c". */
export function alternatives(words: readonly string[]): string {
  const last = words.at(-1) ?? "";
  return words.length < 2 ? last : `${words.slice(0, -1).join(", ")} or ${last}`;
}
