import { describe, expect, it } from "vitest";
import { robustLine } from "./say-robust.ts";

describe("robustLine", () => {
  it("says how many still have a berth", () => {
    expect(robustLine({ asked: 14, robust: { errorM: 0.3, placed: 11, most: 14 } })).toEqual([
      "With positions off by up to 0.3\u00a0m, 11 of 14 still have a berth.",
    ]);
  });

  it("says what room for the error costs in people", () => {
    const kept = (placed: number) =>
      robustLine({ asked: 14, robust: { errorM: 0.3, placed, most: 14, asSurveyed: 13 } });
    expect(kept(13)).toEqual([
      "Berths keep room for positions off by up to 0.3\u00a0m; nobody loses a berth by it.",
    ]);
    expect(kept(12)).toEqual([
      "Berths keep room for positions off by up to 0.3\u00a0m: 12 of 14 have one, and without that room 13 would have one.",
    ]);
    expect(kept(0)).toEqual([
      "Berths keep room for positions off by up to 0.3\u00a0m: no pair of trees has so much, and without that room 13 would have one.",
    ]);
  });

  it("says so where none is sure, and nothing where nobody asked", () => {
    expect(robustLine({ asked: 14, robust: { errorM: 3, placed: 0, most: 14 } })).toEqual([
      "With positions off by up to 3.0\u00a0m no berth is sure before it is stepped out.",
    ]);
    expect(robustLine({ asked: 14 })).toEqual([]);
  });
});
