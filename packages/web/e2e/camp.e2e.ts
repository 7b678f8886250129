import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { DESK, openExample, show, untilPlanned, visitFor } from "./app.ts";

describe("a group in a wood", () => {
  const now = visitFor(DESK, ({ page }) => openExample(page));

  it("shows the map with every berth, worst first in the list", async () => {
    expect(await now.page.locator(".camp-count").textContent()).toContain("14 of 14 have a berth");
    const rows = now.page.locator(".sheet .row");
    expect(await rows.count()).toBe(14);
    const plates = await rows.locator(".number").all();
    const classes = await Promise.all(plates.map((plate) => plate.getAttribute("class")));
    const ranks = classes.map((name) =>
      ["do-not-hang", "look-again", "clear"].findIndex((word) => name?.includes(word)),
    );
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
    expect(ranks).not.toContain(-1);
  });

  it("has the cautions, what is not checked and the looked-at line beside the list", async () => {
    expect(await now.page.locator(".sheet .cautions li").count()).toBe(14);
    // With a night, a store and a place every part of the example is computed.
    expect(await now.page.locator(".sheet .not-checked").count()).toBe(0);
    expect(await now.page.locator(".sheet .looked-at").textContent()).toMatch(/Trees looked at: \d+ of 28/);
  });

  it("opens a berth from the map by a press on it", async () => {
    const berth = now.page.locator('.map-sheet circle[data-ref="berth/3"]').first();
    const box = await berth.boundingBox();
    if (box === null) throw new Error("berth 3 is not on the map");
    await now.page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
    await now.page.locator(".sheet-title .number").filter({ hasText: /^3$/ }).waitFor();
    await now.page.getByRole("link", { name: "Open berth" }).click();
    await now.page.waitForSelector(".berth-picture svg");
    expect(await now.page.locator(".berth-words input, .berth-picture input").count()).toBe(0);
    for (const end of ["HEAD", "FOOT"]) {
      const part = now.page.locator(".berth-words .end", { has: now.page.getByText(end, { exact: true }) });
      expect(await part.locator(".end-sentence").count()).toBe(1);
    }
    expect(await now.page.locator(".berth-words .cautions li").count()).toBe(14);
  });

  it("steps to the next berth and on to the cards", async () => {
    await now.page.getByRole("link", { name: "Next: berth 4" }).click();
    await now.page.getByRole("navigation", { name: "Berth 4 of 14" }).waitFor();
    await now.page.getByRole("link", { name: "Open the card" }).click();
    await now.page.waitForSelector(".card svg");
    expect(await now.page.locator(".card").count()).toBe(28);
  });

  it("has cautions on the back of every card, and no weight and no pull on either side", async () => {
    const cards = await now.page.locator(".card svg").allTextContents();
    const backs = await now.page.locator('.card[aria-label$="back"] svg').allTextContents();
    expect(backs).toHaveLength(14);
    for (const back of backs) {
      expect(back).toMatch(/look up/i);
      expect(back).toMatch(/thunder/i);
      expect(back).toMatch(/children/i);
    }
    for (const card of cards) expect(card).not.toMatch(/\d\s*(kg|N)\b|newton/i);
  });

  it("prints four cards to an A4 sheet, fronts and backs, or each card on its own A6", async () => {
    const pages = async (): Promise<{ readonly count: number; readonly sizes: readonly string[] }> => {
      const pdf = (await now.page.pdf({ preferCSSPageSize: true })).toString("latin1");
      const sizes = [...pdf.matchAll(/\/MediaBox\s*\[0 0 ([\d.]+) ([\d.]+)\]/g)].map(
        ([, width, height]) => `${Math.round(Number(width))} × ${Math.round(Number(height))}`,
      );
      return { count: [...pdf.matchAll(/\/Type\s*\/Page\b/g)].length, sizes: [...new Set(sizes)] };
    };
    expect(await pages()).toEqual({ count: 8, sizes: ["595 × 842"] });
    await now.page.getByRole("button", { name: "A6, one to a sheet" }).click();
    expect(await pages()).toEqual({ count: 28, sizes: ["298 × 420"] });
  });

  it("prints each paper of the camp alone, on the page it is drawn for, without a pull or a weight", async () => {
    await show(now.page, "#/cards/papers");
    const choices = now.page.getByRole("group", { name: "Which paper" }).getByRole("button");
    await choices.first().waitFor();
    const count = await choices.count();
    expect(count).toBeGreaterThanOrEqual(6);
    for (let n = 0; n < count; n += 1) {
      await now.page.waitForTimeout(450);
      await choices.nth(n).click();
      const sheets = now.page.locator(".camp-sheet svg");
      expect(await sheets.count()).toBeGreaterThan(0);
      for (const text of await sheets.allTextContents()) expect(text).not.toMatch(/\d\s*(N|kN)\b|newton/i);
    }
    await choices.first().click();
    const pdf = (await now.page.pdf({ preferCSSPageSize: true })).toString("latin1");
    expect(pdf).toMatch(/\/MediaBox\s*\[0 0 84[12](\.\d+)? 59[456]/);
    await show(now.page, "#/cards");
    await now.page.waitForSelector(".card svg");
  });

  it("saves a card as a drawing that needs no page, and the plan and the camp as files", async () => {
    const saved = async (name: string): Promise<{ readonly name: string; readonly text: string }> => {
      const [download] = await Promise.all([
        now.page.waitForEvent("download"),
        now.page.getByRole("button", { name }).first().click(),
      ]);
      const file = await download.path();
      return { name: download.suggestedFilename(), text: readFileSync(file, "utf8") };
    };
    const card = await saved("Save the card of berth 1");
    expect(card.name).toMatch(/\.svg$/);
    expect(card.text).toMatch(/^<\?xml/);
    const plan = await saved("Save the plan");
    expect(plan.text).toContain('"nightspan-plan/1"');
    const camp = await saved("Save a copy of the camp");
    expect(camp.name).toBe("Withyscar-Wood-a-night-in-May.camp.json");
    expect(camp.text).toContain('"nightspan-camp/1"');
  });

  it("plans anew when a sleeper changes, and takes it back", async () => {
    await show(now.page, "#/sleepers");
    const row = now.page.locator("details.item", {
      has: now.page.locator(".row-name", { hasText: "Maren" }),
    });
    await row.waitFor();
    const tagsBefore = await now.page.locator(".item-top .note").allTextContents();
    await row.locator("summary").click();
    const stature = row.getByLabel("Stature");
    const before = await stature.inputValue();
    await stature.fill("1.45");
    await untilPlanned(now.page);
    await show(now.page, "#/map");
    await now.page.getByRole("button", { name: "Close" }).click();
    await now.page.locator(".row-main").filter({ hasText: "Maren" }).click();
    await now.page.getByRole("link", { name: "Open berth" }).click();
    const low = await now.page.locator(".end-sentence").first().textContent();
    await now.page.keyboard.press("Control+z");
    await untilPlanned(now.page);
    await show(now.page, "#/sleepers");
    const tags = () => now.page.locator(".item-top .note").allTextContents();
    await expect.poll(tags, { timeout: 10_000 }).toEqual(tagsBefore);
    await row.locator("summary").click();
    expect(await stature.inputValue()).toBe(before);
    await show(now.page, "#/map");
    await now.page.getByRole("button", { name: "Close" }).click();
    await now.page.locator(".row-main").filter({ hasText: "Maren" }).click();
    await now.page.getByRole("link", { name: "Open berth" }).click();
    const isAnother = async () => (await now.page.locator(".end-sentence").first().textContent()) !== low;
    await expect.poll(isAnother, { timeout: 10_000 }).toBe(true);
  });

  it("notes who looked at a tree, and counts it", async () => {
    await show(now.page, "#/map");
    await now.page.getByRole("button", { name: "Close" }).click();
    const looked = now.page.locator(".sheet .looked-at");
    const before = Number(/(\d+) of/.exec((await looked.textContent()) ?? "")?.[1]);
    await now.page.getByRole("button", { name: /^I am at/ }).click();
    await now.page.getByLabel("Who looks").fill("Şule");
    await now.page.waitForTimeout(450);
    await now.page.getByRole("button", { name: "I looked: sound" }).click();
    await untilPlanned(now.page);
    expect(await now.page.locator(".sheet .lead").textContent()).toContain("Looked at by Şule");
    await now.page.getByRole("button", { name: "Close" }).click();
    const text = await now.page.locator(".sheet .looked-at").textContent();
    expect(Number(/(\d+) of/.exec(text ?? "")?.[1])).toBe(before + 1);
    expect(text).toContain("Şule");
  });

  it("keeps camp and changes over a reload", async () => {
    await now.page.reload();
    await now.page.waitForSelector(".map-sheet .ns-berth");
    expect(await now.page.locator(".sheet .looked-at").textContent()).toContain("Şule");
    await show(now.page, "#/");
    await now.page.getByRole("button", { name: /^Continue/ }).click();
    await now.page.waitForSelector(".map-sheet .ns-berth");
  });

  it("sets a name in Arabic by its own direction and in a face that has it", async () => {
    const name = now.page.locator(".sheet bdi", { hasText: "أمينة" });
    expect(await name.getAttribute("dir")).toBe("auto");
    expect(await name.evaluate((element) => getComputedStyle(element).direction)).toBe("rtl");
    await now.page.evaluate(() => document.fonts.ready);
    const loaded = await now.page.evaluate(() =>
      [...document.fonts].some((face) => face.family.includes("Arabic") && face.status === "loaded"),
    );
    expect(loaded).toBe(true);
  });

  it("moves and scales the map by wheel and mouse, and shows all again", async () => {
    const place = () => now.page.locator('.map-sheet circle[data-ref="berth/3"]').first().boundingBox();
    await now.page.getByRole("button", { name: "Show all" }).click();
    const whole = await place();
    await now.page.mouse.move(500, 400);
    await now.page.mouse.down();
    await now.page.mouse.move(560, 440, { steps: 4 });
    await now.page.mouse.up();
    await now.page.waitForTimeout(200);
    const moved = await place();
    expect((moved?.x ?? 0) - (whole?.x ?? 0)).toBeCloseTo(60, 0);
    expect((moved?.y ?? 0) - (whole?.y ?? 0)).toBeCloseTo(40, 0);
    await now.page.mouse.wheel(0, -400);
    await now.page.waitForTimeout(400);
    expect(await place()).not.toEqual(moved);
    await now.page.getByRole("button", { name: "Show all" }).click();
    await now.page.waitForTimeout(200);
    expect((await place())?.x).toBeCloseTo(whole?.x ?? 0, 0);
  });

  it("complained of nothing", () => {
    expect(now.complaints).toEqual([]);
  });
});
