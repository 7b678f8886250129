import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { beforeAll, describe, expect, it } from "vitest";
import { builtApp } from "./app.ts";

const INITIAL_GZIP_LIMIT = 200_000;

describe("the built app", () => {
  let dist: string;
  beforeAll(async () => {
    dist = await builtApp();
  });

  /** The scripts that the first view waits for: those of the page, and all that they import at once. */
  function initialScripts(): readonly string[] {
    const page = readFileSync(join(dist, "index.html"), "utf8");
    const wanted = [...page.matchAll(/(?:src|href)="\.\/(assets\/[^"]+\.js)"/g)].map(
      ([, path]) => path ?? "",
    );
    const seen = new Set<string>();
    while (wanted.length > 0) {
      const path = wanted.pop();
      if (path === undefined || seen.has(path)) continue;
      seen.add(path);
      const code = readFileSync(join(dist, path), "utf8");
      const imports = code.matchAll(/(?:^|[;}\s])(?:import|export)[^"'`();]*["'`]\.\/([^"'`]+\.js)["'`]/g);
      for (const [, name] of imports) wanted.push(`assets/${name ?? ""}`);
    }
    return [...seen];
  }

  it("loads at most 200 kB of script, compressed, before the first view", () => {
    const scripts = initialScripts();
    expect(scripts.length).toBeGreaterThan(0);
    const bytes = scripts.map((path) => gzipSync(readFileSync(join(dist, path)), { level: 9 }).length);
    expect(bytes.reduce((sum, size) => sum + size, 0)).toBeLessThanOrEqual(INITIAL_GZIP_LIMIT);
  });

  it("leaves the solver, the example and the many Chinese faces out of the first load", () => {
    const initial = initialScripts().map((path) => readFileSync(join(dist, path), "utf8"));
    for (const code of initial) {
      expect(code).not.toContain("highs.wasm");
      expect(code).not.toContain("Withyscar");
    }
  });

  it("keeps everything that it needs offline in the service worker's list, and names no file that is not there", () => {
    const worker = readFileSync(join(dist, "sw.js"), "utf8");
    const all = readdirSync(join(dist, "assets"));
    const scripts = all.filter((name) => /\.(js|css|wasm)$/.test(name));
    for (const name of scripts) expect(worker).toContain(`assets/${name}`);
    for (const name of all.filter((file) => /^atkinson.*normal.*woff2$/.test(file))) {
      expect(worker).toContain(`assets/${name}`);
    }
    const listed = [...worker.matchAll(/\\"(assets\/[^"\\]+)\\"/g)].map(([, path]) => path ?? "");
    expect(listed.length).toBeGreaterThan(scripts.length);
    for (const path of listed) expect(all).toContain(path.slice("assets/".length));
    expect(worker).not.toContain("__NIGHTSPAN_");
  });

  it("has icons and a manifest that name each other", () => {
    const manifest: unknown = JSON.parse(readFileSync(join(dist, "nightspan.webmanifest"), "utf8"));
    const text = JSON.stringify(manifest);
    for (const icon of ["icon.svg", "icon-192.png", "icon-512.png", "icon-maskable-512.png"]) {
      expect(text).toContain(icon);
      expect(readFileSync(join(dist, icon)).length).toBeGreaterThan(200);
    }
  });
});
