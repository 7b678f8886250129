import { describe, expect, it } from "vitest";
import { flatAreaM2, flatSide, type TarpCut } from "./tarp-cut.ts";

const cut = (more: Partial<TarpCut>): TarpCut => ({ shape: "rectangle", ridgeM: 3.4, widthM: 3, ...more });
const area = (more: Partial<TarpCut>) => flatAreaM2(flatSide(cut(more), 1));

describe("a tarp laid flat", () => {
  it("has the area of its outline", () => {
    expect(area({})).toBeCloseTo(3.4 * 1.5, 12);
    expect(area({ shape: "diamond", ridgeM: 4.2, widthM: 4.2 })).toBeCloseTo((4.2 * 4.2) / 4, 12);
    expect(area({ shape: "hexagon", edgeM: 2 })).toBeCloseTo(((3.4 + 2) / 2) * 1.5, 12);
    expect(area({ shape: "asymmetric", skewM: 0.6 })).toBeCloseTo((3.4 * 1.5) / 2, 12);
  });

  it("loses two thirds of depth times length at each hollow edge", () => {
    // The parabola is drawn by six straight pieces, which take 1/36 less than its area.
    const hollow = area({ catenaryCutM: 0.12 });
    const lost = (2 / 3) * 0.12 * (3.4 + 1.5 + 1.5) * (1 - 1 / 36);
    expect(hollow).toBeCloseTo(3.4 * 1.5 - lost, 9);
  });

  it("shifts the corners of an asymmetric one each its own way", () => {
    const asymmetric = cut({ shape: "asymmetric", skewM: 0.5 });
    expect(flatSide(asymmetric, 1).corners).toEqual([[0.5, 1.5]]);
    expect(flatSide(asymmetric, -1).corners).toEqual([[-0.5, 1.5]]);
  });

  it("never bends in over the ridge", () => {
    for (const [, downM] of flatSide(cut({ shape: "hexagon", catenaryCutM: 0.6 }), 1).outline) {
      expect(downM).toBeGreaterThanOrEqual(0);
    }
  });
});
