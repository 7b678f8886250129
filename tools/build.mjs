import { chmod } from "node:fs/promises";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { ROOT } from "./source-files.mjs";

const CLI = join(ROOT, "packages", "cli");
const WEB = join(ROOT, "packages", "web");

/**
 * Bundles the command line into one file; the solver, the PDF writer and the fonts stay packages beside it.
 *
 * @param {string} [outfile]
 * @returns {Promise<string>} the file
 */
export async function buildCli(outfile = join(CLI, "dist", "nightspan.mjs")) {
  const { build } = await import("esbuild");
  await build({
    absWorkingDir: CLI,
    entryPoints: [join("src", "main.ts")],
    outfile,
    bundle: true,
    minifySyntax: true,
    platform: "node",
    format: "esm",
    target: "node20",
    conditions: ["camp-source"],
    external: ["highs", "pdfkit", "fontkit", "dejavu-fonts-ttf"],
    banner: {
      js: '#!/usr/bin/env node\nimport { createRequire as requireMaker } from "node:module";\nconst require = requireMaker(import.meta.url);',
    },
    logLevel: "warning",
  });
  await chmod(outfile, 0o755);
  return outfile;
}

/** Notices of the bundler that ask nothing of anybody: the solver names a module of Node that the page never reaches. */
const NO_FAULT = /externalized for browser compatibility|PLUGIN_TIMINGS/;

/**
 * Builds the app as people get it, whatever the environment says: a test run sets NODE_ENV, and the build would follow.
 *
 * @returns {Promise<string>} the folder to serve
 */
export async function buildApp() {
  const { build, createLogger } = await import("vite");
  const logger = createLogger("warn");
  const { warn } = logger;
  logger.warn = (message, options) => {
    if (!NO_FAULT.test(message)) warn(message, options);
  };
  const before = process.env["NODE_ENV"];
  process.env["NODE_ENV"] = "production";
  try {
    await build({ root: WEB, customLogger: logger, logLevel: "warn" });
  } finally {
    if (before === undefined) delete process.env["NODE_ENV"];
    else process.env["NODE_ENV"] = before;
  }
  return join(WEB, "dist");
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  console.log(`command line: ${await buildCli()}`);
  console.log(`app: ${await buildApp()}`);
}
