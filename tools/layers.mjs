import { readFileSync } from "node:fs";
import { join, posix } from "node:path";
import { pathToFileURL } from "node:url";
import ts from "typescript";
import { cycles } from "./cycles.mjs";
import { sizeReport } from "./sizes.mjs";
import { isTest, packageSources, ROOT } from "./source-files.mjs";

/** @import { SourceFile } from "./source-files.mjs" */

const GROUND = ["outcome", "quantity", "numeric", "geometry"];
const TRADES = ["statics", "shelter", "heat", "site"];

/**
 * Each room of core and the rooms that it may import from, itself aside.
 *
 * @type {Readonly<Record<string, readonly string[]>>}
 */
export const ROOMS = {
  outcome: [],
  quantity: ["outcome"],
  numeric: ["outcome"],
  geometry: ["outcome", "quantity", "numeric"],
  statics: GROUND,
  shelter: GROUND,
  heat: GROUND,
  site: GROUND,
  plan: ["outcome", "quantity", "geometry", ...TRADES],
  planning: [...GROUND, ...TRADES, "plan"],
  // The public entry, src/index.ts.
  "": [...GROUND, ...TRADES, "plan", "planning"],
};

/**
 * The parts of the app: page and worker meet only in shared.
 *
 * @type {Readonly<Record<string, readonly string[]>>}
 */
export const APP_PARTS = {
  shared: [],
  client: ["shared"],
  worker: ["shared"],
  sw: ["shared"],
};

/**
 * Each package and the ones that it may import from, through their public entries.
 *
 * @type {Readonly<Record<string, { packages: readonly string[], outside: "none" | "browser" | "node" }>>}
 */
export const PACKAGES = {
  core: { packages: [], outside: "none" },
  drawing: { packages: ["core"], outside: "none" },
  edge: { packages: ["core", "drawing"], outside: "browser" },
  cli: { packages: ["core", "drawing", "edge"], outside: "node" },
  web: { packages: ["core", "drawing", "edge"], outside: "browser" },
};

/** @type {Readonly<Record<string, Readonly<Record<string, readonly string[]>>>>} */
const PARTS = { core: ROOMS, web: APP_PARTS };

/**
 * What a file imports, type imports counted.
 *
 * @param {SourceFile} file
 * @returns {string[]}
 */
export function importsOf({ text }) {
  return ts.preProcessFile(text, true, true).importedFiles.map(({ fileName }) => fileName);
}

/**
 * One sentence for each import outside the table.
 *
 * @param {readonly SourceFile[]} files
 * @returns {string[]}
 */
export function layerFaults(files) {
  return files.flatMap((file) =>
    importsOf(file).flatMap((wanted) => {
      const fault = wanted.startsWith(".") ? relativeFault(file.path, wanted) : namedFault(file.path, wanted);
      return fault === undefined ? [] : [`${file.path}: imports ${wanted}: ${fault}`];
    }),
  );
}

/**
 * One sentence for each import of an outside package that the importing package's own manifest does not name.
 *
 * @param {readonly SourceFile[]} files
 * @param {(pack: string) => readonly string[]} namedBy  the dependencies in a package's manifest
 * @returns {string[]}
 */
export function undeclaredFaults(files, namedBy) {
  return files
    .filter(({ path }) => !isTest(path))
    .flatMap((file) => {
      const { pack } = place(file.path);
      const outside = importsOf(file).filter(
        (wanted) => !wanted.startsWith(".") && !wanted.startsWith("node:"),
      );
      const unnamed = outside.map(packageName).filter((name) => !namedBy(pack).includes(name));
      return unnamed.map(
        (name) => `${file.path}: imports ${name}: packages/${pack}/package.json does not name it`,
      );
    });
}

/** @param {string} wanted */
function packageName(wanted) {
  return wanted
    .split("/")
    .slice(0, wanted.startsWith("@") ? 2 : 1)
    .join("/");
}

/**
 * @param {string} pack
 * @returns {string[]}
 */
function dependenciesOf(pack) {
  const manifest = readFileSync(join(ROOT, "packages", pack, "package.json"), "utf8");
  return Object.keys(JSON.parse(manifest).dependencies ?? {});
}

/**
 * One sentence for each ring of files that import one another.
 *
 * @param {readonly SourceFile[]} files
 * @returns {string[]}
 */
export function cycleFaults(files) {
  const paths = new Set(files.map(({ path }) => path));
  const graph = new Map(
    files.map((file) => {
      const targets = importsOf(file).map((wanted) => targetOf(file.path, wanted));
      return [file.path, targets.filter((target) => paths.has(target))];
    }),
  );
  return cycles(graph).map((ring) => `import cycle: ${ring.join(" → ")} → ${ring[0]}`);
}

/**
 * @param {string} from
 * @param {string} wanted
 */
function targetOf(from, wanted) {
  if (wanted.startsWith(".")) return posix.join(posix.dirname(from), wanted.replace(/\?.*$/, ""));
  const own = /^@nightspan\/(\w+)$/.exec(wanted);
  return own === null ? wanted : `packages/${own[1]}/src/index.ts`;
}

/**
 * @param {string} from
 * @param {string} wanted
 * @returns {string | undefined}
 */
function relativeFault(from, wanted) {
  const here = place(from);
  const target = targetOf(from, wanted);
  const there = place(target);
  if (there.pack !== here.pack) {
    if (isTest(from) && /^(tools|checks)\//.test(target)) return undefined;
    return "it lies outside the package; import a package by its name";
  }
  const table = PARTS[here.pack];
  if (table === undefined || !here.inSource || !there.inSource || here.part === there.part) return undefined;
  const allowed = table[here.part];
  if (allowed === undefined) return `${here.part} is not on the map`;
  if (allowed.includes(there.part)) return undefined;
  return `${here.part || "the entry"} may import from ${allowed.join(", ") || "nothing"}`;
}

/**
 * @param {string} from
 * @param {string} wanted
 * @returns {string | undefined}
 */
function namedFault(from, wanted) {
  const { pack, inSource } = place(from);
  const rule = PACKAGES[pack];
  if (rule === undefined) return `${pack} is not on the map`;
  if (wanted.startsWith("@nightspan/")) return ownPackageFault(from, wanted);
  if (isTest(from)) return undefined;
  if (wanted.startsWith("node:")) {
    return rule.outside === "node" ? undefined : `${pack} runs without Node`;
  }
  return rule.outside === "none" && inSource ? `${pack} depends on nothing from outside` : undefined;
}

/**
 * @param {string} from
 * @param {string} wanted
 * @returns {string | undefined}
 */
function ownPackageFault(from, wanted) {
  const { pack, inSource } = place(from);
  const name = wanted.slice("@nightspan/".length);
  if (name === "checks") return isTest(from) ? undefined : "checks are for tests";
  if (name.includes("/")) return "use the public entry of the package";
  if (name === pack) return inSource ? "a package does not import itself by name" : undefined;
  const allowed = PACKAGES[pack]?.packages ?? [];
  return allowed.includes(name) ? undefined : `${pack} may import from ${allowed.join(", ") || "nothing"}`;
}

/**
 * @param {string} path
 * @returns {{ pack: string, inSource: boolean, part: string }}
 */
function place(path) {
  const [top, pack = "", within, ...rest] = path.split("/");
  if (top !== "packages") return { pack: "", inSource: false, part: "" };
  return { pack, inSource: within === "src", part: rest.length > 1 ? (rest[0] ?? "") : "" };
}

function main() {
  const files = packageSources();
  const faults = [...layerFaults(files), ...cycleFaults(files), ...undeclaredFaults(files, dependenciesOf)];
  const { lines, tooLong } = sizeReport(files);
  lines.forEach((line) => console.log(line));
  [...faults, ...tooLong].forEach((fault) => console.error(fault));
  if (faults.length + tooLong.length > 0) process.exitCode = 1;
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) main();
