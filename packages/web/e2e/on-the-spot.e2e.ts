import type { Page } from "playwright-core";
import { beforeEach, describe, expect, it } from "vitest";
import { openExample, PHONE, show, visitFor } from "./app.ts";

/** Counting presses, which may follow one another at once. */
const QUICK: readonly unknown[] = ["Less", "More"];

/** Presses by name, each longer after the last than the echo of a wet finger. */
async function press(page: Page, ...names: readonly (string | RegExp)[]): Promise<void> {
  for (const name of names) {
    if (!QUICK.includes(name)) await page.waitForTimeout(430);
    await page.getByRole("button", { name, exact: typeof name === "string" }).click();
  }
}

describe("on the spot", () => {
  const now = visitFor(PHONE, ({ page }) => openExample(page));
  beforeEach(async () => {
    await show(now.page, "#/berth/3");
    await press(now.page, "Check it on the spot");
    await now.page.getByText("Who can tell how it hangs?").waitFor();
  });

  const said = () => now.page.locator(".spot-ask h2").textContent();
  const scrolls = () =>
    now.page.evaluate(() => {
      const inner = document.querySelector(".spot-page");
      const { scrollHeight, clientHeight } = document.documentElement;
      return scrollHeight > clientHeight || (inner?.scrollHeight ?? 0) > (inner?.clientHeight ?? 0);
    });

  const SEAT_TOO_LOW = ["I am alone", "Seat height", "Next", "Less", "Less", "Less", "It is so"] as const;

  it("tells one move with its number, in reach of a thumb, and nothing to scroll", async () => {
    await press(now.page, ...SEAT_TOO_LOW);
    expect(await now.page.locator(".spot-move .say").first().textContent()).toMatch(
      /^(Let|Take|Raise|Lower) the (head|foot) (strap|sling)/,
    );
    expect(Number(await now.page.locator(".spot-move .shout").textContent())).toBeGreaterThanOrEqual(1);
    expect(await now.page.locator(".spot-move").count()).toBe(1);
    expect(await now.page.locator(".spot-picture svg").count()).toBe(1);
    expect(await scrolls()).toBe(false);
    const done = await now.page.getByRole("button", { name: "Done, I sat again" }).boundingBox();
    const not = await now.page.getByRole("button", { name: /^It will not go/ }).boundingBox();
    expect(done?.height).toBeGreaterThanOrEqual(72);
    expect(not?.height).toBeGreaterThanOrEqual(56);
    expect(done?.y).toBeGreaterThan(422);
    expect((not?.y ?? 999) + (not?.height ?? 0)).toBeLessThanOrEqual(844 - 16);
  });

  it("asks the same again after each move, for the angles before more of them, and leaves it as planned", async () => {
    await press(now.page, ...SEAT_TOO_LOW);
    let moves = 0;
    const moveOn = async () => {
      while ((await now.page.locator(".spot-move").count()) > 0 && moves < 4) {
        moves += 1;
        await press(now.page, "Done, I sat again");
        expect(await said()).toContain("How high is the cloth");
        await press(now.page, "It is so");
      }
    };
    await moveOn();
    expect(await said()).toBe("Measure both angles");
    await press(now.page, "It is so all the same");
    await moveOn();
    expect(await said()).toBe("Leave it as it is");
    const words = (await now.page.locator(".spot-ask").textContent()) ?? "";
    expect(words).toContain(`After ${moves} change`);
    expect(words).toMatch(/Trees looked at: \d+ of 28/i);
  });

  it("takes every press back, one by one", async () => {
    await press(now.page, "I am alone", "My knees", "Next", "Easy");
    expect(await said()).toBe("Leave it as it is");
    await press(now.page, "Undo");
    expect(await said()).toContain("How are your knees");
    await press(now.page, "Undo", "Undo", "Undo");
    expect(await said()).toContain("Who can tell");
    expect(await now.page.getByRole("button", { name: "Undo" }).count()).toBe(0);
  });

  it("tells another move, never the same again, until nothing is left but other trees or the ground", async () => {
    await press(now.page, ...SEAT_TOO_LOW);
    const told = new Set<string>();
    const not = now.page.getByRole("button", { name: /^It will not go/ });
    while ((await not.count()) > 0) {
      const move = (await now.page.locator(".spot-move .say").first().textContent()) ?? "";
      expect(told.has(move)).toBe(false);
      told.add(move);
      await press(now.page, /^It will not go/);
      await now.page.waitForTimeout(100);
    }
    expect(told.size).toBeGreaterThanOrEqual(1);
    await now.page.getByRole("link", { name: "Other trees" }).waitFor();
    await now.page.getByRole("link", { name: "Sleep on the ground" }).waitFor();
  });

  it("answers what bothers by one move or one piece of advice", async () => {
    await press(now.page, "Something bothers me");
    expect(await scrolls()).toBe(false);
    await press(now.page, "A strap slips down its trunk");
    const first = await said();
    await press(now.page, "Done, I sat again", "Still so");
    expect(await said()).not.toBe(first);
  });

  it("asks with a helper for heights and angles, all of it on one screen", async () => {
    await press(now.page, "Somebody helps me");
    expect(await now.page.locator(".spot-choices button").count()).toBe(7);
    expect(await scrolls()).toBe(false);
    await press(now.page, "HEAD strap angle", "FOOT strap angle", "Next", "It is so");
    expect(await said()).toContain("FOOT strap");
    expect(await scrolls()).toBe(false);
  });

  it("complained of nothing", () => {
    expect(now.complaints).toEqual([]);
  });
});
