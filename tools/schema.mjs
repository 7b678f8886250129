import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { commandOf } from "./run.mjs";
import { ROOT } from "./source-files.mjs";

const NAMES = ["camp", "plan", "log"];
const CLI = join("packages", "cli", "src", "main.ts");

/**
 * What `nightspan schema NAME` prints.
 *
 * @param {string} name
 * @returns {string}
 */
function generated(name) {
  const args = [commandOf("tsx"), "--conditions=camp-source", CLI, "schema", name];
  const ran = spawnSync(process.execPath, args, {
    cwd: ROOT,
    encoding: "utf8",
    stdio: ["ignore", "pipe", "inherit"],
  });
  if (ran.status !== 0) throw new Error(`nightspan schema ${name} ended with ${ran.status}`);
  return `${JSON.stringify(JSON.parse(ran.stdout), null, 2)}\n`;
}

/** @param {string} name */
function fileOf(name) {
  return join(ROOT, "schema", `${name}.schema.json`);
}

/**
 * One sentence for each schema on disk that differs from the code's.
 *
 * @returns {string[]}
 */
export function schemaFaults() {
  return NAMES.flatMap((name) => {
    const file = fileOf(name);
    const same = existsSync(file) && readFileSync(file, "utf8") === generated(name);
    return same ? [] : [`schema/${name}.schema.json is not what the code says: run \`npm run schema\``];
  });
}

function write() {
  mkdirSync(join(ROOT, "schema"), { recursive: true });
  for (const name of NAMES) writeFileSync(fileOf(name), generated(name));
}

function main() {
  if (!process.argv.includes("--check")) return write();
  const faults = schemaFaults();
  faults.forEach((fault) => console.error(fault));
  if (faults.length > 0) process.exitCode = 1;
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) main();
