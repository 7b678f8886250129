import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { DESK, openExample, show, untilPlanned, visit, visitFor } from "./app.ts";
import { crowdedWood } from "./crowded-wood.ts";

describe("what goes wrong", () => {
  const now = visitFor(DESK, ({ page }) => openExample(page));

  async function openFile(page: Page, name: string, text: string): Promise<void> {
    await show(page, "#/");
    const chooser = page.waitForEvent("filechooser");
    await page.getByRole("button", { name: "Open a file" }).click();
    await (await chooser).setFiles({ name, mimeType: "application/json", buffer: Buffer.from(text) });
  }

  it("lists each fault of a bad file by its place, and keeps the camp", async () => {
    const bad = {
      format: "nightspan-camp/1",
      name: "",
      date: "14 May",
      sleepers: [{ id: "a", name: "A", stature_m: 17.5, mass_kg: -3 }],
      ground: { trees: [{ id: "t", x_m: "one", y_m: 2, dbh_cm: 0 }], position_error_m: -1 },
      night: { low_c: "cold" },
      kit: [{ id: "h", kind: "hammok", count: 1 }],
    };
    await openFile(now.page, "bad.camp.json", JSON.stringify(bad));
    const rows = now.page.locator(".dialog .fault-row");
    await rows.first().waitFor();
    const told = await rows.allTextContents();
    for (const field of ["name", "date", "sleepers[0].stature_m", "ground.trees[0].x_m", "night.low_c"]) {
      expect(told.some((row) => row.startsWith(field))).toBe(true);
    }
    expect(told.every((row) => row.includes("needed:"))).toBe(true);
    expect(await now.page.locator(".dialog").textContent()).toContain("Your camp is kept as it was.");
    await now.page.keyboard.press("Escape");
    await now.page.locator(".dialog").waitFor({ state: "detached" });
    await now.page.getByRole("button", { name: /^Continue/ }).click();
    await now.page.waitForSelector(".map-sheet .ns-berth");
    expect(await now.page.locator(".camp-count").textContent()).toContain("14 of 14");
  });

  it("says so where a file is no JSON at all", async () => {
    await openFile(now.page, "notes.json", "not a camp");
    await now.page.locator(".dialog .fault-row").first().waitFor();
    expect(await now.page.locator(".dialog .fault-row").count()).toBe(1);
    await now.page.keyboard.press("Escape");
  });

  it("refuses at the field what the camp cannot bear, and keeps the last plan", async () => {
    await show(now.page, "#/sleepers");
    await now.page.locator("summary").first().click();
    const stature = now.page.getByLabel("Stature").first();
    const before = await stature.inputValue();
    await stature.fill("17.5");
    const fault = now.page.locator(".fault").first();
    await fault.waitFor();
    expect(await fault.textContent()).toMatch(/found: 17\.5; needed: a number from 0\.6 to 2\.5 m/);
    expect(await stature.getAttribute("aria-invalid")).toBe("true");
    await now.page.getByRole("button", { name: "1 thing to mend" }).click();
    expect(await stature.evaluate((field) => field === document.activeElement)).toBe(true);
    await show(now.page, "#/map");
    expect(await now.page.locator(".fault-count").count()).toBe(0);
    expect(await now.page.locator(".camp-count").textContent()).toContain("14 of 14");
    await show(now.page, "#/sleepers");
    await now.page.locator("summary").first().click();
    expect(await now.page.getByLabel("Stature").first().inputValue()).toBe(before);
  });

  it("names the bad rows of a list of trees and brings nothing in until they are left out", async () => {
    await show(now.page, "#/ground");
    const csv = "id,x_m,y_m,dbh_cm\n1,0,0,30\n2,4,nought,30\n3,4.1,0,31\n4,9,0,x\n";
    const chooser = now.page.waitForEvent("filechooser");
    await now.page.getByRole("button", { name: "Open a list of trees" }).click();
    await (await chooser).setFiles({ name: "trees.csv", mimeType: "text/csv", buffer: Buffer.from(csv) });
    await now.page.getByText("2 rows cannot be read").waitFor();
    const told = await now.page.locator(".import .fault-row").allTextContents();
    expect(told[0]).toMatch(/^line 3, y_m/);
    expect(told[1]).toMatch(/^line 5, dbh_cm/);
    expect(await now.page.locator(".section-title", { hasText: "71" }).count()).toBe(1);
    await now.page.getByRole("button", { name: "Leave out the bad rows" }).click();
    await now.page.getByText("2 trees came in.").waitFor();
    await untilPlanned(now.page);
    await show(now.page, "#/map");
    expect(await now.page.locator(".camp-count").textContent()).toContain("1 of 14 have a berth");
    await now.page.locator(".unplaced summary").click();
    expect(await now.page.locator(".unplaced li").count()).toBe(13);
  });

  it("can be stopped while it works, and keeps the plan it has", async () => {
    const { page, end } = await visit(now.browser, DESK, false);
    await openExample(page);
    // The solver's file is held back, so the work cannot end by itself.
    let letThrough = (): void => undefined;
    const open = new Promise<void>((resolve) => (letThrough = resolve));
    await page.route("**/*.wasm", async (route) => {
      await open;
      await route.continue();
    });
    await show(page, "#/ground");
    const chooser = page.waitForEvent("filechooser");
    await page.getByRole("button", { name: "Open a list of trees" }).click();
    const buffer = Buffer.from(treesCsv(crowdedWood({ trees: 700, sleepers: 1 })));
    await (await chooser).setFiles({ name: "trees.csv", mimeType: "text/csv", buffer });
    await page.getByText("700 trees came in.").waitFor();
    await page.getByText("From before your change.").waitFor();
    await page.getByRole("button", { name: "Stop" }).click();
    await page.getByText("Stopped before the end.", { exact: false }).waitFor();
    await show(page, "#/map");
    expect(await page.locator(".camp-count").textContent()).toContain("14 of 14 have a berth");
    expect(await page.locator(".sheet").textContent()).toContain("71 trees");
    expect(await page.locator(".stale").textContent()).toBe("From before your change.");
    letThrough();
    await page.waitForTimeout(450);
    await page.getByRole("button", { name: "Go on" }).click();
    await page.locator(".stale").waitFor({ state: "detached", timeout: 30_000 });
    expect(await page.locator(".sheet").textContent()).toContain("700 trees");
    await end();
  });

  it("says plainly when it made a mistake, and keeps the camp", async () => {
    const fresh = await visit(now.browser);
    await openExample(fresh.page);
    await fresh.page.evaluate(() => {
      setTimeout(() => {
        throw new Error("a fault of our own");
      });
    });
    await fresh.page.getByRole("heading", { name: "Nightspan made a mistake. Your camp is kept." }).waitFor();
    const saved = fresh.page.waitForEvent("download");
    await fresh.page.getByRole("button", { name: "Save a copy" }).click();
    expect((await saved).suggestedFilename()).toMatch(/\.camp\.json$/);
    await fresh.page.getByText("Show details").click();
    expect(await fresh.page.locator(".mistake-details").textContent()).toContain("a fault of our own");
    await fresh.page.getByRole("button", { name: "Start again" }).click();
    await fresh.page.getByRole("button", { name: /^Continue/ }).waitFor();
    await fresh.end();
  });
});

function treesCsv({ ground }: ReturnType<typeof crowdedWood>): string {
  const rows = (ground?.trees ?? []).map(({ id, x_m, y_m, dbh_cm }) => [id, x_m, y_m, dbh_cm].join(","));
  return ["id,x_m,y_m,dbh_cm", ...rows].join("\n");
}
