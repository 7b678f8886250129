import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import { ROOMS } from "./layers.mjs";
import { ROOT } from "./source-files.mjs";

const USAGE = "Say what to make: npm run make -- model ROOM/NAME, as in statics/level-hang";

/**
 * The files of a new model in house form, by path from the root. Its checks file has no row yet, and so its
 * test fails until one from outside the code is there.
 *
 * @param {string} room
 * @param {string} name  with hyphens
 * @returns {Record<string, string>}
 */
export function modelFiles(room, name) {
  const base = `packages/core/src/${room}/${name}`;
  const call = name.replace(/-(\w)/g, (_, letter) => letter.toUpperCase());
  const type = `${call.charAt(0).toUpperCase()}${call.slice(1)}`;
  return {
    [`${base}.ts`]: source(room, name, call, type),
    [`${base}.test.ts`]: test(name, call),
    [`${base}.checks.json`]: `{ "model": "${name}", "rows": [] }\n`,
  };
}

/**
 * @param {string} room
 * @param {string} name
 * @param {string} call
 * @param {string} type
 */
function source(room, name, call, type) {
  return `import { refuse, succeed, type Basis, type Outcome } from "../outcome/public.ts";

export interface ${type}Input {
  readonly loadN: number;
}

export interface ${type} {
  readonly pullN: number;
  readonly basis: Basis;
}

/**
 * What it computes, in a sentence.
 *
 *   the law, as a line of mathematics
 *
 * Shapes   scalars in, scalars out
 * Units    loadN [N] → pullN [N]
 * Holds    loadN > 0 and finite; anything else is refused by field name
 * Error    how large, and why
 * Source   ${name} (handbook/${room}.md: derivation, worked figures)
 */
export function ${call}({ loadN }: ${type}Input): Outcome<${type}> {
  if (!(loadN > 0 && loadN < Infinity)) {
    return refuse("loadN", loadN, "a positive, finite load in newtons");
  }
  return succeed({ pullN: loadN, basis: BASIS });
}

const BASIS: Basis = {
  rule: "${name}",
  source: "house-convention",
  assumes: [],
};
`;
}

/**
 * @param {string} name
 * @param {string} call
 */
function test(name, call) {
  return `import { checks } from "@nightspan/checks";
import { describe, expect, it } from "vitest";
import { ${call} } from "./${name}.ts";

checks<{ load_n: number }>(new URL("./${name}.checks.json", import.meta.url), ({ load_n: loadN }) => {
  const outcome = ${call}({ loadN });
  return outcome.ok ? { pull_n: outcome.value.pullN } : {};
});

describe("${call}", () => {
  it.each([0, -1, NaN, Infinity])("refuses a load of %d N by name", (loadN) => {
    expect(${call}({ loadN })).toMatchObject({ ok: false, refusals: [{ field: "loadN" }] });
  });
});
`;
}

/**
 * The section of the handbook that a new model starts with.
 *
 * @param {string} name
 */
export function handbookStub(name) {
  return `
## ${name}

**Question.**

**Law.**

**Range.**

**Worked figure.**

**Where it fails.**

**Sources.**
`;
}

function main() {
  const [what, where = ""] = process.argv.slice(2);
  const [, room = "", name = ""] = /^([a-z]+)\/([a-z][a-z0-9]*(?:-[a-z0-9]+)*)$/.exec(where) ?? [];
  if (what !== "model" || name === "") return fail(USAGE);
  if (room === "" || !(room in ROOMS))
    return fail(`${room} is no room; the rooms: ${Object.keys(ROOMS).join(" ")}`);
  const files = modelFiles(room, name);
  const taken = Object.keys(files).find((path) => existsSync(join(ROOT, path)));
  if (taken !== undefined) return fail(`${taken} is there already; nothing was written.`);
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(ROOT, path)), { recursive: true });
    writeFileSync(join(ROOT, path), text);
  }
  addToHandbook(room, name);
  console.log([...Object.keys(files), `handbook/${room}.md`].join("\n"));
}

/**
 * @param {string} room
 * @param {string} name
 */
function addToHandbook(room, name) {
  const page = join(ROOT, "handbook", `${room}.md`);
  const title = `# ${room.charAt(0).toUpperCase()}${room.slice(1)}\n`;
  const text = existsSync(page) ? readFileSync(page, "utf8") : title;
  writeFileSync(page, `${text.trimEnd()}\n${handbookStub(name)}`);
}

/** @param {string} sentence */
function fail(sentence) {
  console.error(sentence);
  process.exitCode = 1;
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) main();
