import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { openExample, show, visitFor } from "./app.ts";

describe("drawing on the ground", () => {
  const now = visitFor(undefined, ({ page }) => openExample(page));
  const press = (name: string) => now.page.getByRole("button", { name, exact: true }).first().click();

  it("adds a tree by a press, another by steps and bearing, and takes one back", async () => {
    await show(now.page, "#/ground");
    const trees = now.page.locator(".drawn-tree");
    await trees.first().waitFor();
    const before = await trees.count();
    await press("Tree");
    await now.page.locator(".ground-map .map-frame").click({ position: { x: 12, y: 12 } });
    expect(await trees.count()).toBe(before + 1);
    await now.page.getByText("By numbers, without the map").click();
    await now.page.getByLabel("Steps", { exact: true }).fill("9");
    await now.page.getByLabel("Bearing from north, degrees").fill("200");
    await press("Put it there");
    expect(await trees.count()).toBe(before + 2);
    await press("Undo");
    expect(await trees.count()).toBe(before + 1);
    await now.page.waitForSelector(".stale, .working", { state: "attached" });
  });

  it("draws a fire and a path, and saves them all in the camp's file", async () => {
    const marks = now.page.locator(".drawn-mark");
    const before = await marks.count();
    await press("Fire");
    await now.page.locator(".ground-map .map-frame").click({ position: { x: 40, y: 200 } });
    await press("Path");
    for (const y of [60, 120, 180]) {
      await now.page.waitForTimeout(50);
      await now.page.locator(".ground-map .map-frame").click({ position: { x: 20, y } });
    }
    await press("Draw it so");
    expect(await marks.count()).toBe(before + 2);
    await press("Camp");
    const [download] = await Promise.all([
      now.page.waitForEvent("download"),
      now.page.getByRole("button", { name: "Save a copy of the camp" }).click(),
    ]);
    const saved = readFileSync(await download.path(), "utf8");
    expect(saved).toMatch(/"girth_cm": 94/);
    expect(saved).toMatch(/"LineString"/);
    expect(now.complaints).toEqual([]);
  });
});
