import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { DESK, openExample, show, untilPlanned, visitFor } from "./app.ts";

describe("house rules", () => {
  const now = visitFor(DESK, async ({ page }) => {
    await openExample(page);
    await show(page, "#/rules");
  });

  const saved = async (): Promise<unknown> => {
    const download = now.page.waitForEvent("download");
    await now.page.getByRole("button", { name: "Camp", exact: true }).click();
    await now.page.getByRole("button", { name: "Save a copy of the camp" }).click();
    const text = readFileSync(await (await download).path(), "utf8");
    await now.page.getByRole("button", { name: "Close" }).click();
    return Reflect.get(Object(JSON.parse(text)), "rules");
  };

  it("writes every figure where the camp file has it, and says which preset fills the rest", async () => {
    await now.page.getByRole("textbox", { name: "Half width of a berth" }).fill("1.2");
    await now.page.getByRole("textbox", { name: "Clear of water" }).fill("7");
    await now.page.getByRole("checkbox", { name: "No spokes" }).check();
    await now.page.getByRole("combobox", { name: "Room for the error of the map" }).selectOption("true");
    await now.page.getByRole("textbox", { name: "Trees not to be used" }).fill("Fagus sylvatica, ash");
    await now.page.getByRole("textbox", { name: "Walk", exact: true }).fill("0.1");
    await untilPlanned(now.page);
    expect(await saved()).toMatchObject({
      footprint_half_width_m: 1.2,
      setback_water_m: 7,
      no_spokes: true,
      survey_room: true,
      species_not: ["Fagus sylvatica", "ash"],
      weights: { walk: 0.1 },
    });
    const fire = now.page.locator(".rule").filter({ hasText: "Clear of a fire" });
    expect(await fire.locator(".rule-source").textContent()).toContain("usual");
  });

  it("keeps who says a rule and when it was read, through a change of its figure", async () => {
    const rule = now.page.locator(".rule").filter({ hasText: "Least strap width" });
    await rule.getByRole("button", { name: /^Who says so/ }).click();
    await rule.getByRole("textbox", { name: "Who says so" }).fill("Forest office");
    await rule.getByLabel("Read on").fill("2027-04-02");
    await rule.getByRole("textbox", { name: "Least strap width" }).fill("30");
    await untilPlanned(now.page);
    expect(await rule.locator(".rule-source").textContent()).toContain("Forest office, read 2\u00a0Apr");
    expect(await saved()).toMatchObject({
      strap_width_min_mm: { value: 30, source: "Forest office", read_on: "2027-04-02" },
    });
    await rule.getByRole("textbox", { name: "Least strap width" }).fill("");
    await untilPlanned(now.page);
    expect(await rule.locator(".rule-source").textContent()).toContain("usual");
    expect(await saved()).not.toHaveProperty("strap_width_min_mm");
  });

  it("says what each weighed thing costs in this plan", async () => {
    const lines = await now.page.locator(".cost-line").allTextContents();
    expect(lines).toHaveLength(7);
    expect(lines.filter((line) => /\d\.\d\s?m in this plan/.test(line)).length).toBeGreaterThanOrEqual(2);
  });

  it("complained of nothing", () => {
    expect(now.complaints).toEqual([]);
  });
});
