import { spawnSync } from "node:child_process";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { ROOT } from "./source-files.mjs";

const require = createRequire(import.meta.url);

/**
 * The script behind a command of an installed package, to be run by Node itself, without a shell.
 *
 * @param {string} name  of the package
 * @param {string} [command]
 * @returns {string}
 */
export function commandOf(name, command = name) {
  const manifest = require.resolve(`${name}/package.json`);
  const { bin } = require(manifest);
  return join(dirname(manifest), typeof bin === "string" ? bin : bin[command]);
}

/**
 * Runs a Node script in the root and waits; returns its exit code.
 *
 * @param {string[]} args
 * @param {NodeJS.ProcessEnv} [env]
 * @returns {number}
 */
export function runNode(args, env = process.env) {
  const ran = spawnSync(process.execPath, args, { cwd: ROOT, stdio: "inherit", env });
  return ran.status ?? 1;
}

/**
 * Runs a TypeScript file from source.
 *
 * @param {string[]} args  the file and its arguments
 * @returns {number}
 */
export function runSource(args) {
  return runNode([commandOf("tsx"), "--conditions=camp-source", ...args]);
}
