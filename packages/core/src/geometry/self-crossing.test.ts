import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { convexRings } from "./rings.fixture.ts";
import { findSelfCrossing } from "./self-crossing.ts";

describe("a ring that crosses itself", () => {
  it("is told by the sides that cross", () => {
    expect(
      findSelfCrossing([
        [0, 0],
        [2, 2],
        [2, 0],
        [0, 2],
      ]),
    ).toEqual([0, 2]);
  });

  it("includes a corner on another side, a spike, two equal corners and too few corners", () => {
    expect(
      findSelfCrossing([
        [0, 0],
        [4, 0],
        [4, 4],
        [2, 0],
        [0, 4],
      ]),
    ).toEqual([0, 2]);
    expect(
      findSelfCrossing([
        [0, 0],
        [4, 0],
        [2, 0],
        [2, 3],
      ]),
    ).toEqual([0, 1]);
    expect(
      findSelfCrossing([
        [0, 0],
        [0, 0],
        [1, 0],
        [1, 1],
      ]),
    ).toEqual([0, 1]);
    expect(
      findSelfCrossing([
        [0, 0],
        [1, 0],
      ]),
    ).toBeDefined();
    expect(findSelfCrossing([])).toBeDefined();
  });

  it("is not any convex ring, nor a hollow one", () => {
    fc.assert(
      fc.property(convexRings(), (ring) => {
        expect(findSelfCrossing(ring)).toBeUndefined();
      }),
      { seed: 1, numRuns: 200 },
    );
    expect(
      findSelfCrossing([
        [0, 0],
        [4, 0],
        [4, 1],
        [1, 1],
        [1, 4],
        [0, 4],
      ]),
    ).toBeUndefined();
  });
});
