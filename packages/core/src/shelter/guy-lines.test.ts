import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { berthOn, PITCH, RECTANGLE } from "./berth.fixture.ts";
import { aboveGroundM } from "./ground-plane.ts";
import { guyLines, guyPullN } from "./guy-lines.ts";
import { pitchTarp, type Pitch } from "./tarp-geometry.ts";

const rise = fc.double({ min: -0.3, max: 0.3, noNaN: true });
const angle = fc.double({ min: 0.15, max: 0.8, noNaN: true });

describe("guys", () => {
  it("end in the ground, as long as from cloth to peg", () => {
    fc.assert(
      fc.property(rise, rise, angle, (alongRise, acrossRise, side) => {
        const ground = { alongRise, acrossRise };
        const pitch: Pitch = { ...PITCH, leftAngle: side, rightAngle: side };
        const tarp = pitchTarp(RECTANGLE, pitch, berthOn(ground));
        const guys = guyLines(tarp, ground, 1);
        expect(guys.map(({ name }) => name)).toEqual([
          "left/head",
          "left/mid-1",
          "left/foot",
          "right/head",
          "right/mid-1",
          "right/foot",
        ]);
        for (const { from, peg, lengthM } of guys) {
          if (lengthM === 0) continue;
          expect(aboveGroundM(ground, peg)).toBeCloseTo(0, 9);
          const straight = Math.hypot(peg[0] - from[0], peg[1] - from[1], peg[2] - from[2]);
          expect(lengthM).toBeCloseTo(straight, 9);
          expect(Math.abs(peg[1])).toBeGreaterThan(Math.abs(from[1]));
        }
      }),
      { seed: 1, numRuns: 100 },
    );
  });

  it("run out along the diagonals at 45° on the level", () => {
    const tarp = pitchTarp(RECTANGLE, PITCH, berthOn());
    for (const { from, peg, angleRad } of guyLines(tarp, berthOn().ground, 0)) {
      expect(Math.abs(peg[0] - from[0])).toBeCloseTo(Math.abs(peg[1] - from[1]), 9);
      expect(angleRad).toBeCloseTo(Math.PI / 4, 9);
    }
  });

  it("are one a side for a diamond, and none where the corner is at the ground", () => {
    const diamond = pitchTarp(
      { shape: "diamond", ridgeM: 4, widthM: 4 },
      { ...PITCH, leftAngle: 0.3 },
      berthOn(),
    );
    expect(guyLines(diamond, berthOn().ground, 0).map(({ name }) => name)).toEqual([
      "left/point",
      "right/point",
    ]);
    const low = pitchTarp(
      RECTANGLE,
      { ...PITCH, headTieM: 0.9, footTieM: 0.9, leftAngle: Math.asin(0.6) },
      berthOn(),
    );
    const pegged = guyLines(low, berthOn().ground, 0).filter(({ name }) => name.startsWith("left"));
    for (const { lengthM, from, peg } of pegged) {
      expect(lengthM).toBe(0);
      expect(peg).toEqual(from);
    }
  });

  it("share an edge by the stretch each holds, more where they run aslant: worked for one tie-out", () => {
    const guys = guyLines(pitchTarp(RECTANGLE, PITCH, berthOn()), berthOn().ground, 1);
    const pulls = guys.slice(0, 3).map((guy) => guyPullN(guy, { left: 100, right: 0 }));
    // Corners hold a quarter each; out along the diagonal at 45° down, √¾ of a pull lies across the ridge.
    const corner = 25 / Math.sqrt(0.75);
    [corner, 50, corner].forEach((pull, index) => expect(pulls[index]).toBeCloseTo(pull, 9));
    expect(guys.slice(3).map((guy) => guyPullN(guy, { left: 100, right: 0 }))).toEqual([0, 0, 0]);
  });

  it("hold folds and doors of closed ends, and the whole of each edge", () => {
    const ground = { alongRise: 0.05, acrossRise: -0.1 };
    for (const closedEnds of [["foot"], ["head", "foot"]] as const) {
      const guys = guyLines(pitchTarp(RECTANGLE, { ...PITCH, closedEnds }, berthOn(ground)), ground, 0);
      expect(guys.map(({ name }) => name)).toEqual([
        "left/head",
        "left/foot",
        "right/head",
        "right/foot",
        ...closedEnds.map((end) => `${end}-door`),
      ]);
      const across = guys.map(({ from, peg, lengthM, shares }) => {
        expect(aboveGroundM(ground, peg)).toBeCloseTo(0, 9);
        return (shares.left * Math.hypot(peg[1] - from[1], peg[2] - from[2])) / lengthM;
      });
      expect(across.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
      for (const { name, from, peg } of guys.filter(({ name }) => name.endsWith("-door"))) {
        expect([name, peg[0], peg[1]]).toEqual([name, from[0], from[1]]);
      }
    }
  });
});
