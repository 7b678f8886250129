import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { berthOn, PITCH, RECTANGLE } from "./berth.fixture.ts";
import { groundZM, type Point3 } from "./ground-plane.ts";
import { canClose, pitchTarp, type Pitch } from "./tarp-geometry.ts";

function distance(a: Point3, b: Point3): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}

const angle = fc.double({ min: 0.1, max: 1.3, noNaN: true });
const height = fc.double({ min: 1, max: 2.2, noNaN: true });

describe("a pitched tarp", () => {
  it("keeps the lengths of its cloth", () => {
    fc.assert(
      fc.property(angle, angle, height, height, (leftAngle, rightAngle, headTieM, footTieM) => {
        const pitch: Pitch = { ...PITCH, leftAngle, rightAngle, headTieM, footTieM };
        const { ridgeHead, ridgeFoot, corners } = pitchTarp(RECTANGLE, pitch, berthOn());
        expect(distance(ridgeHead, ridgeFoot)).toBeCloseTo(3.4, 9);
        for (const side of ["left", "right"] as const) {
          const [head, foot] = corners[side];
          expect(distance(head ?? ridgeHead, ridgeHead)).toBeCloseTo(1.5, 9);
          expect(distance(foot ?? ridgeFoot, ridgeFoot)).toBeCloseTo(1.5, 9);
        }
      }),
      { seed: 1, numRuns: 100 },
    );
  });

  it("hangs on the line between both ties, also on a slope", () => {
    const ground = { alongRise: -0.12, acrossRise: 0.05 };
    const { ridgeHead, ridgeFoot } = pitchTarp(RECTANGLE, PITCH, berthOn(ground));
    const footZM = groundZM(ground, 4.2, 0) + PITCH.footTieM;
    for (const [x, , z] of [ridgeHead, ridgeFoot]) {
      expect(z).toBeCloseTo(PITCH.headTieM + ((footZM - PITCH.headTieM) * x) / 4.2, 9);
    }
  });

  it("folds its ends without stretching: door edges keep their lengths", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.4, max: 1.2, noNaN: true }), (side) => {
        const pitch: Pitch = { ...PITCH, leftAngle: side, rightAngle: side, closedEnds: ["head", "foot"] };
        const { panels, ridgeHead } = pitchTarp({ ...RECTANGLE, ridgeM: 4 }, pitch, berthOn());
        const doors = panels.filter(({ name }) => name === "head-door");
        expect(doors.length).toBe(2);
        for (const { corners } of doors) {
          const [end, fold, folded] = corners;
          if (end === undefined || fold === undefined || folded === undefined) throw new Error("no door");
          expect(distance(end, ridgeHead)).toBeCloseTo(0, 9);
          expect(distance(end, folded)).toBeCloseTo(1.5, 9);
          expect(distance(fold, folded)).toBeCloseTo(1.5 * Math.cos(side), 9);
          expect(folded[1]).toBe(0);
        }
      }),
      { seed: 1, numRuns: 50 },
    );
  });

  it("closes only rectangles that are long enough and cut straight", () => {
    expect(canClose(RECTANGLE, 0.8)).toBe(true);
    expect(canClose({ ...RECTANGLE, ridgeM: 1.5 }, 0.3)).toBe(false);
    expect(canClose({ ...RECTANGLE, catenaryCutM: 0.1 }, 0.8)).toBe(false);
    expect(canClose({ ...RECTANGLE, shape: "hexagon" }, 0.8)).toBe(false);
  });
});
