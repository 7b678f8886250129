import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { CampPlace } from "./camp-places-types.ts";
import { greatestSum, type Vector } from "./greatest-sum.ts";
import { spokeConflicts } from "./spoke-conflicts.ts";

const DEGREES = Math.PI / 180;

/** A place from one tree to another on a bearing. */
function place(first: number, second: number, bearingDeg?: number): CampPlace {
  return {
    first,
    second,
    spanM: 4,
    spanErrorM: 0.1,
    dbhM: [0.3, 0.3],
    dbhAssumed: false,
    ...(bearingDeg === undefined ? {} : { bearingRad: bearingDeg * DEGREES }),
    stepItOut: false,
    stepped: false,
  };
}

describe("spokeConflicts", () => {
  it("lets hammocks go on in a line, and bars those with less than 120° between them", () => {
    expect(spokeConflicts([place(0, 1, 90), place(1, 2, 90)])).toEqual([]);
    expect(spokeConflicts([place(0, 1, 90), place(1, 2, 30)])).toEqual([]);
    expect(spokeConflicts([place(0, 1, 90), place(1, 2, 29)])).toEqual([[0, 1]]);
    expect(spokeConflicts([place(0, 1, 0), place(0, 2, 119)])).toEqual([[0, 1]]);
    expect(spokeConflicts([place(0, 2, 0), place(1, 2, 119)])).toEqual([[0, 1]]);
  });

  it("leaves places at different trees alone, and bars those whose bearing nobody knows", () => {
    expect(spokeConflicts([place(0, 1, 0), place(2, 3, 0)])).toEqual([]);
    expect(spokeConflicts([place(0, 1, 0), place(1, 2)])).toEqual([[0, 1]]);
  });

  it("bars just those of which both together pull a tree harder than one alone", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 359 }), fc.integer({ min: 0, max: 359 }), (a, b) => {
        const pulls = [a, b].map((bearing): Vector => [
          Math.sin(bearing * DEGREES),
          Math.cos(bearing * DEGREES),
        ]);
        const barred = spokeConflicts([place(0, 1, a), place(0, 2, b)]).length > 0;
        expect(greatestSum(pulls) > 1 + 1e-6).toBe(barred);
      }),
      { seed: 1, numRuns: 300 },
    );
  });
});
