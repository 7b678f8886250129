import { createHash } from "node:crypto";
import { existsSync, readFileSync, readdirSync } from "node:fs";
import { join, relative } from "node:path";
import type { Plugin } from "vite";

const WORKER = "sw.js";
/** Fonts of other scripts are large and many: they are kept when first used. */
const ON_FIRST_USE = /\/(?:noto-sans|.*-italic).*\.woff2?$/;

/**
 * Builds the service worker and hands it the list of everything the app needs offline.
 *
 * The cache's name is a digest of all outputs, so one changed byte makes a new version.
 */
export function precachePlugin(): Plugin {
  let publicDir = "";
  return {
    name: "nightspan-precache",
    apply: "build",
    enforce: "post",
    configResolved(config) {
      publicDir = config.publicDir;
    },
    buildStart() {
      this.emitFile({
        type: "chunk",
        id: join(import.meta.dirname, "../src/sw/service-worker.ts"),
        fileName: WORKER,
      });
    },
    generateBundle: {
      order: "post",
      handler(_options, bundle) {
        const worker = bundle[WORKER];
        if (worker?.type !== "chunk") throw new Error(`${WORKER} was not built`);
        const digest = createHash("sha256");
        const files = ["./"];
        for (const [name, output] of Object.entries(bundle).sort(([a], [b]) => (a < b ? -1 : 1))) {
          digest.update(name).update(output.type === "chunk" ? output.code : output.source);
          if (name !== WORKER && name !== "index.html" && !ON_FIRST_USE.test(`/${name}`)) files.push(name);
        }
        for (const file of filesBelow(publicDir)) {
          digest.update(file).update(readFileSync(join(publicDir, file)));
          files.push(file);
        }
        const version = digest.digest("hex").slice(0, 16);
        worker.code = worker.code
          .replace("__NIGHTSPAN_VERSION__", version)
          .replace(/(["'`])__NIGHTSPAN_FILES__\1/, () => JSON.stringify(JSON.stringify(files)));
      },
    },
  };
}

function filesBelow(folder: string): string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).replaceAll("\\", "/"))
    .sort();
}
