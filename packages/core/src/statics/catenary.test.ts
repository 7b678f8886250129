import { checks } from "@nightspan/checks";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bracketedRoot } from "../numeric/bracketed-root.ts";
import bySag from "./catenary-by-sag.checks.json" with { type: "json" };
import rows from "./catenary.checks.json" with { type: "json" };
import { catenary, type Catenary, type CatenaryInput } from "./catenary.ts";

function hung(input: CatenaryInput): Catenary {
  const outcome = catenary(input);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.refusals));
  return outcome.value;
}

checks(rows, ({ span, rise, length, weight }) => {
  const figures = hung({ spanM: span, riseM: rise, lengthM: length, weightNPerM: weight });
  const { sagM, lowM, horizontalN, leftN, rightN } = figures;
  return { sag: sagM, low: lowM, horizontal: horizontalN, left: leftN, right: rightN };
});

checks(bySag, ({ span, sag, weight }) => {
  const at = (lengthM: number) => hung({ spanM: span, riseM: 0, lengthM, weightNPerM: weight });
  const { x: length } = bracketedRoot((lengthM) => at(lengthM).sagM - sag, span * 1.0001, span * 4);
  return { horizontal: at(length).horizontalN, end: at(length).rightN, length };
});

interface DrawnCable {
  readonly spanM: number;
  readonly slope: number;
  readonly longerLog: number;
  readonly weightNPerM: number;
}

describe("catenary", () => {
  const cable = fc.record({
    spanM: fc.double({ min: 0.1, max: 500, noNaN: true }),
    slope: fc.double({ min: -20, max: 20, noNaN: true }),
    longerLog: fc.double({ min: -9, max: 3, noNaN: true }),
    weightNPerM: fc.double({ min: 0.01, max: 100, noNaN: true }),
  });

  function inputOf({ spanM, slope, longerLog, weightNPerM }: DrawnCable): CatenaryInput {
    const riseM = slope * spanM;
    return { spanM, riseM, lengthM: Math.hypot(spanM, riseM) * (1 + 10 ** longerLog), weightNPerM };
  }

  it("carries its own weight, and its pull differs between the ends by weight times rise", () => {
    fc.assert(
      fc.property(cable, (given) => {
        const input = inputOf(given);
        const { horizontalN, leftN, rightN, residual } = hung(input);
        const { riseM, weightNPerM, lengthM } = input;
        expect(residual).toBeLessThan(1e-12);
        expect(Math.abs(rightN - leftN - weightNPerM * riseM)).toBeLessThan(1e-10 * (leftN + rightN));
        // Vertical pulls from T² − H²; their difference or sum is the weight.
        const [left, right] = [leftN, rightN].map((pull) =>
          Math.sqrt(Math.max(0, pull ** 2 - horizontalN ** 2)),
        );
        const weightN = weightNPerM * lengthM;
        const carried = [(left ?? 0) + (right ?? 0), Math.abs((left ?? 0) - (right ?? 0))];
        const miss = Math.min(...carried.map((sum) => Math.abs(sum - weightN)));
        expect(miss).toBeLessThan(1e-7 * (leftN + rightN));
      }),
      { seed: 1, numRuns: 500 },
    );
  });

  it("mirrors: the rise the other way swaps the ends and nothing else", () => {
    fc.assert(
      fc.property(cable, (given) => {
        const input = inputOf(given);
        const there = hung(input);
        const back = hung({ ...input, riseM: -input.riseM });
        expect(back.leftN).toBeCloseTo(there.rightN, 9);
        expect(back.horizontalN).toBe(there.horizontalN);
        expect(Math.abs(back.sagM - there.sagM)).toBeLessThan(1e-12 * there.sagM);
        expect(Math.abs(back.lowM - there.lowM)).toBeLessThan(1e-12 * there.sagM);
      }),
      { seed: 1, numRuns: 300 },
    );
  });

  it("has its low point as deep as its sag on level supports, and none below a steep cable's end", () => {
    const level = hung({ spanM: 4, riseM: 0, lengthM: 4.5, weightNPerM: 3 });
    expect(level.lowM).toBeCloseTo(level.sagM, 12);
    expect(hung({ spanM: 4, riseM: 2.5, lengthM: 4.75, weightNPerM: 3 }).lowM).toBe(0);
  });

  it("follows its parabola when shallow: H = w d²/8f and length = d (1 + 8/3 (f/d)²)", () => {
    const { sagM, horizontalN } = hung({ spanM: 4, riseM: 0, lengthM: 4.0001, weightNPerM: 3 });
    // The next term of the series is 4/3 (f/d)² = 1.3e-5.
    expect(horizontalN / ((3 * 16) / (8 * sagM)) - 1).toBeCloseTo((4 / 3) * (sagM / 4) ** 2, 9);
    expect(4 * (1 + (8 / 3) * (sagM / 4) ** 2)).toBeCloseTo(4.0001, 7);
  });

  it("refuses by field: too short, no span, NaN", () => {
    const fields = (input: CatenaryInput) => {
      const outcome = catenary(input);
      return outcome.ok ? [] : outcome.refusals.map(({ field }) => field);
    };
    expect(fields({ spanM: 3, riseM: 4, lengthM: 5, weightNPerM: 1 })).toEqual(["lengthM"]);
    expect(fields({ spanM: 0, riseM: 4, lengthM: 5, weightNPerM: 1 })).toContain("spanM");
    expect(fields({ spanM: 3, riseM: Number.NaN, lengthM: 5, weightNPerM: -1 })).toEqual([
      "riseM",
      "weightNPerM",
    ]);
  });
});
