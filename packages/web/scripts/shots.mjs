/**
 * Pictures of every view, to look at: `node packages/web/scripts/shots.mjs [folder of the built app] [pattern] [whole]`.
 * They go to out/shots. Each view is taken on a phone and on a desk, in light, dark and red by night; those whose
 * name fits the pattern, such as "kit-phone|night.*light", and with "whole" down to the foot of the page.
 */
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { chromium } from "playwright-core";
import { findBrowser } from "../../../tools/browser.mjs";
import { serve } from "../../../tools/serve.mjs";

/** @import { Page } from "playwright-core" */

const ROOT = join(import.meta.dirname, "../../..");
const OUT = join(ROOT, "out", "shots");
const SIZES = { phone: { width: 390, height: 844 }, desk: { width: 1280, height: 900 } };

/** @type {Record<string, (page: Page) => Promise<void>>} */
const VIEWS = {
  first: async (page) => go(page, "#/"),
  start: async (page) => go(page, "#/start"),
  "tonight-1-look": async (page) => go(page, "#/tonight/look"),
  "tonight-2-steps": async (page) => go(page, "#/tonight/steps"),
  "tonight-3-stature": async (page) => go(page, "#/tonight/stature"),
  "tonight-4-answer": async (page) => {
    await go(page, "#/tonight/stature");
    await page.getByRole("button", { name: "Show how to hang" }).click();
    await page.waitForSelector(".answer-sentences");
  },
  "tonight-ground": async (page) => go(page, "#/tonight/ground"),
  map: async (page) => go(page, "#/map"),
  "map-berth": async (page) => {
    await go(page, "#/map");
    await page.locator(".row-main").first().click();
  },
  "map-tree": async (page) => {
    await go(page, "#/map");
    const close = page.getByRole("button", { name: "Close" });
    if ((await close.count()) > 0) await close.click();
    await page.getByRole("button", { name: /^I am at/ }).click();
  },
  "map-without": async (page) => {
    // A second press at the same place within 400 ms is taken for a wet finger's echo.
    await page.waitForTimeout(450);
    await page.getByRole("button", { name: "Do without this tree" }).click();
    await page.getByRole("button", { name: /^Move as few/ }).waitFor({ timeout: 30_000 });
  },
  berth: async (page) => go(page, "#/berth/3"),
  "berth-above": async (page) => go(page, "#/berth/3/above"),
  "berth-warm": async (page) => go(page, "#/berth/3/warm"),
  "berth-why": async (page) => {
    await go(page, "#/berth/3/above");
    await page.locator(".berth-words .end").nth(2).scrollIntoViewIfNeeded();
    for (const part of await page.locator(".berth-words .end > .why > summary").all()) await part.click();
    await page.locator(".berth-words .end").nth(2).scrollIntoViewIfNeeded();
  },
  "spot-1-who": async (page) => onTheSpot(page, []),
  "spot-2-tell": async (page) => onTheSpot(page, ["I am alone", "Seat height", "My knees"]),
  "spot-3-number": async (page) => onTheSpot(page, ["I am alone", "Seat height", "Next"]),
  "spot-4-move": async (page) =>
    onTheSpot(page, ["I am alone", "Seat height", "Next", ...Array(4).fill("Less"), "It is so"]),
  "spot-5-other": async (page) =>
    onTheSpot(page, [
      "I am alone",
      "Seat height",
      "Next",
      ...Array(4).fill("Less"),
      "It is so",
      /^It will not/,
    ]),
  "spot-6-symptoms": async (page) => onTheSpot(page, ["Something bothers me"]),
  "spot-7-slides": async (page) => onTheSpot(page, ["Something bothers me", "Slides to the foot end"]),
  "spot-8-advice": async (page) => onTheSpot(page, ["Something bothers me", "A strap slips down its trunk"]),
  "spot-9-leave": async (page) => onTheSpot(page, ["I am alone", "Seat height", "Next", "It is so"]),
  cards: async (page) => go(page, "#/cards"),
  "cards-pocket": async (page) => go(page, "#/cards/pocket"),
  "cards-papers": async (page) => go(page, "#/cards/papers"),
  sleepers: async (page) => {
    await go(page, "#/sleepers");
    await page.locator("summary").nth(1).click();
  },
  ground: async (page) => go(page, "#/ground"),
  kit: async (page) => go(page, "#/kit"),
  "kit-item": async (page) => {
    await go(page, "#/kit");
    await page.getByRole("button", { name: /^Open bag-warm/ }).click();
  },
  "kit-dealing": async (page) => go(page, "#/kit/dealing"),
  "kit-keep": async (page) => {
    await go(page, "#/kit/dealing");
    await page.locator(".deal-slot").nth(3).click();
  },
  "kit-packing": async (page) => go(page, "#/kit/packing"),
  "kit-cuts": async (page) => go(page, "#/kit/cuts"),
  night: async (page) => go(page, "#/night"),
  log: async (page) => {
    await go(page, "#/log");
    await page.locator(".felt").nth(0).click();
    await page.locator(".felt").nth(5).click();
  },
  "map-place": async (page) => {
    await go(page, "#/map");
    const close = page.getByRole("button", { name: "Close" });
    if ((await close.count()) > 0) await close.click();
    await page.waitForTimeout(450);
    await page.locator(".sheet .row-main").nth(2).click();
    await page.getByRole("button", { name: "Put elsewhere" }).click();
    await page.waitForTimeout(450);
    await page.locator(".sheet .row-main").nth(5).click();
    await page.getByText(/Cost [0-9.]+, now|That cannot be/).waitFor();
  },
  rules: async (page) => go(page, "#/rules"),
  store: async (page) => {
    await go(page, "#/store");
    await page.waitForTimeout(900);
  },
  "store-shelves": async (page) => {
    await go(page, "#/store");
    await page.locator(".fit-shelves summary").click();
    await page.waitForTimeout(200);
  },
  menu: async (page) => {
    await go(page, "#/map");
    await page.getByRole("button", { name: "Camp", exact: true }).click();
    await page.waitForTimeout(300);
  },
};

/**
 * @param {Page} page
 * @param {(string | RegExp)[]} presses
 */
async function onTheSpot(page, presses) {
  await go(page, "#/berth/3");
  await page.getByRole("button", { name: "Check it on the spot" }).click();
  for (const name of presses) {
    await page.waitForTimeout(430);
    await page.getByRole("button", { name, exact: typeof name === "string" }).click();
  }
}

/**
 * @param {Page} page
 * @param {string} hash
 */
async function go(page, hash) {
  await page.evaluate(`location.hash = ${JSON.stringify(hash)}`);
  await page.waitForTimeout(250);
}

/**
 * @param {Page} page
 * @param {string} url
 * @param {string} theme
 */
async function openExample(page, url, theme) {
  const settings = JSON.stringify({ theme, looker: "Maren Ødegård" });
  await page.addInitScript(`localStorage.setItem("nightspan-settings", ${JSON.stringify(settings)})`);
  await page.goto(url);
  await page.getByRole("button", { name: "See an example" }).click();
  await page.waitForSelector(".ns-berth");
  await page.waitForTimeout(800);
}

async function main() {
  const [folder = join(ROOT, "packages/web/dist"), pattern = "", whole = ""] = process.argv.slice(2);
  const only = new RegExp(pattern);
  mkdirSync(OUT, { recursive: true });
  const { executablePath, env, args } = await findBrowser();
  const browser = await chromium.launch({ executablePath, env, args });
  const server = await serve(folder);
  for (const theme of ["light", "dark", "red-night"]) {
    for (const [size, viewport] of Object.entries(SIZES)) {
      const wanted = Object.entries(VIEWS).filter(([name]) => only.test(`${name}-${size}-${theme}`));
      if (wanted.length === 0) continue;
      const context = await browser.newContext({ viewport, serviceWorkers: "block" });
      const page = await context.newPage();
      page.setDefaultTimeout(5_000);
      page.on("pageerror", (error) => console.error(`${theme} ${size}: ${error.message}`));
      page.on("console", (message) => {
        if (message.type() === "error") console.error(`${theme} ${size}: ${message.text()}`);
      });
      await openExample(page, server.url, theme);
      for (const [name, show] of wanted) {
        const file = `${name}-${size}-${theme}`;
        await show(page).catch((error) => console.error(`${file}: ${error.message.split("\n")[0]}`));
        await page.screenshot({ path: join(OUT, `${file}.png`), fullPage: whole !== "" });
        if (name.startsWith("tonight-4")) await openExample(page, server.url, theme);
      }
      await context.close();
    }
  }
  await browser.close();
  await server.close();
}

await main();
