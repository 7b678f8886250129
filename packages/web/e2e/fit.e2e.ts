import { describe, expect, it } from "vitest";
import { PHONE, show, untilPlanned, visitFor, waitUntilKept } from "./app.ts";

describe("somebody from the store", () => {
  const now = visitFor(PHONE, async ({ page }) => {
    await show(page, "#/store");
    await page.getByRole("button", { name: "The example’s shelves" }).click();
    await page.waitForSelector(".fit-part");
    await untilPlanned(page);
  });

  const part = (name: string) => now.page.getByRole("region", { name, exact: true });
  const firstOf = (name: string) => part(name).locator(".fit-first .lead").textContent();

  it("takes one thing of each kind, two choices at most, each with a reason", async () => {
    for (const name of ["Hammock", "Straps or slings", "Tarp", "Under", "Over"]) {
      const choices = part(name).locator(".fit-choice");
      expect(await choices.count()).toBeGreaterThanOrEqual(1);
      expect(await choices.count()).toBeLessThanOrEqual(2);
    }
    expect(await part("Hammock").locator(".fit-reason").count()).toBeGreaterThan(0);
  });

  it("takes a longer hammock for somebody taller", async () => {
    await now.page.getByRole("group", { name: "Weight" }).getByRole("button", { name: "40–55" }).click();
    for (let press = 0; press < 6; press += 1)
      await now.page.getByRole("button", { name: "Shorter" }).click();
    await untilPlanned(now.page);
    const short = await firstOf("Hammock");
    for (let press = 0; press < 12; press += 1)
      await now.page.getByRole("button", { name: "Taller" }).click();
    await untilPlanned(now.page);
    expect(await firstOf("Hammock")).not.toBe(short);
    expect(await firstOf("Hammock")).toBe("hammock-long");
  });

  it("takes the second choice instead, and what follows goes with it", async () => {
    const second = part("Under").locator(".fit-choice").nth(1);
    const name = (await second.locator(".lead").textContent()) ?? "";
    await second.getByRole("button", { name: "Take this instead" }).click();
    await untilPlanned(now.page);
    expect(await firstOf("Under")).toBe(name);
    expect(await part("Under").getByRole("button", { name: "Kept" }).getAttribute("aria-pressed")).toBe(
      "true",
    );
  });

  it("writes a slip with the things, the home hang and both days, and nobody's weight or age", async () => {
    await now.page.getByLabel("Out on").fill("2027-06-04");
    await untilPlanned(now.page);
    const slip = (await now.page.locator(".slip-paper").textContent()) ?? "";
    expect(slip).toContain("hammock-long");
    expect(slip).toContain("Hang it once at home");
    expect(slip).toMatch(/Out4\sJun/);
    expect(slip).toMatch(/Back by\d+\sJun/);
    expect(slip).not.toMatch(/\d\s?kg/);
    await now.page.emulateMedia({ media: "print" });
    expect(await now.page.locator(".fit-person").isVisible()).toBe(false);
    expect(await now.page.locator(".slip-paper").isVisible()).toBe(true);
    await now.page.emulateMedia({ media: "screen" });
  });

  it("keeps the person and the shelves over a reload with the server gone", async () => {
    const before = await firstOf("Hammock");
    await waitUntilKept(now.page);
    await now.goOffline();
    await now.page.reload();
    await now.page.waitForSelector(".fit-part");
    expect(await firstOf("Hammock")).toBe(before);
  });

  it("complained of nothing", () => {
    expect(now.complaints).toEqual([]);
  });
});
