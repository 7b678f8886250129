import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { openExample, PHONE, show, visitFor } from "./app.ts";

interface Light {
  /** Share of the screen that is lit at all. */
  readonly litRatio: number;
  readonly mostBlue: number;
  readonly mostGreen: number;
}

/** What the screen sends into the eye: read back from a picture of it. */
async function lightOf(page: Page): Promise<Light> {
  const picture = (await page.screenshot()).toString("base64");
  return page.evaluate(async (data) => {
    const image = new Image();
    image.src = `data:image/png;base64,${data}`;
    await image.decode();
    const canvas = document.createElement("canvas");
    canvas.width = image.width;
    canvas.height = image.height;
    const pen = canvas.getContext("2d");
    if (pen === null) throw new Error("no canvas");
    pen.drawImage(image, 0, 0);
    const dots = pen.getImageData(0, 0, image.width, image.height).data;
    let lit = 0;
    let mostBlue = 0;
    let mostGreen = 0;
    for (let at = 0; at < dots.length; at += 4) {
      const [red = 0, green = 0, blue = 0] = dots.subarray(at, at + 3);
      if (red > 96) lit += 1;
      mostBlue = Math.max(mostBlue, blue);
      mostGreen = Math.max(mostGreen, green);
    }
    return { litRatio: lit / (dots.length / 4), mostBlue, mostGreen };
  }, picture);
}

describe("red by night", () => {
  const now = visitFor(PHONE, async (visit) => {
    await openExample(visit.page);
    await show(visit.page, "#/");
    await visit.page.getByRole("button", { name: "Red night" }).click();
  });

  it.each([
    "#/",
    "#/tonight/look",
    "#/tonight/steps",
    "#/map",
    "#/berth/2",
    "#/spot/2",
    "#/cards",
    "#/sleepers",
    "#/ground",
    "#/kit",
    "#/kit/dealing",
    "#/kit/packing",
    "#/kit/cuts",
    "#/night",
    "#/rules",
    "#/berth/2/above",
    "#/berth/2/warm",
    "#/cards/papers",
    // Last, for it takes a camp of its own in hand.
    "#/store",
  ])("lights under a quarter of the screen at %s, with no blue and little green", async (view) => {
    await show(now.page, view);
    await now.page.waitForTimeout(300);
    const { litRatio, mostBlue, mostGreen } = await lightOf(now.page);
    expect(litRatio).toBeGreaterThan(0.005);
    expect(litRatio).toBeLessThan(0.25);
    expect(mostBlue).toBeLessThanOrEqual(0x20);
    expect(mostGreen).toBeLessThanOrEqual(0x70);
  });

  it("is remembered until it is switched off", async () => {
    await now.page.reload();
    expect(await now.page.locator("html").getAttribute("data-theme")).toBe("red-night");
  });
});
