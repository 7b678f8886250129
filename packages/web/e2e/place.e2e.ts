import { describe, expect, it } from "vitest";
import { DESK, openExample, untilPlanned, visitFor } from "./app.ts";

describe("somebody is put elsewhere by choice", () => {
  const now = visitFor(DESK, ({ page }) => openExample(page));

  const berthOf = (name: string) => now.page.locator(".sheet .row-main").filter({ hasText: name });
  const begin = async (name: string): Promise<void> => {
    await berthOf(name).click();
    await now.page.getByRole("button", { name: "Put elsewhere" }).click();
    await now.page.locator(".place-sheet").waitFor();
    await now.page.waitForTimeout(450);
  };
  const plate = async (name: string) => (await berthOf(name).locator(".row-tags").textContent()) ?? "";

  /** Presses one berth after the other until one may be changed for; kit does not fit everywhere. */
  async function firstThatGoes(others: readonly string[]): Promise<string> {
    const sheet = now.page.locator(".place-sheet");
    for (const other of others) {
      await berthOf(other).click();
      const told = sheet.getByText(/Cost \d+\.\d\d, now \d+\.\d\d/);
      await told.or(sheet.getByText("That cannot be")).first().waitFor();
      if ((await told.count()) > 0) return other;
      await sheet.getByRole("button", { name: "Choose another place" }).click();
      await now.page.waitForTimeout(450);
    }
    throw new Error("nobody can change places with anybody");
  }

  it("changes places with somebody, says what it costs first, and takes it back", async () => {
    const names = await now.page.locator(".sheet .row-name bdi").allTextContents();
    const plates = new Map<string, string>();
    for (const name of names) plates.set(name, await plate(name));
    const [one = "", ...others] = names;
    await begin(one);
    const sheet = now.page.locator(".place-sheet");
    const other = await firstThatGoes(others);
    const [mine, theirs] = [plates.get(one) ?? "", plates.get(other) ?? ""];
    expect(await sheet.locator(".lead").textContent()).toBe(`${one} changes places with ${other}.`);
    await sheet.getByRole("button", { name: /^Do it: \d+ move$/ }).click();
    await untilPlanned(now.page);
    await expect.poll(() => plate(one), { timeout: 10_000 }).toContain(sorted(theirs)[0]);
    expect(sorted(await plate(one))).toEqual(sorted(theirs));
    expect(sorted(await plate(other))).toEqual(sorted(mine));
    await now.page.keyboard.press("Control+z");
    await untilPlanned(now.page);
    await expect.poll(() => plate(one), { timeout: 10_000 }).toBe(mine);
  });

  it("takes two trees from lists, and says why a pair cannot be", async () => {
    const name = (await now.page.locator(".sheet .row-name bdi").first().textContent()) ?? "";
    await begin(name);
    await now.page.getByText("Choose from lists").click();
    const tags = await now.page.getByLabel("Head tree").locator("option").allTextContents();
    await now.page.getByLabel("Head tree").selectOption({ label: tags[1] ?? "" });
    await now.page.getByLabel("Foot tree").selectOption({ label: tags.at(-1) ?? "" });
    await now.page.getByText("That cannot be").waitFor();
    expect(await now.page.locator(".place-sheet .sentences li").first().textContent()).toContain(name);
    expect(await now.page.getByRole("button", { name: /^Do it/ }).count()).toBe(0);
    await now.page.getByRole("button", { name: "Leave it as it is" }).click();
    await now.page.locator(".camp-count").waitFor();
    expect(now.complaints).toEqual([]);
  });
});

/** The two tags of "A5 to A7", whichever is at the head. */
function sorted(words: string): readonly string[] {
  return words.split(" to ").sort((a, b) => a.localeCompare(b));
}
