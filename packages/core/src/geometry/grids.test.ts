import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { boxGrid } from "./box-grid.ts";
import type { Box, Point } from "./point.ts";
import { pointGrid } from "./point-grid.ts";
import { points } from "./rings.fixture.ts";

const BOXES: fc.Arbitrary<Box> = fc
  .tuple(points(100), fc.nat({ max: 400 }), fc.nat({ max: 40 }))
  .map(([at, w, h]) => ({
    minX: at[0],
    minY: at[1],
    maxX: at[0] + w / 10,
    maxY: at[1] + h / 10,
  }));

function foundPoints(spots: readonly Point[], box: Box, cell: number): number[] {
  const grid = pointGrid(
    Float64Array.from(spots, ([x]) => x),
    Float64Array.from(spots, ([, y]) => y),
    cell,
  );
  const found: number[] = [];
  grid.each(box.minX, box.minY, box.maxX, box.maxY, (index) => found.push(index));
  return found.sort((a, b) => a - b);
}

function foundBoxes(boxes: readonly Box[], box: Box): number[] {
  const found: number[] = [];
  boxGrid(boxes).each(box, (index) => found.push(index));
  return found.sort((a, b) => a - b);
}

function pointsIn(spots: readonly Point[], box: Box): number[] {
  return spots.flatMap(([x, y], index) =>
    x >= box.minX && x <= box.maxX && y >= box.minY && y <= box.maxY ? [index] : [],
  );
}

function meeting(boxes: readonly Box[], box: Box): number[] {
  return boxes.flatMap((other, index) =>
    other.minX <= box.maxX && box.minX <= other.maxX && other.minY <= box.maxY && box.minY <= other.maxY
      ? [index]
      : [],
  );
}

describe("grids", () => {
  it("find just the points of a rectangle, whatever the cell", () => {
    fc.assert(
      fc.property(
        fc.array(points(100), { maxLength: 60 }),
        BOXES,
        fc.constantFrom(0, 0.01, 3, 500),
        (spots, box, cell) => {
          expect(foundPoints(spots, box, cell)).toEqual(pointsIn(spots, box));
        },
      ),
      { seed: 1, numRuns: 200 },
    );
  });

  it("find each box that meets a box, once", () => {
    fc.assert(
      fc.property(fc.array(BOXES, { maxLength: 60 }), BOXES, (boxes, box) => {
        expect(foundBoxes(boxes, box)).toEqual(meeting(boxes, box));
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  it("bear points at one spot, on one line, and two clumps far apart", () => {
    const clumps: Point[] = [
      [0, 0],
      [0, 0],
      [1, 1],
      [1e7, 1e7],
      [1e7, 1e7 + 1],
    ];
    const all: Box = { minX: -1, minY: -1, maxX: 2, maxY: 2 };
    expect(foundPoints(clumps, all, 1)).toEqual([0, 1, 2]);
    expect(foundPoints([], all, 1)).toEqual([]);
    expect(foundBoxes([], all)).toEqual([]);
    const line = Array.from({ length: 50 }, (_, x): Point => [x, 0]);
    expect(foundPoints(line, { minX: 2.5, minY: 0, maxX: 5, maxY: 0 }, 1)).toEqual([3, 4, 5]);
  });
});
