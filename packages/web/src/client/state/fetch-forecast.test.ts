import { afterEach, describe, expect, it, vi } from "vitest";
import { fetchForecast } from "./fetch-forecast.ts";

const HERE = "https://camp.example/app/index.html#/night";

function answering(response: Partial<Response> | Error) {
  const asked = vi.fn<(url: URL) => Promise<Partial<Response>>>(() =>
    response instanceof Error ? Promise.reject(response) : Promise.resolve(response),
  );
  vi.stubGlobal("fetch", asked);
  return asked;
}

describe("fetchForecast", () => {
  afterEach(() => {
    vi.unstubAllGlobals();
  });

  it("asks nobody where the address is of another place, or is none", async () => {
    const asked = answering({ ok: true, text: () => Promise.resolve("") });
    for (const address of [
      "https://weather.example/x.csv",
      "http://camp.example/x.csv",
      "data:text/csv,at",
      "http://",
    ]) {
      expect((await fetchForecast(address, HERE)).ok, address).toBe(false);
    }
    expect(asked).not.toHaveBeenCalled();
  });

  it("brings the text of an address beside the app", async () => {
    const asked = answering({ ok: true, text: () => Promise.resolve("at,air_c") });
    expect(await fetchForecast("forecast.csv", HERE)).toEqual({ ok: true, text: "at,air_c" });
    expect(String(asked.mock.calls[0]?.[0])).toBe("https://camp.example/app/forecast.csv");
  });

  it("says why nothing came", async () => {
    answering({ ok: false, status: 503 });
    expect(await fetchForecast("forecast.csv", HERE)).toEqual({ ok: false, why: "the address answered 503" });
    answering(new TypeError("offline"));
    expect(await fetchForecast("forecast.csv", HERE)).toEqual({
      ok: false,
      why: "the address could not be reached",
    });
  });
});
