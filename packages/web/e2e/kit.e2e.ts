import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Locator } from "playwright-core";
import { describe, expect, it } from "vitest";
import { DESK, openExample, ROOT, show, untilPlanned, visitFor, waitUntilKept } from "./app.ts";

describe("the store", () => {
  const now = visitFor(DESK, async ({ page }) => {
    await openExample(page);
    await show(page, "#/kit");
  });

  const saved = async (): Promise<{
    readonly kit: readonly unknown[];
    readonly sleepers: readonly unknown[];
  }> => {
    const download = now.page.waitForEvent("download");
    await now.page.getByRole("button", { name: "Camp", exact: true }).click();
    await now.page.getByRole("button", { name: "Save a copy of the camp" }).click();
    const file: unknown = JSON.parse(readFileSync(await (await download).path(), "utf8"));
    await now.page.getByRole("button", { name: "Close" }).click();
    const listAt = (name: string): readonly unknown[] => {
      const list: unknown = Reflect.get(Object(file), name);
      return Array.isArray(list) ? list : [];
    };
    return { kit: listAt("kit"), sleepers: listAt("sleepers") };
  };

  /** Slowly enough for the browser to take it for a drag. */
  async function drag(what: Locator, where: Locator): Promise<void> {
    const [from, to] = [await what.boundingBox(), await where.boundingBox()];
    if (from === null || to === null) throw new Error("it cannot be dragged: one of the two is not shown");
    await now.page.mouse.move(from.x + from.width / 2, from.y + from.height / 2);
    await now.page.mouse.down();
    await now.page.mouse.move(from.x + from.width / 2 + 20, from.y + from.height / 2 + 10, { steps: 4 });
    await now.page.mouse.move(to.x + to.width / 2, to.y + to.height / 2, { steps: 6 });
    await now.page.mouse.up();
  }

  it("stands on shelves, a line for each thing, with how many and how many are dealt", async () => {
    const example: unknown = JSON.parse(readFileSync(join(ROOT, "examples/demo.camp.json"), "utf8"));
    const lines: unknown = Reflect.get(Object(example), "kit");
    expect(await now.page.locator(".on-shelf").count()).toBe(Array.isArray(lines) ? lines.length : NaN);
    const long = now.page.getByRole("button", { name: "Open hammock-long, 4" });
    expect(await long.textContent()).toMatch(/4hammock-long\d of 4 dealt/);
    const frayed = now.page.getByRole("button", { name: /^Open hammock-frayed/ });
    expect(await frayed.textContent()).toContain("set aside");
  });

  it("keeps the log of an inspection round, and what is set aside is dealt no more", async () => {
    await now.page.getByRole("button", { name: /^Open webbing/ }).click();
    await now.page.getByLabel("What was found").fill("edge cut on two");
    await now.page.getByLabel("Who looks").fill("Ilse");
    await now.page.waitForTimeout(450);
    await now.page.getByRole("button", { name: "Set it aside" }).click();
    await untilPlanned(now.page);
    expect(await now.page.locator(".log-line").first().textContent()).toMatch(
      /Set aside.*edge cut on two.*Ilse/,
    );
    await now.page.getByRole("button", { name: "Close" }).click();
    const webbing = now.page.getByRole("button", { name: /^Open webbing/ });
    expect(await webbing.textContent()).toContain("set aside");
    const line = (await saved()).kit.find((item) => Reflect.get(Object(item), "id") === "webbing");
    expect(line).toMatchObject({
      state: "quarantined",
      inspections: [{ by: "Ilse", finding: "edge cut on two", action: "quarantine" }],
    });
    await show(now.page, "#/kit/dealing");
    expect(await now.page.locator(".deal-slot", { hasText: "webbing" }).count()).toBe(0);
    await now.page.keyboard.press("Control+z");
    await untilPlanned(now.page);
  });

  it("keeps a thing for somebody by drag, and by key, and lets it go again", async () => {
    await show(now.page, "#/kit/dealing");
    const place = now.page.getByRole("button", { name: /^tarp of Ibrahim/ });
    // The page begins at its top once it is drawn; only then does it stay where it is scrolled to.
    await now.page.waitForTimeout(600);
    await place.evaluate((button) => button.scrollIntoView({ block: "center" }));
    await drag(now.page.locator(".strip-item", { hasText: "tarp-wide" }), place);
    await untilPlanned(now.page);
    expect(await place.getAttribute("aria-label")).toContain("tarp-wide, kept");
    const ibrahim = (await saved()).sleepers.find((one) => /Ibrahim/.test(JSON.stringify(one)));
    expect(ibrahim).toMatchObject({ kit: { tarp: "tarp-wide" } });
    await place.focus();
    await now.page.keyboard.press("Enter");
    await now.page.getByRole("button", { name: "Whatever the plan deals" }).press("Enter");
    await untilPlanned(now.page);
    expect(await place.getAttribute("aria-label")).not.toContain("kept");
  });

  it("ticks what is packed, and still knows after a reload with the server gone", async () => {
    await show(now.page, "#/kit/packing");
    const box = now.page.getByLabel("packed").first();
    await box.check();
    expect(await now.page.locator(".packing > .lead").textContent()).toMatch(/^1 of \d+ lines packed/);
    await waitUntilKept(now.page);
    await now.goOffline();
    await now.page.reload();
    await now.page.waitForSelector(".packing");
    expect(await now.page.getByLabel("packed").first().isChecked()).toBe(true);
  });

  it("unrolls the spools to cut from", async () => {
    await show(now.page, "#/kit/cuts");
    await now.page.waitForSelector(".cuts svg");
    expect(await now.page.locator(".cuts tbody tr").count()).toBeGreaterThan(0);
  });

  it("complained of nothing", () => {
    expect(now.complaints).toEqual([]);
  });
});
