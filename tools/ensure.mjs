/**
 * Sees to it that the packages of package-lock.json are installed, before anything else runs.
 * Uses Node's own modules only, for it runs where nothing is installed yet.
 */
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

const ROOT = join(dirname(fileURLToPath(import.meta.url)), "..");
const OLDEST_NODE = [20, 19];
const STAMP = join("node_modules", ".nightspan-stamp");
/** An install that takes longer than this was broken off, and its turn is free again [ms]. */
const TURN_MS = 10 * 60_000;
const LOOK_AGAIN_MS = 250;

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
 * Does the work while nobody else does it to the same folder: two installs at once tear each other's packages apart.
 *
 * @template T
 * @param {string} folder
 * @param {() => T} work
 * @returns {T}
 */
export function inTurn(folder, work) {
  const turn = join(tmpdir(), `nightspan-install-${fingerprint(folder).slice(0, 16)}`);
  while (!takesTurn(turn)) Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, LOOK_AGAIN_MS);
  try {
    return work();
  } finally {
    rmSync(turn, { recursive: true, force: true });
  }
}

/** @param {string} turn */
function takesTurn(turn) {
  try {
    mkdirSync(turn);
    return true;
  } catch (error) {
    if (!(error instanceof Error && "code" in error && error.code === "EEXIST")) throw error;
  }
  const begun = statSync(turn, { throwIfNoEntry: false })?.mtimeMs ?? Infinity;
  if (Date.now() - begun > TURN_MS) rmSync(turn, { recursive: true, force: true });
  return false;
}

/**
 * Installs the packages of one folder, unless its stamp says that they are there.
 *
 * @param {string} folder
 * @returns {"present" | "installed"}
 */
export function ensurePackages(folder) {
  if (arePresent(folder)) return "present";
  return inTurn(folder, () => (arePresent(folder) ? "present" : install(folder)));
}

/** @param {string} folder */
function wantedStamp(folder) {
  return fingerprint(readFileSync(join(folder, "package-lock.json")));
}

/** @param {string} folder */
function arePresent(folder) {
  const stamp = join(folder, STAMP);
  return existsSync(stamp) && readFileSync(stamp, "utf8") === wantedStamp(folder);
}

/**
 * @param {string} folder
 * @returns {"installed"}
 */
function install(folder) {
  const wanted = wantedStamp(folder);
  console.error("Installing packages, once …");
  if (!runNpm(folder, ["ci"]) && !runNpm(folder, ["install", "--no-save"])) {
    throw new Error(`npm could not install the packages of ${folder}; its own words are above.`);
  }
  writeFileSync(join(folder, STAMP), wanted);
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
