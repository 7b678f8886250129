import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { degrees } from "../quantity/angle.ts";
import { heightOversteps, strapOversteps } from "./hang-breaches.ts";
import { shortfall } from "./hang-deviation.ts";
import { hangCore } from "./hang-core.ts";
import { hangFigures } from "./hang-figures.ts";
import { hangInput, type HangFixture } from "./hang.fixture.ts";
import { moved, okEdges, okRanges, SET_QUANTITIES, type SetQuantity } from "./hang-ok.ts";
import { hangRig } from "./hang-rig.ts";
import { siteOf, startOf, strapFigures } from "./hang-trial.ts";
import type { HangInput } from "./hang-types.ts";

const USUAL = { reachM: 2.1, lowPointMinM: 0.2, footRaiseMinM: 0.15, footRaiseMaxM: 0.25 };

function plannedOf(input: HangInput) {
  const rig = hangRig(input);
  const core = hangCore(rig, input);
  return core.ok ? { rig, site: siteOf(input), trial: core.value.trial } : undefined;
}

function rangesOf(input: HangInput) {
  const planned = plannedOf(input);
  if (planned === undefined) throw new Error("refused");
  return okRanges(planned.rig, planned.site, input, planned.trial);
}

type Planned = NonNullable<ReturnType<typeof plannedOf>>;

/** Every limit's overstep with one quantity off by so much, from a solve of its own to the last digit. */
function overstepsAt(input: HangInput, { rig, site, trial }: Planned, quantity: SetQuantity, offM: number) {
  const setting = moved(trial.setting, quantity, offM);
  const figures = hangFigures(rig, site, setting, startOf(trial.straps));
  return [
    ...strapOversteps(input, strapFigures(rig, setting, figures)),
    ...heightOversteps(input, { setting, figures }),
  ];
}

const DRAWN = fc.record({
  spanM: fc.double({ min: 3.15, max: 5.2, noNaN: true }),
  footGroundM: fc.double({ min: -0.5, max: 0.5, noNaN: true }),
  lengthM: fc.double({ min: 2.8, max: 3.4, noNaN: true }),
  ridgeRatio: fc.option(fc.double({ min: 0.78, max: 0.93, noNaN: true }), { nil: undefined }),
  angleDeg: fc.double({ min: 27.5, max: 32.5, noNaN: true }),
  footRaiseM: fc.double({ min: 0.15, max: 0.25, noNaN: true }),
  minM: fc.option(fc.double({ min: 0.1, max: 0.8, noNaN: true }), { nil: 0 }),
  reachM: fc.double({ min: 1.7, max: 2.4, noNaN: true }),
});

function inputOf(given: typeof DRAWN extends fc.Arbitrary<infer T> ? T : never): HangInput {
  const { lengthM, ridgeRatio, angleDeg, footRaiseM, minM, reachM, ...pair } = given;
  return hangInput({
    ...pair,
    hammock: { lengthM, ...(ridgeRatio === undefined ? {} : { ridgelineM: ridgeRatio * lengthM }) },
    suspension: { minM },
    targets: { angle: degrees(angleDeg), footRaiseM },
    limits: { ...USUAL, reachM },
  });
}

/** A law over many seeded hangs, each way outwards from the plan. */
function eachWay(
  law: (
    input: HangInput,
    planned: Planned,
    quantity: SetQuantity,
    edge: { offM: number; binds: string },
  ) => void,
): void {
  let ways = 0;
  fc.assert(
    fc.property(DRAWN, (given) => {
      const input = inputOf(given);
      const planned = plannedOf(input);
      fc.pre(planned !== undefined);
      const edges = okEdges(planned.rig, planned.site, input, planned.trial);
      for (const quantity of SET_QUANTITIES) {
        const { low, high } = edges[quantity] ?? {};
        for (const edge of [low, high]) {
          if (edge === undefined) continue;
          ways++;
          law(input, planned, quantity, edge);
        }
      }
    }),
    { seed: 1, numRuns: 60 },
  );
  expect(ways).toBeGreaterThan(500);
}

describe("ok ranges", () => {
  it("end where the limit they name is met, to a millionth, from inside", () => {
    eachWay((input, planned, quantity, { offM, binds }) => {
      const oversteps = overstepsAt(input, planned, quantity, offM);
      const named = oversteps.filter(({ limit }) => limit === binds).map(({ over }) => over);
      expect(Math.max(...named)).toBeGreaterThan(-1.01e-6);
      expect(Math.max(...oversteps.map(({ over }) => over))).toBeLessThan(1e-8);
    });
  });

  it("keep every limit all the way, and break the named one a hair further", () => {
    eachWay((input, planned, quantity, { offM, binds }) => {
      for (const share of [0.07, 0.31, 0.5, 0.77, 0.98]) {
        const oversteps = overstepsAt(input, planned, quantity, share * offM);
        expect(Math.max(...oversteps.map(({ over }) => over))).toBeLessThan(1e-8);
      }
      const further = overstepsAt(input, planned, quantity, offM + Math.sign(offM || 1) * 1e-3);
      const back = overstepsAt(input, planned, quantity, offM - Math.sign(offM || 1) * 1e-3);
      const over = (steps: typeof further) =>
        Math.max(...steps.filter(({ limit }) => limit === binds).map((step) => step.over));
      if (offM !== 0) expect(over(further)).toBeGreaterThan(0);
      else expect(Math.max(over(further), over(back))).toBeGreaterThan(0);
    });
  });

  it("are told for all five things set, hold the plan, and never reach outside the angle limits", () => {
    fc.assert(
      fc.property(DRAWN, (given) => {
        const input = inputOf(given);
        const planned = plannedOf(input);
        fc.pre(planned !== undefined);
        const { rig, site, trial } = planned;
        const ranges = okRanges(rig, site, input, trial);
        expect(Object.keys(ranges)).toHaveLength(5);
        const { straps, setting } = trial;
        const inPlan = [
          setting.headHeightM,
          setting.footHeightM,
          straps.headStrapM,
          straps.footStrapM,
          input.spanM,
        ];
        SET_QUANTITIES.forEach((quantity, index) => {
          expect(ranges[quantity]?.low).toBeLessThanOrEqual((inPlan[index] ?? NaN) + 1e-9);
          expect(ranges[quantity]?.high).toBeGreaterThanOrEqual((inPlan[index] ?? NaN) - 1e-9);
        });
        const edges = okEdges(rig, site, input, trial);
        for (const quantity of SET_QUANTITIES) {
          for (const edge of [edges[quantity]?.low, edges[quantity]?.high]) {
            const { headDownN = NaN, footDownN = NaN, alongN = NaN } = edge?.at.figures ?? {};
            for (const angle of [headDownN, footDownN].map((downN) => Math.atan(downN / alongN))) {
              expect(angle).toBeGreaterThan(input.limits.angleMin - 1e-7);
              expect(angle).toBeLessThan(input.limits.angleMax + 1e-7);
            }
          }
        }
      }),
      { seed: 2, numRuns: 40 },
    );
  });

  it("tell the limit a person would name", () => {
    const range = rangesOf(hangInput({ spanM: 4.5, hammock: { ridgelineM: 2.49 }, limits: USUAL }));
    expect(range["head.strapHeightM"]?.bindsHigh).toBe("foot-raise-least");
    expect(range["head.strapHeightM"]?.bindsLow).toBe("foot-raise-most");
    expect(range.spanM).toMatchObject({ bindsLow: "angle-steepest", bindsHigh: "angle-flattest" });
  });

  it("stop at the reach and at the shortest sling where those come first", () => {
    const limits = { ...USUAL, reachM: 1.83, footRaiseMaxM: 0.3 };
    const reach = rangesOf(hangInput({ spanM: 5, limits }));
    expect(reach["foot.strapHeightM"]?.bindsHigh).toBe("strap-reach");
    expect(reach["foot.strapHeightM"]?.high).toBeCloseTo(1.83, 5);
    const sling = rangesOf(hangInput({ spanM: 4.2, suspension: { minM: 0.66 }, limits: USUAL }));
    expect(sling["head.strapLengthM"]?.bindsLow).toBe("sling-shortest");
    expect(sling["head.strapLengthM"]?.low).toBeCloseTo(0.66, 5);
  });

  it("stop where very stretchy straps only just reach in a straight line", () => {
    const limits = { ...USUAL, angleMin: degrees(12), footRaiseMinM: -1, footRaiseMaxM: 1 };
    const input = hangInput({
      suspension: { eaN: 4_000 },
      limits: { ...limits, seatHeightMaxM: 3 },
    });
    const planned = plannedOf(input);
    if (planned === undefined) throw new Error("refused");
    const edge = okEdges(planned.rig, planned.site, input, planned.trial).spanM?.high;
    expect(edge?.binds).toBe("angle-flattest");
    const setting = moved(planned.trial.setting, "spanM", edge?.offM ?? NaN);
    expect(shortfall(planned.rig, planned.site, setting)).toBeCloseTo(0, 6);
  });

  it("shrink as the angle limits close in", () => {
    const width = (fixture: HangFixture) => {
      const { low = NaN, high = NaN } = rangesOf(hangInput(fixture)).spanM ?? {};
      return high - low;
    };
    const narrow = { ...USUAL, angleMin: degrees(27), angleMax: degrees(33) };
    expect(width({ limits: narrow })).toBeLessThan(width({ limits: USUAL }));
  });

  it("are not told where the plan itself keeps not all of the limits", () => {
    const input = hangInput({ limits: USUAL });
    const planned = plannedOf(input);
    if (planned === undefined) throw new Error("refused");
    const stricter = { ...input, limits: { ...input.limits, footRaiseMinM: 0.21 } };
    expect(okRanges(planned.rig, planned.site, stricter, planned.trial)).toEqual({});
  });
});
