import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { chromium, type Browser, type BrowserContext, type Page } from "playwright-core";
import { afterAll, beforeAll } from "vitest";
import { findBrowser } from "../../../tools/browser.mjs";
import { buildApp } from "../../../tools/build.mjs";
import { serve } from "../../../tools/serve.mjs";

export const ROOT = join(import.meta.dirname, "../../..");
export const PHONE = { width: 390, height: 844 };
export const DESK = { width: 1280, height: 900 };

const STAMP = join(ROOT, "node_modules/.cache/nightspan-app-built");

/** The built app's folder: built once in a run, however many files test it. */
export async function builtApp(): Promise<string> {
  const run = String(process.ppid);
  const dist = join(ROOT, "packages/web/dist");
  if (existsSync(STAMP) && readFileSync(STAMP, "utf8") === run && existsSync(dist)) return dist;
  await buildApp();
  mkdirSync(dirname(STAMP), { recursive: true });
  writeFileSync(STAMP, run);
  return dist;
}

export interface Visit {
  readonly browser: Browser;
  readonly context: BrowserContext;
  readonly page: Page;
  readonly url: string;
  /** What the page or its workers complained of: errors, and breaches of the page's policy. */
  readonly complaints: readonly string[];
  /** Takes the server away, as a wood does. */
  readonly goOffline: () => Promise<void>;
  readonly end: () => Promise<void>;
}

export async function startBrowser(): Promise<Browser> {
  const { executablePath, env, args } = await findBrowser();
  return chromium.launch({ executablePath, env, args });
}

/**
 * A first visit: an empty browser, a server of its own, and the strict policy on every file.
 * Without `keeping`, the device keeps no copy of the app, so that a test can hold a file back.
 */
export async function visit(browser: Browser, viewport = PHONE, keeping = true): Promise<Visit> {
  const server = await serve(await builtApp());
  const serviceWorkers = keeping ? "allow" : "block";
  const context = await browser.newContext({ viewport, locale: "en-GB", serviceWorkers });
  const page = await context.newPage();
  page.setDefaultTimeout(10_000);
  const complaints: string[] = [];
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("console", (message) => {
    if (message.type() === "error" || /security policy/i.test(message.text()))
      complaints.push(message.text());
  });
  await page.addInitScript(
    `addEventListener("securitypolicyviolation", (event) => console.error("policy: " + event.violatedDirective));`,
  );
  await page.goto(server.url);
  await page.waitForSelector(".door");
  let serving = true;
  const close = async (): Promise<void> => {
    if (serving) await server.close();
    serving = false;
  };
  return {
    browser,
    context,
    page,
    url: server.url,
    complaints,
    goOffline: async () => {
      await close();
      await context.setOffline(true);
    },
    end: async () => {
      await context.close();
      await close();
    },
  };
}

/** One visit for all tests of a block, ended with it; `begin` comes before the first test. */
export function visitFor(viewport = PHONE, begin?: (visit: Visit) => Promise<void>): Visit {
  let browser: Browser | undefined;
  let now: Visit | undefined;
  beforeAll(async () => {
    browser = await startBrowser();
    now = await visit(browser, viewport);
    await begin?.(now);
  });
  afterAll(async () => {
    await now?.end();
    await browser?.close();
  });
  const ready = (): Visit => {
    if (now === undefined) throw new Error("the visit has not begun");
    return now;
  };
  return {
    get browser() {
      return ready().browser;
    },
    get context() {
      return ready().context;
    },
    get page() {
      return ready().page;
    },
    get url() {
      return ready().url;
    },
    get complaints() {
      return ready().complaints;
    },
    goOffline: () => ready().goOffline(),
    end: () => ready().end(),
  };
}

/** Waits until the service worker holds the whole app and answers for it. */
export async function waitUntilKept(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller !== null) return;
    await new Promise((resolve) => {
      navigator.serviceWorker.addEventListener("controllerchange", resolve, { once: true });
    });
  });
}

/** Opens the demo camp and waits for its map. */
export async function openExample(page: Page): Promise<void> {
  await page.getByRole("button", { name: "See an example" }).click();
  await page.waitForSelector(".map-sheet .ns-berth");
  await untilPlanned(page);
}

/** Waits until the answer shown is that of the camp as it is now. */
export async function untilPlanned(page: Page): Promise<void> {
  await page.waitForTimeout(200);
  await page.waitForSelector(".stale, .working", { state: "detached" });
}

export async function show(page: Page, hash: string): Promise<void> {
  await page.evaluate((to) => {
    location.hash = to;
  }, hash);
  await page.waitForTimeout(100);
  await page.waitForSelector(".page-coming", { state: "detached" });
}
