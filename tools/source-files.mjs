import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";

/** @typedef {{ path: string, text: string }} SourceFile  path from the root, with forward slashes */

export const ROOT = join(dirname(fileURLToPath(import.meta.url)), "..");
const SKIPPED = new Set(["node_modules", "dist", "dist-types", "out", "coverage", ".git"]);

/**
 * Paths of all files below a folder, from the root and sorted, built and fetched ones left out.
 *
 * @param {string} [folder]
 * @returns {string[]}
 */
export function filesBelow(folder = ".") {
  const found = readdirSync(join(ROOT, folder), { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return SKIPPED.has(entry.name) ? [] : filesBelow(path);
    return entry.isFile() ? [relative(ROOT, join(ROOT, path)).split(sep).join("/")] : [];
  });
  return found.sort();
}

/**
 * @param {string} path
 * @returns {SourceFile}
 */
export function readSource(path) {
  return { path, text: readFileSync(join(ROOT, path), "utf8") };
}

/** @returns {SourceFile[]} */
export function packageSources() {
  return filesBelow("packages")
    .filter((path) => /\.tsx?$/.test(path) && !path.endsWith(".d.ts"))
    .map(readSource);
}

/** @param {string} path */
export function isTest(path) {
  return /\.(test|fixture|e2e|bench)\.tsx?$/.test(path) || !/^packages\/[^/]+\/src\//.test(path);
}
