import { afterEach, describe, expect, it, vi } from "vitest";

/** What the app remembers, read anew from this device's store. */
async function remembered(kept: string | null) {
  vi.resetModules();
  vi.stubGlobal("localStorage", { getItem: () => kept, setItem: () => undefined });
  const { settings } = await import("./settings.ts");
  return settings.value;
}

describe("settings", () => {
  afterEach(() => {
    vi.unstubAllGlobals();
  });

  it("come back as they were kept", async () => {
    const kept = {
      theme: "red-night",
      dayTheme: "dark",
      statureM: 1.6,
      steps: 7,
      looker: "Ilse",
      mapping: "{}",
    };
    expect(await remembered(JSON.stringify(kept))).toMatchObject(kept);
  });

  it("leave out what is not theirs, and start anew where nothing can be read", async () => {
    const odd = await remembered(JSON.stringify({ theme: "blue", statureM: 9, looker: 3 }));
    expect(odd).toMatchObject({ theme: "device", statureM: 1.75, looker: "" });
    expect(await remembered("{")).toMatchObject({ theme: "device", forecastAddress: "" });
    expect(await remembered(null)).toMatchObject({ steps: 6 });
  });
});
