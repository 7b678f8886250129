import { checks } from "@nightspan/checks";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { BODY_MARKS, bodyMark, toldBodyMark } from "./body-mark.ts";
import rows from "./body-mark.checks.json" with { type: "json" };

checks(rows, ({ height_m, stature_m }) => ({ mark_m: bodyMark(height_m, stature_m).markM }));

describe("bodyMark", () => {
  it("names the place a strap is set at by its nearest mark", () => {
    expect(bodyMark(1.7, 1.75).mark).toBe("forehead");
    expect(bodyMark(1.44, 1.75).mark).toBe("shoulder");
    expect(bodyMark(2.1, 1.75).mark).toBe("reach");
  });

  it("names a fist above the head only where it is just right, else crown or reach", () => {
    const fistM = 1.055 * 1.75;
    const off = (byM: number) => bodyMark(fistM + byM, 1.75).mark;
    expect([0, 0.024, -0.024].map(off)).toEqual(Array(3).fill("fist-above-head"));
    expect([-0.03, 0.05, 0.07].map(off)).toEqual(["crown", "crown", "crown"]);
    expect(off(0.15)).toBe("reach");
  });

  it("says how far the height is from the mark", () => {
    expect(bodyMark(2.2, 1.75).deviationM).toBeCloseTo(0.1, 12);
    expect(bodyMark(0.4, 1.6).deviationM).toBeCloseTo(0.4 - 0.285 * 1.6, 12);
  });

  it("is told of the height to 5 cm, with what is over or under it", () => {
    // Eyes 1.591 m, mouth 1.522 m: 1.56 m is told as 1.55 m, nearer to the mouth than 1.56 m is.
    expect([bodyMark(1.56, 1.7).mark, toldBodyMark(1.56, 1.7).mark]).toEqual(["eyes", "mouth"]);
    // Top of the head 1.70 m, full reach 2.04 m: 1.85 m lies between, and is no mark of its own.
    expect(toldBodyMark(1.85, 1.7)).toMatchObject({ mark: "crown", deviationM: 0.15 });
    expect(toldBodyMark(1.9, 1.7)).toMatchObject({ mark: "reach", deviationM: -0.15 });
  });

  it("is never nearer to another mark of the same person", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 3, noNaN: true }),
        fc.double({ min: 1, max: 2.2, noNaN: true }),
        (h, s) => {
          const { deviationM } = bodyMark(h, s);
          const others = BODY_MARKS.filter(({ mark }) => mark !== "fist-above-head");
          return others.every(({ ofStature }) => Math.abs(h - ofStature * s) >= Math.abs(deviationM));
        },
      ),
      { seed: 1, numRuns: 200 },
    );
  });

  it("scales with the person: the same share of stature is the same mark", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 1.3, noNaN: true }),
        fc.double({ min: 1, max: 2.2, noNaN: true }),
        (r, s) => {
          const here = bodyMark(r * s, s);
          const nearTie = Math.abs(here.deviationM) / s;
          const other = bodyMark(r * 1.5, 1.5);
          if (here.mark !== other.mark && [here.mark, other.mark].includes("fist-above-head")) return true;
          return here.mark === other.mark || Math.abs(Math.abs(other.deviationM) / 1.5 - nearTie) < 1e-9;
        },
      ),
      { seed: 1, numRuns: 200 },
    );
  });
});
