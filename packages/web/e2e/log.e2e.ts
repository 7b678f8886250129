import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { openExample, show, untilPlanned, visitFor } from "./app.ts";

describe("how the night was", () => {
  const now = visitFor(undefined, ({ page }) => openExample(page));

  it("learns in words from a press, degrees behind why, and none of anybody under 16", async () => {
    await show(now.page, "#/log");
    const sections = now.page.locator(".log-sleeper");
    await sections.first().waitFor();
    const camp = await sections.count();
    expect(camp).toBe(14);
    for (let n = 0; n < camp; n += 1) {
      await sections
        .nth(n)
        .getByRole("button", { name: /Back: cold$/ })
        .press("Enter");
    }
    const learnt = await now.page.locator(".learnt").allTextContents();
    expect(learnt.some((text) => text.includes("under colder than reckoned"))).toBe(true);
    const young = now.page.locator(".learnt", { hasText: "warmer than the rule asks" });
    expect(await young.count()).toBeGreaterThan(0);
    expect(await young.locator(".why").count()).toBe(0);
    for (const text of await young.allTextContents()) expect(text).not.toMatch(/\d\s*(K|°)/);
    const plain = await now.page.locator(".learnt > ul").allTextContents();
    for (const text of plain) expect(text).not.toMatch(/\d\s*(K|°)/);
  });

  it("stays over a reload, and is saved as a file without degrees of the young", async () => {
    await untilPlanned(now.page);
    await now.page.reload();
    await now.page.locator(".log-sleeper .felt[aria-pressed=true]").first().waitFor();
    expect(await now.page.locator(".log-sleeper .felt[aria-pressed=true]").count()).toBe(14);
    const [download] = await Promise.all([
      now.page.waitForEvent("download"),
      now.page.getByRole("button", { name: "Save the log" }).click(),
    ]);
    const saved = readFileSync(await download.path(), "utf8");
    expect(saved).toContain('"nightspan-log/1"');
    expect(saved.match(/"felt": "cold"/g)).toHaveLength(14);
    // Beside what the grown said stands what the plan reckoned; beside what the young said nothing does.
    const reckoned = saved.match(/"margin_k"/g)?.length ?? 0;
    expect(reckoned).toBeGreaterThan(0);
    expect(reckoned).toBeLessThan(14);
    expect(now.complaints).toEqual([]);
  });

  it("feeds the next plan", async () => {
    await untilPlanned(now.page);
    await now.page.getByRole("button", { name: "Camp", exact: true }).click();
    const [download] = await Promise.all([
      now.page.waitForEvent("download"),
      now.page.getByRole("button", { name: "Save the plan" }).click(),
    ]);
    expect(readFileSync(await download.path(), "utf8")).toMatch(/"learnt": \{/);
  });
});
