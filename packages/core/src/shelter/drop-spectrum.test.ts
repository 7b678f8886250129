import { checks } from "@nightspan/checks";
import { describe, expect, it } from "vitest";
import rows from "./drop-spectrum.checks.json" with { type: "json" };
import { bestSpectrum, marshallPalmerSpectrum } from "./drop-spectrum.ts";

checks(rows, ({ law, rain_mm_h }) => {
  if (law === "best") return { median_mm: bestSpectrum(rain_mm_h).medianMm };
  const { medianMm, slopePerMm, waterRatio } = marshallPalmerSpectrum(rain_mm_h);
  // A ratio by volume, times 10⁶ g of water in a cubic metre.
  return { median_mm: medianMm, slope_per_mm: slopePerMm, water_g_m3: waterRatio * 1e6 };
});

describe.each([
  ["Best", bestSpectrum],
  ["Marshall and Palmer", marshallPalmerSpectrum],
])("drop sizes after %s", (_, spectrum) => {
  it.each([0.1, 1, 12, 90])("run from nothing to all, half at the median, in %s mm/h", (rain) => {
    const { shareBelow, medianMm } = spectrum(rain);
    expect(shareBelow(0)).toBe(0);
    expect(shareBelow(60)).toBeCloseTo(1, 12);
    expect(shareBelow(medianMm)).toBeCloseTo(0.5, 9);
    const shares = Array.from({ length: 80 }, (_, index) => shareBelow(index / 10));
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
  });

  it("are larger in heavier rain", () => {
    expect(spectrum(20).medianMm).toBeGreaterThan(spectrum(2).medianMm);
  });
});
