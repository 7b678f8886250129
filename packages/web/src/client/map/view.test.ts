import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pinched } from "./gestures.ts";
import { panned, shiftBetween, zoomed, type View } from "./view.ts";

const view: View = { centreM: [10, 20], pxPerM: 30 };

/** Where a place of the ground stands in the window, from its middle. */
function place({ centreM, pxPerM }: View, [x, y]: readonly [number, number]): [number, number] {
  return [(x - centreM[0]) * pxPerM, (centreM[1] - y) * pxPerM];
}

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anyView = fc.record({
  centreM: fc.tuple(number(-500, 500), number(-500, 500)),
  pxPerM: number(2, 100),
});

describe("view", () => {
  it("moves the ground with the finger", () => {
    const [x, y] = place(panned(view, [60, -30]), [10, 20]);
    expect(x).toBeCloseTo(60, 9);
    expect(y).toBeCloseTo(-30, 9);
  });

  it("keeps the ground under the fingers while zooming", () => {
    fc.assert(
      fc.property(anyView, number(0.2, 5), number(-300, 300), number(-300, 300), (start, factor, x, y) => {
        const ground = [start.centreM[0] + x / start.pxPerM, start.centreM[1] - y / start.pxPerM] as const;
        const [px, py] = place(zoomed(start, factor, [x, y]), ground);
        expect(px).toBeCloseTo(x, 6);
        expect(py).toBeCloseTo(y, 6);
      }),
      { seed: 1, numRuns: 100 },
    );
  });

  it("stays within its scales", () => {
    expect(zoomed(view, 1000).pxPerM).toBe(120);
    expect(zoomed(view, 0.0001).pxPerM).toBe(1.5);
  });

  it("shows a picture drawn before where a new one would stand", () => {
    fc.assert(
      fc.property(anyView, anyView, number(-50, 50), number(-50, 50), (drawn, now, x, y) => {
        const ground = [x, y] as const;
        const shift = shiftBetween(drawn, now);
        const [px, py] = place(drawn, ground);
        const [wantX, wantY] = place(now, ground);
        expect(px * shift.scale + shift.right).toBeCloseTo(wantX, 5);
        expect(py * shift.scale + shift.down).toBeCloseTo(wantY, 5);
      }),
      { seed: 1, numRuns: 100 },
    );
  });
});

describe("two fingers", () => {
  it("move and scale the ground so that it stays under both", () => {
    const before = [
      [-50, 0],
      [50, 0],
    ] as const;
    const now = [
      [-80, 10],
      [120, 10],
    ] as const;
    const after = pinched(view, before, now);
    expect(after.pxPerM).toBeCloseTo(60, 9);
    const ground = [view.centreM[0] - 50 / view.pxPerM, view.centreM[1]] as const;
    expect(place(after, ground)[0]).toBeCloseTo(-80, 9);
    expect(place(after, ground)[1]).toBeCloseTo(10, 9);
  });
});
