// Makes packages/core/src/outcome/source-key.ts from handbook/sources.json, so that a source key that
// is not in the list of sources does not compile. `--check` only says whether the two agree.
import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const LIST = new URL("../handbook/sources.json", import.meta.url);
const MADE = new URL("../packages/core/src/outcome/source-key.ts", import.meta.url);

/** @param {Record<string, { title?: unknown, seen?: unknown }>} sources */
export function sourceKeyModule(sources) {
  for (const [key, source] of Object.entries(sources)) {
    if (typeof source.title !== "string" || typeof source.seen !== "string") {
      throw new Error(`handbook/sources.json: ${key} needs "title" and "seen"`);
    }
  }
  const members = Object.keys(sources)
    .sort()
    .map((key) => `  | ${JSON.stringify(key)}`);
  return [
    "// Made from handbook/sources.json by `npm run sources`. Do not edit by hand.",
    "export type SourceKey =",
    `${members.join("\n")};`,
    "",
  ].join("\n");
}

function main() {
  const made = sourceKeyModule(JSON.parse(readFileSync(LIST, "utf8")));
  if (!process.argv.includes("--check")) {
    writeFileSync(MADE, made);
    return;
  }
  if (readFileSync(MADE, "utf8") !== made) {
    process.stderr.write("source-key.ts is not what handbook/sources.json says: run `npm run sources`\n");
    process.exitCode = 1;
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) main();
