import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { degrees } from "../quantity/angle.ts";
import { hangCore } from "./hang-core.ts";
import { hangFigures } from "./hang-figures.ts";
import { hangInput, type HangFixture } from "./hang.fixture.ts";
import { moved, okRanges, SET_QUANTITIES, type SetQuantity } from "./hang-ok.ts";
import { hangRig } from "./hang-rig.ts";
import { siteOf, startOf, strapFigures } from "./hang-trial.ts";
import type { HangInput, OkRange } from "./hang-types.ts";

const USUAL = { reachM: 2.1, lowPointMinM: 0.2, footRaiseMinM: 0.1, footRaiseMaxM: 0.3 };

function rangesOf(input: HangInput) {
  const rig = hangRig(input);
  const core = hangCore(rig, input);
  if (!core.ok) throw new Error(JSON.stringify(core.refusals));
  const { trial } = core.value;
  return { rig, trial, ranges: okRanges(rig, siteOf(input), input, trial) };
}

/** Both straps' angles with one quantity off. */
function anglesAt(input: HangInput, quantity: SetQuantity, offM: number): readonly number[] {
  const { rig, trial } = rangesOf(input);
  const setting = moved(trial.setting, quantity, offM);
  const figures = hangFigures(rig, siteOf(input), setting, startOf(trial.straps));
  const { headAngle, footAngle } = strapFigures(rig, setting, figures);
  return [headAngle, footAngle];
}

function all(
  ranges: Readonly<Partial<Record<SetQuantity, OkRange>>>,
): readonly (readonly [SetQuantity, OkRange])[] {
  return SET_QUANTITIES.flatMap((quantity) => {
    const range = ranges[quantity];
    return range === undefined ? [] : [[quantity, range] as const];
  });
}

const FIXTURE = fc.record({
  spanM: fc.double({ min: 3.4, max: 5.2, noNaN: true }),
  footGroundM: fc.double({ min: -0.4, max: 0.4, noNaN: true }),
  ridge: fc.boolean(),
});

function inputOf({
  spanM,
  footGroundM,
  ridge,
}: {
  spanM: number;
  footGroundM: number;
  ridge: boolean;
}): HangInput {
  const fixture: HangFixture = { spanM, footGroundM, limits: { ...USUAL, reachM: 2.6 } };
  return hangInput(ridge ? { ...fixture, hammock: { ridgelineM: 2.49 } } : fixture);
}

describe("ok ranges", () => {
  it("hold the plan, are told for all five things set, and never reach outside the angle limits", () => {
    fc.assert(
      fc.property(FIXTURE, (given) => {
        const input = inputOf(given);
        const { trial, ranges } = rangesOf(input);
        expect(all(ranges)).toHaveLength(5);
        const planned: Record<SetQuantity, number> = {
          "head.strapHeightM": trial.setting.headHeightM,
          "foot.strapHeightM": trial.setting.footHeightM,
          "head.strapLengthM": trial.straps.headStrapM,
          "foot.strapLengthM": trial.straps.footStrapM,
          spanM: input.spanM,
        };
        for (const [quantity, { low, high }] of all(ranges)) {
          expect(low).toBeLessThanOrEqual(planned[quantity]);
          expect(high).toBeGreaterThanOrEqual(planned[quantity]);
          for (const end of [low, high]) {
            for (const angle of anglesAt(input, quantity, end - planned[quantity])) {
              expect(angle).toBeGreaterThan(input.limits.angleMin - 1e-6);
              expect(angle).toBeLessThan(input.limits.angleMax + 1e-6);
            }
          }
        }
      }),
      { seed: 1, numRuns: 12 },
    );
  });

  it("end where the named limit is met: a hair further breaks it", () => {
    const input = hangInput({ spanM: 4.5, hammock: { ridgelineM: 2.49 }, limits: USUAL });
    const { rig, trial, ranges } = rangesOf(input);
    const range = ranges["head.strapHeightM"];
    expect(range?.bindsHigh).toBe("foot-raise-least");
    const raiseAt = (heightM: number) => {
      const setting = moved(trial.setting, "head.strapHeightM", heightM - trial.setting.headHeightM);
      return hangFigures(rig, siteOf(input), setting, startOf(trial.straps)).footRaiseM;
    };
    expect(raiseAt(range?.high ?? NaN)).toBeGreaterThanOrEqual(USUAL.footRaiseMinM - 1e-9);
    expect(raiseAt((range?.high ?? NaN) + 2e-5)).toBeLessThan(USUAL.footRaiseMinM);
  });

  it("stop at the reach and at the shortest sling where those come first", () => {
    const reach = rangesOf(hangInput({ spanM: 5, limits: { ...USUAL, reachM: 1.83 } })).ranges;
    expect(reach["foot.strapHeightM"]?.bindsHigh).toBe("strap-reach");
    expect(reach["foot.strapHeightM"]?.high).toBeCloseTo(1.83, 4);
    const sling = rangesOf(hangInput({ spanM: 4.2, suspension: { minM: 0.66 }, limits: USUAL })).ranges;
    expect(sling["head.strapLengthM"]?.bindsLow).toBe("sling-shortest");
  });

  it("shrink as the angle limits close in", () => {
    const wide = rangesOf(hangInput({ limits: USUAL })).ranges.spanM;
    const narrow = rangesOf(hangInput({ limits: { ...USUAL, angleMin: degrees(27), angleMax: degrees(33) } }))
      .ranges.spanM;
    expect((narrow?.high ?? NaN) - (narrow?.low ?? NaN)).toBeLessThan(
      (wide?.high ?? NaN) - (wide?.low ?? NaN),
    );
  });
});
