import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { fileFor, POLICY, serve } from "./serve.mjs";

let folder = "";
let server: Awaited<ReturnType<typeof serve>> | undefined;
const at = (path: string) => new URL(path, server?.url);

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "nightspan-serve-"));
  mkdirSync(join(folder, "app"));
  writeFileSync(join(folder, "secret.txt"), "secret");
  for (const name of ["index.html", "a.js", "b.css", "c.wasm", "d.woff2", "e.webmanifest", "f.svg"]) {
    writeFileSync(join(folder, "app", name), name);
  }
  server = await serve(join(folder, "app"));
});

afterAll(async () => {
  await server?.close();
  rmSync(folder, { recursive: true });
});

describe("the small server", () => {
  it.each([
    ["/", "text/html; charset=utf-8"],
    ["/index.html?from=link", "text/html; charset=utf-8"],
    ["/a.js", "text/javascript; charset=utf-8"],
    ["/b.css", "text/css; charset=utf-8"],
    ["/c.wasm", "application/wasm"],
    ["/d.woff2", "font/woff2"],
    ["/e.webmanifest", "application/manifest+json; charset=utf-8"],
    ["/f.svg", "image/svg+xml; charset=utf-8"],
  ])("sends %s as %s, with the policy", async (path, type) => {
    const answer = await fetch(at(path));
    expect(answer.status).toBe(200);
    expect(answer.headers.get("content-type")).toBe(type);
    expect(answer.headers.get("content-security-policy")).toBe(POLICY);
    await answer.text();
  });

  it("allows no inline script or style, no eval and no other host", () => {
    expect(POLICY).not.toMatch(/unsafe-inline|'unsafe-eval'|https?:|\*/);
  });

  it("answers 404 for what is absent and for a folder, 405 for what is sent to it", async () => {
    expect((await fetch(at("/absent"))).status).toBe(404);
    expect((await fetch(at("/index.html/"))).status).toBe(404);
    expect((await fetch(at("/"), { method: "POST", body: "x" })).status).toBe(405);
  });

  it.each(["/../secret.txt", "/%2e%2e/secret.txt", "/..%2fsecret.txt", "/%", "/a%00.js"])(
    "keeps %s inside its folder",
    async (path) => {
      expect(await status(path)).toBe(404);
    },
  );

  it("maps addresses to files below its folder only", () => {
    expect(fileFor("/srv/app", "/x/y.js?q")).toBe(join("/srv/app", "x", "y.js"));
    expect(fileFor("/srv/app", "/../app-two/y.js")).toBeUndefined();
  });
});

/** Sends the path as it stands; fetch would tidy the dots away. */
function status(path: string): Promise<number | undefined> {
  return new Promise((resolve, reject) => {
    request({ host: "127.0.0.1", port: at("/").port, path }, (answer) => {
      answer.resume();
      resolve(answer.statusCode);
    })
      .on("error", reject)
      .end();
  });
}
