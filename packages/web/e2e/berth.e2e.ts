import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openExample, show, startBrowser, untilPlanned, visit, type Visit } from "./app.ts";

describe("one berth", () => {
  let browser: Browser;
  let now: Visit;
  beforeAll(async () => {
    browser = await startBrowser();
    now = await visit(browser);
    await openExample(now.page);
    await show(now.page, "#/berth/3");
  });
  afterAll(async () => {
    await now.end();
    await browser.close();
  });

  const window = () => now.page.locator(".span-window p").textContent();

  it("says between which spans it could hang, and what ends them at either side", async () => {
    expect(await window()).toMatch(
      /^(About )?\d\.\d.* apart: nearer, .+; farther, .+\. Here they stand \d\.\d\d.m apart\.$/,
    );
  });

  it("keeps mechanics that break no rule behind why", async () => {
    const behind = now.page.locator(".berth-words > .why");
    expect(await behind.getAttribute("open")).toBeNull();
    const shown = await now.page.locator(".berth-words > .findings > .finding").count();
    const kept = await behind.locator(".finding").count();
    expect(shown).toBeGreaterThan(0);
    expect(kept).toBeGreaterThan(0);
    expect(await behind.locator("summary").textContent()).toContain(String(kept));
  });

  it("says what a house cap costs, once there is one that binds", async () => {
    expect(await now.page.locator(".cap-cost").count()).toBe(0);
    await show(now.page, "#/rules");
    await now.page.getByLabel("Strap at most at").fill("1.6");
    await untilPlanned(now.page);
    for (let id = 1; id <= 14; id += 1) {
      await show(now.page, `#/berth/${id}`);
      if ((await now.page.locator(".cap-cost").count()) > 0) break;
    }
    expect(await now.page.locator(".cap-cost").textContent()).toMatch(/straps? hang|pull/);
  });

  it("complained of nothing", () => {
    expect(now.complaints).toEqual([]);
  });
});
