import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  boxAround,
  boxesAlong,
  overlap,
  placesRound,
  TakenBoxes,
  textBox,
  type Box,
} from "./label-placement.ts";

const box = fc
  .tuple(
    fc.integer({ min: 0, max: 300 }),
    fc.integer({ min: 0, max: 300 }),
    fc.integer({ min: 1, max: 90 }),
    fc.integer({ min: 1, max: 30 }),
  )
  .map(([left, top, width, height]): Box => ({ left, top, right: left + width, bottom: top + height }));

describe("TakenBoxes", () => {
  it("finds exactly the boxes that overlap one that was taken", () => {
    fc.assert(
      fc.property(fc.array(box, { maxLength: 30 }), box, (boxes, asked) => {
        const taken = new TakenBoxes(40);
        for (const one of boxes) taken.take(one);
        expect(taken.isFree(asked)).toBe(!boxes.some((one) => overlap(one, asked)));
      }),
      { seed: 1, numRuns: 300 },
    );
  });
});

describe("places round a point", () => {
  it("keep a label off the point itself", () => {
    for (const place of placesRound([100, 100], 12, 15)) {
      expect(overlap(textBox(place, 60, 15), boxAround([100, 100], 7))).toBe(false);
    }
  });
});

describe("boxesAlong", () => {
  it("leave no gap for a label to slip through", () => {
    const boxes = boxesAlong(
      [
        [0, 0],
        [200, 0],
      ],
      false,
    );
    for (let x = 2; x < 196; x++) {
      expect(boxes.some((one) => overlap(one, { left: x, right: x + 12, top: -8, bottom: 8 }))).toBe(true);
    }
  });
});
