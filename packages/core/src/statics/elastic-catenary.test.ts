import { checks } from "@nightspan/checks";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { catenary } from "./catenary.ts";
import rows from "./elastic-catenary.checks.json" with { type: "json" };
import { elasticCatenary, type ElasticCatenary, type ElasticCatenaryInput } from "./elastic-catenary.ts";

function hung(input: ElasticCatenaryInput): ElasticCatenary {
  const outcome = elasticCatenary(input);
  if (!outcome.ok) throw new Error(JSON.stringify([input, outcome.refusals]));
  return outcome.value;
}

checks(rows, ({ span, rise, length, weight, ea }) => {
  const input = { spanM: span, riseM: rise, lengthM: length, weightNPerM: weight, eaN: ea };
  const { sagM, lowM, horizontalN, leftN, rightN, stretchedM } = hung(input);
  return { sag: sagM, low: lowM, horizontal: horizontalN, left: leftN, right: rightN, stretched: stretchedM };
});

describe("elastic-catenary", () => {
  const cable = fc.record({
    spanM: fc.double({ min: 0.1, max: 500, noNaN: true }),
    slope: fc.double({ min: -20, max: 20, noNaN: true }),
    lengthRatio: fc.double({ min: 0.1, max: 10, noNaN: true }),
    weightNPerM: fc.double({ min: 0.01, max: 100, noNaN: true }),
    stiffnessLog: fc.double({ min: -2.9, max: 12, noNaN: true }),
  });

  it("finds a rest for every cable in range, floppy to nearly rigid, long to short", () => {
    fc.assert(
      fc.property(cable, ({ spanM, slope, lengthRatio, weightNPerM, stiffnessLog }) => {
        const riseM = slope * spanM;
        const lengthM = lengthRatio * Math.hypot(spanM, riseM);
        const eaN = weightNPerM * lengthM * 10 ** stiffnessLog;
        const { residual, stretchedM, sagM } = hung({ spanM, riseM, lengthM, weightNPerM, eaN });
        expect(residual).toBeLessThan(1e-11);
        expect(stretchedM).toBeGreaterThanOrEqual(Math.hypot(spanM, riseM) * (1 - 1e-12));
        expect(sagM).toBeGreaterThan(0);
      }),
      { seed: 1, numRuns: 1000 },
    );
  });

  it("becomes the catenary as the stretch goes", () => {
    const shape = { spanM: 3, riseM: 0.4, lengthM: 3.3, weightNPerM: 20 };
    const rigid = catenary(shape);
    if (!rigid.ok) throw new Error("refused");
    const stiff = hung({ ...shape, eaN: 1e12 });
    expect(stiff.horizontalN).toBeCloseTo(rigid.value.horizontalN, 7);
    expect(stiff.sagM).toBeCloseTo(rigid.value.sagM, 8);
  });

  it("is a stretched cord when nearly weightless and short: pull = EA × strain along the chord", () => {
    const { rightN } = hung({ spanM: 4, riseM: 3, lengthM: 4, weightNPerM: 1e-6, eaN: 1000 });
    expect(rightN).toBeCloseTo(250, 4);
  });

  it("doubles its pulls when weight and stiffness double", () => {
    const once = hung({ spanM: 4, riseM: 1, lengthM: 3.9, weightNPerM: 5, eaN: 3000 });
    const twice = hung({ spanM: 4, riseM: 1, lengthM: 3.9, weightNPerM: 10, eaN: 6000 });
    expect(twice.leftN).toBeCloseTo(2 * once.leftN, 8);
    expect(twice.sagM).toBeCloseTo(once.sagM, 10);
  });

  it("refuses by field", () => {
    const outcome = elasticCatenary({ spanM: 4, riseM: 0, lengthM: 0.01, weightNPerM: 1, eaN: Number.NaN });
    expect(outcome.ok ? [] : outcome.refusals.map(({ field }) => field)).toEqual(["lengthM", "eaN"]);
  });
});
