import { describe, expect, it } from "vitest";
import { DESK, openExample, show, untilPlanned, visitFor, waitUntilKept } from "./app.ts";

describe("the night", () => {
  const now = visitFor(DESK, async ({ page }) => {
    await openExample(page);
    await show(page, "#/night");
  });

  const arrive = () => now.page.locator(".arrive-at").textContent();
  const minutes = (clock: string | null): number => {
    const [, hour, minute] = /^(\d\d):(\d\d)$/.exec(clock ?? "") ?? [];
    return Number(hour) * 60 + Number(minute);
  };

  it("says when to arrive, and earlier with fewer hands", async () => {
    const before = minutes(await arrive());
    expect(before).toBeGreaterThan(12 * 60);
    await now.page.getByRole("textbox", { name: "Pairs of hands" }).fill("1");
    await untilPlanned(now.page);
    expect(minutes(await arrive())).toBeLessThan(before);
    expect(await now.page.locator(".arrive").textContent()).toContain("by 1 pair of hands");
    await now.page.getByRole("textbox", { name: "Pairs of hands" }).fill("");
    await untilPlanned(now.page);
  });

  it("draws what happens when", async () => {
    const drawn = await now.page.locator(".night-page .fitted svg").first().textContent();
    for (const word of ["sunset", "dusk", "sunrise"]) expect(drawn).toContain(word);
  });

  it("looks again where nobody has set the gust at which everybody gets up", async () => {
    expect(await now.page.locator(".stop-blank").count()).toBe(0);
    await now.page.getByRole("textbox", { name: "Stop at gusts of" }).fill("");
    await untilPlanned(now.page);
    expect(await now.page.locator(".stop-blank").textContent()).toMatch(/^look again/);
    await now.page.getByRole("textbox", { name: "Stop at gusts of" }).fill("14");
    await untilPlanned(now.page);
  });

  it("puts the tarp first in foul weather, and looking up before all", async () => {
    const steps = await now.page.locator(".work-order li").allTextContents();
    expect(steps[0]).toContain("Look up");
    const place = (word: string): number => steps.findIndex((step) => step.includes(word));
    expect(place("Tarp ridge")).toBeLessThan(place("Hammock"));
  });

  it("takes a place as maps give it, and refuses what is none", async () => {
    const place = now.page.getByRole("textbox", { name: "Latitude, longitude" });
    await place.fill("here");
    expect(await place.getAttribute("aria-invalid")).toBe("true");
    await place.fill("69.65, 18.96");
    await untilPlanned(now.page);
    expect(await place.getAttribute("aria-invalid")).toBe("false");
    // In Tromsø the sun does not set in the middle of May, or it does not get dark: other words, not other clocks.
    expect(await now.page.locator(".night-page .findings").first().textContent()).toContain("not get dark");
  });

  it("keeps hours that are typed, over a reload with the server gone", async () => {
    await now.page.locator(".hours summary").click();
    await now.page.getByRole("button", { name: "Add an hour" }).click();
    await now.page.waitForTimeout(450);
    await now.page.getByRole("button", { name: "Add an hour" }).click();
    await now.page.getByLabel("Gusts 22:00").fill("17");
    await now.page.getByLabel("Gusts 22:00").blur();
    await untilPlanned(now.page);
    await waitUntilKept(now.page);
    await now.goOffline();
    await now.page.reload();
    await now.page.waitForSelector(".night-page");
    await now.page.locator(".hours summary").click();
    expect(await now.page.getByLabel("Gusts 22:00").inputValue()).toBe("17");
  });

  it("complained of nothing", () => {
    expect(now.complaints).toEqual([]);
  });
});
