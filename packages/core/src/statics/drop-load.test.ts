import { checks } from "@nightspan/checks";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import rows from "./drop-load.checks.json" with { type: "json" };
import { dropLoad, HARD_SITTING_FACTOR } from "./drop-load.ts";

function peakOf(weightN: number, dropM: number, stiffnessNPerM: number): number {
  const outcome = dropLoad({ weightN, dropM, stiffnessNPerM });
  return outcome.ok ? outcome.value.peakN : NaN;
}

checks(rows, ({ weight, drop, stiffness }) => ({ peak: peakOf(weight, drop, stiffness) }));

describe("drop-load", () => {
  it("keeps the energy: fall and stretch against the spring", () => {
    const draw = fc.tuple(
      fc.double({ min: 100, max: 2000, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.double({ min: 500, max: 1e6, noNaN: true }),
    );
    fc.assert(
      fc.property(draw, ([weightN, dropM, stiffnessNPerM]) => {
        const peakN = peakOf(weightN, dropM, stiffnessNPerM);
        const stretchM = peakN / stiffnessNPerM;
        const fallen = weightN * (dropM + stretchM);
        expect((stiffnessNPerM * stretchM ** 2) / 2 / fallen).toBeCloseTo(1, 9);
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  it("comes to the factor of hard sitting from a fall of a seventh of the still stretch", () => {
    // (2.13 − 1)² = 1 + 2 k h / W, so h = 0.138 W/k: the two figures stand beside each other, not upon each other.
    const [weightN, stiffnessNPerM] = [800, 20_000];
    const stretchM = weightN / stiffnessNPerM;
    expect(peakOf(weightN, 0.1384 * stretchM, stiffnessNPerM) / weightN).toBeCloseTo(HARD_SITTING_FACTOR, 3);
    expect(peakOf(weightN, 0, stiffnessNPerM) / weightN).toBeLessThan(HARD_SITTING_FACTOR);
  });

  it("grows with the drop and with the stiffness", () => {
    expect(peakOf(800, 0.2, 20_000)).toBeGreaterThan(peakOf(800, 0.1, 20_000));
    expect(peakOf(800, 0.1, 40_000)).toBeGreaterThan(peakOf(800, 0.1, 20_000));
  });

  it("refuses by field", () => {
    const outcome = dropLoad({ weightN: 0, dropM: -1, stiffnessNPerM: Number.NaN });
    const fields = outcome.ok ? [] : outcome.refusals.map(({ field }) => field);
    expect(fields).toEqual(["weightN", "dropM", "stiffnessNPerM"]);
  });
});
