import { describe, expect, it } from "vitest";
import { DESK, openExample, show, untilPlanned, visit, visitFor, waitUntilKept } from "./app.ts";

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
    expect(await now.page.locator(".night-page .findings").first().textContent()).toContain(
      "It does not get dark",
    );
  });

  const openForecast = async (text: string): Promise<void> => {
    await now.page.waitForTimeout(450);
    const chooser = now.page.waitForEvent("filechooser");
    await now.page.getByRole("button", { name: "Open a forecast" }).click();
    await (await chooser).setFiles({ name: "forecast.csv", mimeType: "text/csv", buffer: Buffer.from(text) });
  };
  const CSV = [
    "at,air_c,wind_m_s,gust_m_s,rain_mm_h",
    "2027-05-14T20:00Z,9,4,11,0",
    "2027-05-14T23:00Z,6,3,16.5,0.2",
    "2027-05-15T02:00Z,4.5,2,7,0",
  ].join("\n");
  const gusts = () => now.page.getByRole("textbox", { name: "Gusts", exact: true }).inputValue();

  it("takes a forecast from a file, and keeps it where the next one cannot be used", async () => {
    await openForecast(CSV);
    await now.page.getByText("The forecast came in: 3 hours.").waitFor();
    await untilPlanned(now.page);
    expect(await now.page.getByRole("textbox", { name: "Low", exact: true }).inputValue()).toBe("4.5");
    const most = await gusts();
    await openForecast("at,air_c\nnever,cold");
    await now.page.locator(".forecast-source .fault-row").first().waitFor();
    expect(await gusts()).toBe(most);
  });

  it("fetches from an address of its own place alone, on a press, and keeps the last good one", async () => {
    // Without the device's own copy of the app, so that the test can answer for the server.
    const { page, end } = await visit(now.browser, DESK, false);
    await openExample(page);
    await show(page, "#/night");
    const asked: string[] = [];
    await page.route("**/forecast*.csv", async (route) => {
      const url = route.request().url();
      asked.push(url);
      if (url.endsWith("forecast-1.csv")) await route.fulfill({ body: CSV.replace("4.5", "3.5") });
      else await route.fulfill({ status: 503, body: "" });
    });
    await page.getByText("Fetch a forecast").click();
    const fetchIt = page.getByRole("button", { name: "Fetch it now" });
    expect(await fetchIt.count()).toBe(0);
    const fetchFrom = async (address: string): Promise<void> => {
      await page.getByLabel("Address").fill(address);
      await page.waitForTimeout(450);
      await fetchIt.click();
    };
    await fetchFrom("https://weather.example/forecast-1.csv");
    await page.getByText("not of the place the app came from", { exact: false }).waitFor();
    expect(asked).toEqual([]);
    await fetchFrom("forecast-1.csv");
    await page.getByText("The forecast came in: 3 hours.").waitFor();
    await untilPlanned(page);
    const low = page.getByRole("textbox", { name: "Low", exact: true });
    expect(await low.inputValue()).toBe("3.5");
    await fetchFrom("forecast-2.csv");
    await page.getByText("the address answered 503", { exact: false }).waitFor();
    expect(await low.inputValue()).toBe("3.5");
    await page.getByText(/^Fetched /).waitFor();
    await end();
  });

  it("keeps hours that are typed, over a reload with the server gone", async () => {
    await now.page.locator(".hours summary").click();
    await now.page.getByRole("button", { name: "Take out all hours" }).click();
    await now.page.waitForTimeout(450);
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
