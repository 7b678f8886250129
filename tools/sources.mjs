import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { ROOT } from "./source-files.mjs";

const LIST = join(ROOT, "handbook", "sources.json");
const MODULE = join(ROOT, "packages", "core", "src", "outcome", "source-key.ts");

/**
 * The module that holds the type of all source keys.
 *
 * @param {string} json  the text of handbook/sources.json
 * @returns {string}
 */
export function sourceKeyModule(json) {
  const keys = Object.keys(JSON.parse(json)).sort();
  const lines = keys.map((key) => `  | ${JSON.stringify(key)}`);
  return [
    "// Made from handbook/sources.json by `npm run sources`. Do not edit by hand.",
    "export type SourceKey =",
    `${lines.join("\n")};`,
    "",
  ].join("\n");
}

/** The sentence that says what to do where list and module differ, or undefined. */
export function sourcesFault() {
  const made = sourceKeyModule(readFileSync(LIST, "utf8"));
  return made === readFileSync(MODULE, "utf8")
    ? undefined
    : "source-key.ts differs from handbook/sources.json: run `npm run sources`";
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  writeFileSync(MODULE, sourceKeyModule(readFileSync(LIST, "utf8")));
}
