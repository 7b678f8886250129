import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { visitFor, waitUntilKept } from "./app.ts";

describe("two trees, tonight", () => {
  const now = visitFor();

  /** The way from the first screen to the answer. Returns how many taps it took. */
  async function walk(page: Page): Promise<number> {
    const taps = [
      page.getByRole("link", { name: /Two trees, tonight/ }),
      page.getByRole("button", { name: "All three are so" }),
      page.getByRole("button", { name: "Next" }),
      page.getByRole("button", { name: "Show how to hang" }),
    ];
    for (const tap of taps) {
      await tap.click();
      // A second press at the same place within 400 ms is taken for a wet finger's echo.
      await page.waitForTimeout(450);
    }
    await page.waitForSelector(".answer-sentences li");
    return taps.length;
  }

  it("answers from cold within five taps and a minute, with a sentence for each tree", async () => {
    const began = Date.now();
    const taps = await walk(now.page);
    expect(taps).toBeLessThanOrEqual(5);
    expect(Date.now() - began).toBeLessThan(60_000);
    const sentences = await now.page.locator(".answer-sentences li").allTextContents();
    expect(sentences[0]).toMatch(/head strap round .*\d\.\d\d\sm up/);
    expect(sentences[1]).toMatch(/foot strap round .*(higher|lower|level)/);
    expect(sentences[2]).toContain("Sit");
  });

  it("says look again until somebody looked, and who did after that", async () => {
    const verdict = now.page.locator(".answer-page .verdict");
    expect(await verdict.textContent()).toContain("look again: both trees");
    expect(await now.page.locator(".looked-at").textContent()).toContain("0 of 2");
    await now.page.getByRole("button", { name: "I looked at both trees" }).click();
    await now.page.getByText("2 of 2", { exact: false }).waitFor();
    expect(await verdict.textContent()).not.toContain("both trees");
  });

  it("turns one answer after the sit into one thing to change, and asks again", async () => {
    await now.page.getByRole("button", { name: "Too low" }).click();
    await now.page.locator(".spot-move").waitFor();
    expect(await now.page.locator(".spot-move").count()).toBe(1);
    expect(await now.page.locator(".spot-then").textContent()).toContain("sit again");
    await now.page.waitForTimeout(450);
    await now.page.getByRole("button", { name: "Done, I sat again" }).click();
    await now.page.waitForTimeout(450);
    await now.page.getByRole("button", { name: "It sits well" }).click();
    await now.page.getByRole("heading", { name: "Leave it as it is" }).waitFor();
    await now.page.getByRole("link", { name: "Back to the berth" }).click();
    await now.page.waitForSelector(".answer-sentences li");
  });

  it.each(["Too high", "I slide to the feet", "My knees are strained"])(
    'answers "%s" with one instruction',
    async (name) => {
      await now.page.waitForTimeout(450);
      await now.page.getByRole("button", { name, exact: true }).click();
      await now.page.getByRole("button", { name: "Done, I sat again" }).waitFor();
      expect(await now.page.locator(".spot-ask h2").count()).toBe(1);
      await now.page.goBack();
      await now.page.waitForSelector(".answer-sentences li");
    },
  );

  it("says the cautions and what was not checked", async () => {
    expect(await now.page.locator(".cautions li").count()).toBe(14);
    expect(await now.page.locator(".not-checked").textContent()).toContain("warmth");
  });

  it("answers offline after a reload with the server gone", async () => {
    await waitUntilKept(now.page);
    await now.goOffline();
    await now.page.goto(now.url);
    await now.page.waitForSelector(".door");
    await walk(now.page);
    expect(await now.page.locator(".answer-sentences li").count()).toBe(3);
    await now.page.reload();
    await now.page.waitForSelector(".answer-sentences li");
  });

  it("remembers steps and stature", async () => {
    await now.page.goto(`${now.url}#/tonight/steps`);
    await now.page.getByRole("button", { name: "Half a step fewer" }).click();
    expect(await now.page.locator(".spot-number").textContent()).toContain("5½");
    await now.page.reload();
    expect(await now.page.locator(".spot-number").textContent()).toContain("5½");
  });

  it("says why not, and the way out, where two trees will not do", async () => {
    const fewer = now.page.getByRole("button", { name: "Half a step fewer" });
    for (let press = 0; press < 7; press += 1) await fewer.click();
    await now.page.getByRole("button", { name: "Next" }).click();
    await now.page.waitForTimeout(450);
    await now.page.getByRole("button", { name: "Show how to hang" }).click();
    await now.page.getByText("Not between these two trees").waitFor();
    const why = await now.page.locator(".why-not").textContent();
    expect(why).toMatch(/less than the 3\.00.m/);
    await now.page.getByRole("link", { name: "Sleep on the ground tonight" }).waitFor();
  });

  it("sends to the ground where the crowns were not seen", async () => {
    await now.page.goto(`${now.url}#/tonight/look`);
    await now.page.waitForTimeout(450);
    await now.page.getByRole("button", { name: "No, not all" }).click();
    await now.page.getByRole("heading", { name: "Sleep on the ground tonight" }).waitFor();
  });

  it("has answers of 56 px and more in the lower half, 72 px for the first", async () => {
    await now.page.goto(`${now.url}#/tonight/look`);
    const first = await now.page.getByRole("button", { name: "All three are so" }).boundingBox();
    const second = await now.page.getByRole("button", { name: "No, not all" }).boundingBox();
    expect(first?.height).toBeGreaterThanOrEqual(72);
    expect(second?.height).toBeGreaterThanOrEqual(56);
    expect(first?.y).toBeGreaterThan(422);
  });

  it("complained of nothing but the server's absence", () => {
    expect(
      now.complaints.filter((text) => !/ERR_INTERNET_DISCONNECTED|ERR_CONNECTION_REFUSED/.test(text)),
    ).toEqual([]);
  });
});
