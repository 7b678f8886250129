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
  pegged: [],
  closedEnds: 0,
  massKg: 0.8,
  setN: 80,
  eaN: 20_000,
};

describe("what wind does to a tarp", () => {
  it("grows with the square of the gust at the edges, and never less in the ridge", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 8, noNaN: true }), (gustMS) => {
        const once = tarpLoads({ ...CALM, gustMS });
        const twice = tarpLoads({ ...CALM, gustMS: 2 * gustMS });
        expect(twice.edgeN.left / once.edgeN.left).toBeCloseTo(4, 9);
        expect(twice.gust.pullN).toBeGreaterThanOrEqual(once.gust.pullN);
        expect(once.edgeN.left).toBeCloseTo(once.edgeN.right, 9);
      }),
      { seed: 1, numRuns: 50 },
    );
  });

  it("is weight alone in a calm", () => {
    const { edgeN, calm, gust, asideN } = tarpLoads(CALM);
    expect([edgeN.left, edgeN.right, asideN]).toEqual([0, 0, 0]);
    expect(gust).toEqual(calm);
    expect(calm.sagM).toBeLessThan(0.06);
  });

  it("pulls at a side's edge: worked for 10 m/s on a side of 5.1 m² at 40°", () => {
    const { edgeN } = tarpLoads({ ...CALM, gustMS: 10 });
    // A sixth of the way from the duopitch's last row, 1.0 off the roof, to an upright board's 1.8; 62.5 Pa, 5.1 m².
    expect(edgeN.left).toBeCloseTo(clothEdgePullN((1 + 0.8 / 6) * 62.5 * 5.1), 9);
  });

  it("goes evenly from the duopitch to the monopitch row as the sides grow unlike", () => {
    const edgeAt = (apartDeg: number) => {
      const rightAngle = PITCH.leftAngle + (apartDeg * Math.PI) / 180;
      const tarp = pitchTarp(RECTANGLE, { ...PITCH, rightAngle }, berthOn());
      return tarpLoads({ ...CALM, tarp, gustMS: 10 }).edgeN.left / clothEdgePullN(62.5 * 5.1);
    };
    // Both sides beyond 30°: 1.1333 of the duopitch, 1.8 of the monopitch and of the board.
    expect(edgeAt(0.1)).toBeCloseTo(17 / 15 + 0.005 * (1.8 - 17 / 15), 9);
    expect(edgeAt(10)).toBeCloseTo((17 / 15 + 1.8) / 2, 9);
    expect(edgeAt(20)).toBeCloseTo(1.8, 9);
    expect(edgeAt(30)).toBeCloseTo(1.8, 9);
  });

  it("reckons a side pegged to the ground as a pitched roof: less with its ends shut than with air beneath", () => {
    const pegged = ["left", "right"] as const;
    const shut = tarpLoads({ ...CALM, gustMS: 10, pegged, closedEnds: 2 }).edgeN.left;
    const open = tarpLoads({ ...CALM, gustMS: 10 }).edgeN.left;
    // 40°: onto 0.475 + 2/3 (0.625 − 0.475) = 0.575, and 0.3 of suction inside.
    expect(shut).toBeCloseTo(clothEdgePullN(0.875 * 62.5 * 5.1), 6);
    expect(shut).toBeLessThan(open);
  });
});
