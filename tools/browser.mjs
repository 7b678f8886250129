import { existsSync, mkdirSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { chmod, readFile } from "node:fs/promises";
import { createReadStream, createWriteStream } from "node:fs";
import { delimiter, dirname, join } from "node:path";
import { pipeline } from "node:stream/promises";
import { fileURLToPath } from "node:url";
import { brotliDecompressSync, createBrotliDecompress } from "node:zlib";
import { ensurePackages } from "./ensure.mjs";
import { readTar } from "./tar.mjs";

/**
 * @typedef {object} Browser
 * @property {string} executablePath
 * @property {Record<string, string>} env
 * @property {string[]} args
 * @property {"variable" | "path" | "driver" | "package"} found
 */

const VARIABLES = ["NIGHTSPAN_BROWSER", "CHROME_PATH"];
const NAMES = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "microsoft-edge"];
const PLACES = {
  darwin: [
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
    "/Applications/Chromium.app/Contents/MacOS/Chromium",
    "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
  ],
  win32: ["PROGRAMFILES", "PROGRAMFILES(X86)", "LOCALAPPDATA"].flatMap((name) => {
    const base = process.env[name];
    if (base === undefined) return [];
    return [
      join(base, "Google/Chrome/Application/chrome.exe"),
      join(base, "Microsoft/Edge/Application/msedge.exe"),
    ];
  }),
};
const FLAGS = [
  "--no-sandbox",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--use-gl=angle",
  "--use-angle=swiftshader",
  "--enable-unsafe-swiftshader",
];
const CARRIED = join(dirname(fileURLToPath(import.meta.url)), "browser");
const HELP = `No Chromium was found. Install one (apt-get install chromium), or set ${VARIABLES[0]} to its path.`;

/**
 * The Chromium that browser tests drive: a variable, the PATH, the driver's own, else one carried by a package.
 *
 * @returns {Promise<Browser>}
 */
export async function findBrowser() {
  const named = fromVariable(process.env);
  if (named !== undefined) return browser(named, "variable");
  const installed = onPath(process.env["PATH"] ?? "") ?? usualPlaces().find((path) => existsSync(path));
  if (installed !== undefined) return browser(installed, "path");
  const driver = await driversOwn();
  if (driver !== undefined) return browser(driver, "driver");
  if (process.platform !== "linux" || process.arch !== "x64") throw new Error(HELP);
  return carried();
}

/**
 * @param {Readonly<Record<string, string | undefined>>} env
 * @returns {string | undefined}
 */
export function fromVariable(env) {
  for (const name of VARIABLES) {
    const path = env[name];
    if (path === undefined || path === "") continue;
    if (!existsSync(path)) throw new Error(`${name} is set to ${path}, and there is no such file.`);
    return path;
  }
  return undefined;
}

/**
 * @param {string} path  a PATH variable
 * @returns {string | undefined}
 */
export function onPath(path) {
  const folders = path.split(delimiter).filter((folder) => folder !== "");
  return NAMES.flatMap((name) => folders.map((folder) => join(folder, name))).find((file) =>
    existsSync(file),
  );
}

function usualPlaces() {
  return process.platform === "darwin" || process.platform === "win32" ? PLACES[process.platform] : [];
}

async function driversOwn() {
  const { chromium } = await import("playwright-core");
  const path = chromium.executablePath();
  return path !== "" && existsSync(path) ? path : undefined;
}

async function carried() {
  ensurePackages(CARRIED);
  const home = join(CARRIED, "node_modules", ".chromium");
  if (!existsSync(join(home, ".done"))) await unpack(home);
  const library = [join(home, "lib"), process.env["LD_LIBRARY_PATH"]].filter((path) => path !== undefined);
  return browser(join(home, "chromium"), "package", { LD_LIBRARY_PATH: library.join(delimiter) });
}

/**
 * Unpacks into a folder of its own and moves it into place whole, so that two runs at once do no harm.
 *
 * @param {string} home
 */
async function unpack(home) {
  const packed = join(CARRIED, "node_modules", "@sparticuz", "chromium", "bin");
  const fresh = `${home}-${process.pid}`;
  rmSync(fresh, { recursive: true, force: true });
  mkdirSync(fresh, { recursive: true });
  const executable = join(fresh, "chromium");
  await pipeline(
    createReadStream(join(packed, "chromium.br")),
    createBrotliDecompress(),
    createWriteStream(executable),
  );
  await chmod(executable, 0o755);
  for (const name of ["al2023.tar.br", "swiftshader.tar.br"]) {
    for (const { name: file, content } of readTar(brotliDecompressSync(await readFile(join(packed, name))))) {
      mkdirSync(dirname(join(fresh, file)), { recursive: true });
      writeFileSync(join(fresh, file), content, { mode: 0o755 });
    }
  }
  writeFileSync(join(fresh, ".done"), "");
  if (existsSync(join(home, ".done"))) rmSync(fresh, { recursive: true });
  else {
    rmSync(home, { recursive: true, force: true });
    renameSync(fresh, home);
  }
}

/**
 * @param {string} executablePath
 * @param {Browser["found"]} found
 * @param {Record<string, string>} [extra]
 * @returns {Browser}
 */
function browser(executablePath, found, extra = {}) {
  const own = Object.entries(process.env).flatMap(([name, value]) =>
    value === undefined ? [] : [[name, value]],
  );
  return { executablePath, found, env: { ...Object.fromEntries(own), ...extra }, args: [...FLAGS] };
}
