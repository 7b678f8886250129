import { describe, expect, it } from "vitest";
import { openExample, show, visitFor } from "./app.ts";

describe("first screen on a phone", () => {
  const now = visitFor();

  const heights = () =>
    now.page.evaluate(() => ({ page: document.documentElement.scrollHeight, screen: innerHeight }));

  it("has three doors of one size, each with a picture, and fits without scrolling", async () => {
    const doors = await now.page.locator(".door").all();
    const boxes = await Promise.all(doors.map((door) => door.boundingBox()));
    expect(boxes).toHaveLength(3);
    const sizes = new Set(boxes.map((box) => `${box?.width} ${Math.round(box?.height ?? 0)}`));
    expect(sizes.size).toBe(1);
    expect(await now.page.locator(".door svg").count()).toBe(3);
    const { page, screen } = await heights();
    expect(page).toBeLessThanOrEqual(screen);
  });

  it("opens the store for one person, and says where shelves come from", async () => {
    await now.page.getByRole("link", { name: /Fit someone from the store/ }).click();
    await now.page.getByText("There is nothing on the shelves yet", { exact: false }).waitFor();
    await now.page.getByRole("button", { name: "The example’s shelves" }).waitFor();
    await show(now.page, "#/");
  });

  it("still fits once there is a camp to go on with", async () => {
    await openExample(now.page);
    await show(now.page, "#/");
    const go = now.page.getByRole("button", { name: /^Continue/ });
    expect(await go.textContent()).toContain("14 sleepers");
    const { page, screen } = await heights();
    expect(page).toBeLessThanOrEqual(screen);
    const box = await now.page.getByRole("button", { name: "Open a file" }).boundingBox();
    expect((box?.y ?? Infinity) + (box?.height ?? 0)).toBeLessThanOrEqual(screen);
  });

  it("turns red by its own button, and back", async () => {
    const red = now.page.getByRole("button", { name: "Red night" });
    await red.click();
    expect(await now.page.locator("html").getAttribute("data-theme")).toBe("red-night");
    await now.page.waitForTimeout(450);
    await red.click();
    expect(await now.page.locator("html").getAttribute("data-theme")).toBe("light");
  });

  it("complained of nothing", () => {
    expect(now.complaints).toEqual([]);
  });
});
