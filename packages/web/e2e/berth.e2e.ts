import { describe, expect, it } from "vitest";
import { openExample, PHONE, show, untilPlanned, visitFor } from "./app.ts";

describe("one berth", () => {
  const now = visitFor(PHONE, async (visit) => {
    await openExample(visit.page);
    await show(visit.page, "#/berth/3");
  });

  const window = () => now.page.locator(".span-window p").textContent();

  it("says between which spans it could hang, and what ends them at either side", async () => {
    expect(await window()).toMatch(
      /^(About )?\d\.\d.* apart: nearer, .+; farther, .+\. Here they stand \d\.\d\d.m apart\.$/,
    );
  });

  it("keeps mechanics that break no rule behind why", async () => {
    const behind = now.page.locator(".berth-words > .why");
    expect(await behind.getAttribute("open")).toBeNull();
    const shown = await now.page.locator(".berth-words > .findings > .finding").count();
    const kept = await behind.locator(".finding").count();
    expect(shown).toBeGreaterThan(0);
    expect(kept).toBeGreaterThan(0);
    expect(await behind.locator("summary").textContent()).toContain(String(kept));
  });

  it("prints a table of own steps for each sleeper, and a card to read angles by", async () => {
    await show(now.page, "#/cards");
    await now.page.getByRole("link", { name: "Pocket tables and angle card" }).click();
    await now.page.getByRole("figure", { name: "Angle card" }).waitFor();
    expect(await now.page.getByRole("figure", { name: /^Pocket table of / }).count()).toBe(14);
    const papers = (await now.page.locator(".card svg").allTextContents()).join(" ");
    expect(papers).not.toMatch(/\d\s?(kg|N|kN)\b/);
  });

  it("keeps a berth that is pinned while another tree is lost, and says before who moves", async () => {
    await show(now.page, "#/map");
    const rows = now.page.locator(".row-main");
    await rows.nth(0).click();
    // A second press at the same place within 400 ms is taken for a wet finger's echo.
    await now.page.waitForTimeout(450);
    await now.page.getByRole("button", { name: "Keep this berth" }).click();
    await untilPlanned(now.page);
    await now.page.getByRole("button", { name: "This berth is kept", pressed: true }).waitFor();
    await now.page.getByRole("button", { name: "Close" }).click();
    await now.page.waitForTimeout(450);
    await now.page.getByRole("button", { name: /^I am at/ }).click();
    await now.page.waitForTimeout(450);
    await now.page.getByRole("button", { name: "Do without this tree" }).click();
    const fewest = now.page.getByRole("button", { name: /^Move as few as can be: \d+$/ });
    await fewest.waitFor({ timeout: 50_000 });
    const anew = await now.page.getByRole("button", { name: /^Plan anew: \d+ move$/ }).textContent();
    const count = (text: string | null) => Number(/\d+/.exec(text ?? "")?.[0]);
    expect(count(await fewest.textContent())).toBeLessThanOrEqual(count(anew));
    await now.page.waitForTimeout(450);
    await fewest.click();
    await untilPlanned(now.page);
    expect(await now.page.getByRole("button", { name: "Do without this tree" }).count()).toBe(0);
    await now.page.keyboard.press("Control+z");
    await untilPlanned(now.page);
    await now.page.getByRole("button", { name: "Do without this tree" }).waitFor();
    await now.page.keyboard.press("Control+z");
    await untilPlanned(now.page);
    await now.page.getByRole("button", { name: "Close" }).click();
  });

  it("says what a house cap costs, once there is one that binds", async () => {
    expect(await now.page.locator(".cap-cost").count()).toBe(0);
    await show(now.page, "#/rules");
    await now.page.getByRole("textbox", { name: "Strap at most at" }).fill("1.6");
    await untilPlanned(now.page);
    for (let id = 1; id <= 14; id += 1) {
      await show(now.page, `#/berth/${id}`);
      if ((await now.page.locator(".cap-cost").count()) > 0) break;
    }
    expect(await now.page.locator(".cap-cost").textContent()).toMatch(/straps? hang|pull/);
  });

  it("says why so few have a berth, and what one change alone would do", async () => {
    await show(now.page, "#/rules");
    await now.page.getByRole("textbox", { name: "Strap at most at" }).fill("1.4");
    await untilPlanned(now.page);
    await show(now.page, "#/map");
    await now.page.getByText("Why so few?").click();
    const steps = await now.page.locator(".funnel b").allTextContents();
    expect(steps.length).toBe(5);
    expect(Number(/^(\d+) of 14/.exec(steps.at(-1) ?? "")?.[1])).toBeLessThan(14);
    await now.page.locator(".what-if li").first().waitFor({ timeout: 50_000 });
    expect(await now.page.locator(".what-if li").first().textContent()).toMatch(
      /would have a berth|None of the changes/,
    );
  });

  it("complained of nothing", () => {
    expect(now.complaints).toEqual([]);
  });
});
