import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { AxeResults } from "axe-core";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { DESK, openExample, PHONE, ROOT, show, visitFor } from "./app.ts";

const AXE = readFileSync(join(ROOT, "node_modules/axe-core/axe.min.js"), "utf8");
const VIEWS = [
  "#/",
  "#/start",
  "#/tonight/look",
  "#/tonight/steps",
  "#/tonight/stature",
  "#/map",
  "#/berth/2",
  "#/berth/2/above",
  "#/berth/2/warm",
  "#/spot/2",
  "#/cards",
  "#/cards/pocket",
  "#/cards/papers",
  "#/sleepers",
  "#/ground",
  "#/kit",
  "#/kit/dealing",
  "#/kit/packing",
  "#/kit/cuts",
  "#/night",
  "#/rules",
  "#/log",
  // Last, for it takes a camp of its own in hand.
  "#/store",
] as const;

/** Serious and critical faults, each with the first element that has it. */
async function faults(page: Page): Promise<readonly string[]> {
  const results = await page.evaluate<AxeResults>(
    "axe.run(document, { resultTypes: ['violations'], runOnly: ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa', 'best-practice'] })",
  );
  return results.violations
    .filter(({ impact }) => impact === "serious" || impact === "critical")
    .map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 160)}`);
}

describe.each([
  ["phone", PHONE],
  ["desk", DESK],
] as const)("for everybody, on a %s", (_name, viewport) => {
  const now = visitFor(viewport, async (visit) => {
    await openExample(visit.page);
    await visit.page.evaluate(AXE);
  });

  it.each(["light", "dark", "red-night"])("has no serious fault on any view in %s", async (theme) => {
    await now.page.evaluate((chosen) => {
      document.documentElement.dataset["theme"] = chosen;
    }, theme);
    await show(now.page, "#/");
    await openExample(now.page);
    const found: Record<string, readonly string[]> = {};
    for (const view of VIEWS) {
      await show(now.page, view);
      await now.page.evaluate(() => {
        for (const part of document.querySelectorAll("details")) part.open = true;
      });
      const told = await faults(now.page);
      if (told.length > 0) found[view] = told;
    }
    expect(found).toEqual({});
  });
});

describe("by keyboard alone", () => {
  const now = visitFor(DESK);

  /** Goes on with Tab until the thing of that name has the focus, then presses Enter. */
  async function reach(name: RegExp): Promise<void> {
    for (let tab = 0; tab < 60; tab += 1) {
      await now.page.keyboard.press("Tab");
      const focused = await now.page.evaluate(() => {
        const element = document.activeElement;
        return element === null ? "" : (element.getAttribute("aria-label") ?? element.textContent);
      });
      if (name.test(focused)) {
        await now.page.keyboard.press("Enter");
        await now.page.waitForTimeout(300);
        return;
      }
    }
    throw new Error(`no Tab leads to ${String(name)}`);
  }

  it("goes from the first screen to the map, a berth and its card", async () => {
    await reach(/^See an example/);
    await now.page.waitForSelector(".map-sheet .ns-berth");
    await reach(/Ibrahim/);
    await reach(/^Open berth/);
    await now.page.waitForSelector(".berth-picture svg");
    await reach(/^Open the card/);
    await now.page.waitForSelector(".card svg");
  });

  it("moves the map with arrows and changes its size with plus and minus", async () => {
    await show(now.page, "#/map");
    const frame = now.page.locator(".map-frame");
    await frame.focus();
    const berth = now.page.locator('.map-sheet circle[data-ref="berth/3"]').first();
    const before = await berth.boundingBox();
    await now.page.keyboard.press("ArrowRight");
    await now.page.waitForTimeout(150);
    const after = await berth.boundingBox();
    expect((after?.x ?? 0) - (before?.x ?? 0)).toBeCloseTo(-80, 0);
    await now.page.keyboard.press("+");
    await now.page.waitForTimeout(150);
    expect(await berth.boundingBox()).not.toEqual(after);
  });

  it("shows where the focus is", async () => {
    await now.page.keyboard.press("Tab");
    const outline = await now.page.evaluate(() => {
      const element = document.activeElement;
      return element === null ? "" : getComputedStyle(element).outlineWidth;
    });
    expect(outline).toBe("3px");
  });

  it("skips to the content", async () => {
    await now.page.reload();
    await now.page.waitForSelector(".camp");
    await now.page.keyboard.press("Tab");
    await now.page.keyboard.press("Enter");
    expect(await now.page.evaluate(() => document.activeElement?.id)).toBe("content");
  });
});
