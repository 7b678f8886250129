import { describe, expect, it } from "vitest";
import { show, visitFor } from "./app.ts";

const PAGES = ["map", "sleepers", "ground", "kit", "night", "rules", "cards", "log"] as const;

describe.each([1, 1000])("a camp of %i without a tree", (count) => {
  const now = visitFor();

  it("shows every view, with no figure that is none", async () => {
    const sleepers = Array.from({ length: count }, (_, n) => ({
      id: `s${n}`,
      name: `N${n}`,
      stature_m: 1.75,
    }));
    const camp = { format: "nightspan-camp/1", name: "Bare", sleepers };
    await now.page
      .locator("input[type=file]")
      .first()
      .setInputFiles({
        name: "bare.json",
        mimeType: "application/json",
        buffer: Buffer.from(JSON.stringify(camp)),
      });
    await now.page.waitForFunction(() => location.hash !== "" && location.hash !== "#/");
    for (const page of PAGES) {
      await show(now.page, `#/${page}`);
      await now.page.locator("h2, .empty").first().waitFor();
      const text = (await now.page.locator("body").textContent()) ?? "";
      expect(text, page).not.toMatch(/NaN|undefined|Infinity/);
    }
    expect(now.complaints).toEqual([]);
  });
});
