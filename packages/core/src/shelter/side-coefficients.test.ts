import { checks } from "@nightspan/checks";
import { describe, expect, it } from "vitest";
import { closedSide, openSide } from "./side-coefficients.ts";
import rows from "./side-coefficients.checks.json" with { type: "json" };
import { canopyCoefficients } from "./wind-load.ts";

checks(rows, ({ pitch_deg, open_faces }) => ({ ...closedSide(pitch_deg, open_faces) }));

describe("wind on a tarp's side", () => {
  it("is the canopy's as far as its table goes, and an upright board's at 90°", () => {
    for (const roof of ["mono", "duo"] as const) {
      for (const pitch of [0, 12, 30]) {
        expect(openSide(roof, pitch, 0.4)).toEqual(canopyCoefficients(roof, pitch, 0.4));
      }
      expect(openSide(roof, 90, 0)).toEqual({ down: 1.8, up: 1.8 });
    }
    expect(openSide("duo", 60, 0).down).toBeCloseTo((0.9 + 1.8) / 2, 12);
  });

  it("without air beneath runs straight between its rows, and never jumps", () => {
    for (const faces of [0, 1, 2, 3]) {
      for (let deg = 0; deg < 90; deg++) {
        const [a, b] = [closedSide(deg, faces), closedSide(deg + 1, faces)];
        expect(Math.abs(a.down - b.down)).toBeLessThan(0.03);
        expect(Math.abs(a.up - b.up)).toBeLessThan(0.03);
      }
    }
    expect(closedSide(5, 0)).toEqual(closedSide(15, 0));
  });

  it("is least where all is shut and most where one face alone is open", () => {
    for (const deg of [20, 45, 70]) {
      const [shut, one, two] = [closedSide(deg, 0), closedSide(deg, 1), closedSide(deg, 2)];
      expect(shut.down).toBeLessThan(two.down);
      expect(two.down).toBeLessThan(one.down);
      expect(one.up).toBeGreaterThan(shut.up);
    }
  });
});
