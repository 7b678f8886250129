import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { berthOn, PITCH, RECTANGLE } from "./berth.fixture.ts";
import { clothEdgePullN } from "./ridge-pull.ts";
import { pitchTarp } from "./tarp-geometry.ts";
import { tarpLoads, type TarpLoadsInput } from "./tarp-loads.ts";

const CALM: TarpLoadsInput = {
  tarp: pitchTarp(RECTANGLE, PITCH, berthOn()),
  spanM: 4.2,
  gustMS: 0,
  blockageRatio: 0,
  massKg: 0.8,
  setN: 80,
  eaN: 20_000,
  guys: { left: 2, right: 2 },
};

describe("what wind does to a tarp", () => {
  it("grows with the square of the gust in the guys, and never less in the ridge", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 8, noNaN: true }), (gustMS) => {
        const once = tarpLoads({ ...CALM, gustMS });
        const twice = tarpLoads({ ...CALM, gustMS: 2 * gustMS });
        expect(twice.guyN.left / once.guyN.left).toBeCloseTo(4, 9);
        expect(twice.gust.pullN).toBeGreaterThanOrEqual(once.gust.pullN);
        expect(once.guyN.left).toBeCloseTo(once.guyN.right, 9);
      }),
      { seed: 1, numRuns: 50 },
    );
  });

  it("is weight alone in a calm", () => {
    const { guyN, calm, gust, asideN } = tarpLoads(CALM);
    expect([guyN.left, guyN.right, asideN]).toEqual([0, 0, 0]);
    expect(gust).toEqual(calm);
    expect(calm.sagM).toBeLessThan(0.06);
  });

  it("shares a side's pull among its guys: worked for 10 m/s on a side of 5.1 m² at 40°", () => {
    const { guyN } = tarpLoads({ ...CALM, gustMS: 10 });
    // The last row of the duopitch table, off the roof: 1.0 × 62.5 Pa × 5.1 m².
    expect(guyN.left).toBeCloseTo(clothEdgePullN(62.5 * 5.1) / 2, 9);
    const three = tarpLoads({ ...CALM, gustMS: 10, guys: { left: 3, right: 0 } });
    expect(three.guyN.left).toBeCloseTo((guyN.left * 2) / 3, 9);
    expect(three.guyN.right).toBe(0);
  });
});
