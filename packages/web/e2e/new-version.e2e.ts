import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { serve } from "../../../tools/serve.mjs";
import { builtApp, startBrowser, waitUntilKept } from "./app.ts";

describe("a new version", () => {
  let browser: Browser;
  let page: Page;
  let folder: string;
  let server: Awaited<ReturnType<typeof serve>>;
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), "nightspan-"));
    cpSync(await builtApp(), folder, { recursive: true });
    server = await serve(folder);
    browser = await startBrowser();
    page = await browser.newPage();
    await page.goto(server.url);
    await page.waitForSelector(".door");
    await waitUntilKept(page);
  });
  afterAll(async () => {
    await browser.close();
    await server.close();
    rmSync(folder, { recursive: true });
  });

  /** The same app under another name of its cache: what one changed byte of any file makes. */
  function release(title: string): void {
    const worker = join(folder, "sw.js");
    writeFileSync(worker, readFileSync(worker, "utf8").replace(/[0-9a-f]{16}/, "feedfeedfeedfeed"));
    const index = join(folder, "index.html");
    writeFileSync(
      index,
      readFileSync(index, "utf8").replace("<title>Nightspan</title>", `<title>${title}</title>`),
    );
  }

  it("is told of, and does not take over by itself", async () => {
    release("Nightspan, newer");
    await page.reload();
    await page.getByText("A new version is here.").waitFor();
    expect(await page.title()).toBe("Nightspan");
    await page.reload();
    await page.getByText("A new version is here.").waitFor();
    expect(await page.title()).toBe("Nightspan");
  });

  it("takes over when the reader says so, and the old one's files go", async () => {
    await page.getByRole("button", { name: "Use it now" }).click();
    await page.waitForFunction(() => document.title === "Nightspan, newer");
    await page.waitForSelector(".door");
    expect(await page.evaluate(() => caches.keys())).toEqual(["nightspan-feedfeedfeedfeed"]);
    expect(await page.getByText("A new version is here.").count()).toBe(0);
  });
});
