import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { join } from "node:path";
import { buildApp } from "./build.mjs";
import { runSource } from "./run.mjs";
import { serve } from "./serve.mjs";
import { ROOT } from "./source-files.mjs";

const PORT = 4173;
const DEMO = join("examples", "demo.camp.json");

/** Plans the demo camp, builds the app and serves it: what `npm start` shows. */
async function main() {
  console.log(`Planning ${DEMO}; its files go to out/`);
  const code = runSource([
    join("packages", "cli", "src", "main.ts"),
    "plan",
    DEMO,
    "--out",
    "out",
    "--force",
  ]);
  // 1 is a plan that says "do not hang" or leaves somebody without a berth: an answer, not a fault.
  if (code > 1) {
    process.exitCode = code;
    return;
  }
  const app = await buildApp();
  const { url } = await serveOnFreePort(app);
  console.log(`\nThe app is at ${url}  (Ctrl-C ends it)`);
  if (onDesktop()) openPage(url);
}

/** @param {string} folder */
async function serveOnFreePort(folder) {
  try {
    return await serve(folder, { port: PORT });
  } catch {
    return serve(folder, { port: 0 });
  }
}

function onDesktop() {
  const { CI, DISPLAY, WAYLAND_DISPLAY } = process.env;
  if (process.stdout.isTTY !== true || CI !== undefined) return false;
  if (process.platform === "darwin" || process.platform === "win32") return true;
  return (DISPLAY ?? WAYLAND_DISPLAY ?? "") !== "" && existsSync("/usr/bin/xdg-open");
}

/** @param {string} url */
function openPage(url) {
  const command = { darwin: "open", win32: "explorer" }[String(process.platform)] ?? "xdg-open";
  const opener = spawn(command, [url], { stdio: "ignore", detached: true });
  opener.on("error", () => undefined);
  opener.unref();
}

process.chdir(ROOT);
await main();
