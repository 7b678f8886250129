import type { BandRange } from "@nightspan/core";
import { describe, expect, it } from "vitest";
import { okBand } from "./ok-band.ts";

const at = {
  x: 20,
  towards: 1,
  range: { low: 1.5, high: 1.8, bindsLow: "angle-flattest", bindsHigh: "strap-reach" },
  planned: 1.65,
  yOf: (heightM: number) => 400 - 100 * heightM,
} as const;

function parts(unsure?: BandRange): number {
  const item = okBand(unsure === undefined ? at : { ...at, unsure });
  return item.kind === "group" ? item.items.length : 0;
}

describe("okBand", () => {
  it("has whiskers where it is told how unsure the mark is", () => {
    expect(parts([1.55, 1.75])).toBe(parts() + 3);
  });

  it("has none where nobody knows, nor empty ones where they would not be seen", () => {
    for (const unsure of [
      [1.65, 1.65],
      [1.64, 1.66],
      [1.7, 1.6],
      [Number.NaN, 1.7],
    ] as const)
      expect(parts(unsure)).toBe(parts());
  });
});
