/**
 * Sees to it that the packages of package-lock.json are installed, before anything else runs.
 * Uses Node's own modules only, for it runs where nothing is installed yet.
 */
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

const ROOT = join(dirname(fileURLToPath(import.meta.url)), "..");
const OLDEST_NODE = [20, 19];

/**
 * What an install depends on, as one word.
 *
 * @param {string | Buffer} lock
 */
export function fingerprint(lock) {
  const major = process.versions.node.split(".")[0];
  return createHash("sha256")
    .update(lock)
    .update(`${process.platform} ${process.arch} ${major}`)
    .digest("hex");
}

/** @param {string} version */
export function nodeIsNewEnough(version) {
  const [major = 0, minor = 0] = version.split(".").map(Number);
  const [needMajor = 0, needMinor = 0] = OLDEST_NODE;
  return major > needMajor || (major === needMajor && minor >= needMinor);
}

/**
 * The command that runs npm without a shell, so that it works on Windows too.
 *
 * @param {string[]} args
 * @returns {{ command: string, args: string[], shell: boolean }}
 */
export function npmCommand(args) {
  const npm = process.env["npm_execpath"] ?? besideNode();
  if (npm !== undefined && /\.[cm]?js$/.test(npm)) {
    return { command: process.execPath, args: [npm, ...args], shell: false };
  }
  return { command: "npm", args, shell: process.platform === "win32" };
}

function besideNode() {
  const bin = dirname(process.execPath);
  return [
    join(bin, "node_modules/npm/bin/npm-cli.js"),
    join(bin, "../lib/node_modules/npm/bin/npm-cli.js"),
  ].find((path) => existsSync(path));
}

/**
 * @param {string} folder
 * @param {string[]} args
 */
function runNpm(folder, args) {
  const npm = npmCommand([...args, "--no-audit", "--no-fund", "--loglevel=error"]);
  // Output goes to stderr: stdout belongs to the command that the person asked for.
  const ran = spawnSync(npm.command, npm.args, {
    cwd: folder,
    shell: npm.shell,
    stdio: ["ignore", 2, 2],
  });
  return ran.status === 0;
}

/**
 * Installs the packages of one folder, unless its stamp says that they are there.
 *
 * @param {string} folder
 * @returns {"present" | "installed"}
 */
export function ensurePackages(folder) {
  const lock = readFileSync(join(folder, "package-lock.json"));
  const stamp = join(folder, "node_modules", ".nightspan-stamp");
  const wanted = fingerprint(lock);
  if (existsSync(stamp) && readFileSync(stamp, "utf8") === wanted) return "present";
  console.error("Installing packages, once …");
  if (!runNpm(folder, ["ci"]) && !runNpm(folder, ["install", "--no-save"])) {
    throw new Error(`npm could not install the packages of ${folder}; its own words are above.`);
  }
  writeFileSync(stamp, wanted);
  return "installed";
}

function main() {
  if (!nodeIsNewEnough(process.versions.node)) {
    console.error(`Node ${OLDEST_NODE.join(".")} or newer is needed; this is ${process.versions.node}.`);
    process.exitCode = 1;
    return;
  }
  try {
    ensurePackages(ROOT);
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    process.exitCode = 1;
  }
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) main();
