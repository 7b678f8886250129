import { checks } from "@nightspan/checks";
import { describe, expect, it } from "vitest";
import rows from "./lapse.checks.json" with { type: "json" };
import { coldPoolK, lapseK } from "./lapse.ts";

checks(rows, ({ camp_m, station_m }) => ({ lapse_k: lapseK(camp_m, station_m) }));

describe("height and hollows", () => {
  it("takes nothing at the station's own height, and gives back below it", () => {
    expect(lapseK(300, 300)).toBeCloseTo(0, 12);
    expect(lapseK(100, 300)).toBeCloseTo(1.3, 12);
  });

  it("pools most where it is clear and calm, not at all in wind or under cloud", () => {
    expect(coldPoolK(0, 0)).toBe(-5);
    expect(coldPoolK(0, 1.5)).toBeCloseTo(-2.5, 12);
    expect(coldPoolK(0.5, 0)).toBeCloseTo(-2.5, 12);
    expect(coldPoolK(1, 0)).toBeCloseTo(0, 12);
    expect(coldPoolK(0, 8)).toBeCloseTo(0, 12);
  });
});
