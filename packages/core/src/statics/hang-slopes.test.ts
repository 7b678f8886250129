import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { hangCore } from "./hang-core.ts";
import {
  COME_QUANTITIES,
  comeOf,
  deviated,
  deviatedRig,
  ERROR_NAMES,
  NO_DEVIATION,
  type BandInput,
  type ErrorName,
} from "./hang-deviation.ts";
import { USUAL_ERRORS } from "./hang-errors.ts";
import { hangFigures } from "./hang-figures.ts";
import { hangInput } from "./hang.fixture.ts";
import { hangRig } from "./hang-rig.ts";
import { hangSlopes, SLOPE_QUANTITIES, startOffBy } from "./hang-slopes.ts";
import { siteOf, startOf } from "./hang-trial.ts";

const DRAWN = fc.record({
  spanM: fc.double({ min: 3.3, max: 5.2, noNaN: true }),
  footGroundM: fc.double({ min: -0.5, max: 0.5, noNaN: true }),
  ridgelineM: fc.option(fc.double({ min: 2.4, max: 2.6, noNaN: true }), { nil: undefined }),
  clothEaN: fc.option(fc.double({ min: 20_000, max: 60_000, noNaN: true }), { nil: undefined }),
  eaN: fc.double({ min: 10_000, max: 100_000, noNaN: true }),
});

type Drawn = typeof DRAWN extends fc.Arbitrary<infer T> ? T : never;

function bandInput({ ridgelineM, clothEaN, eaN, ...pair }: Drawn): BandInput | undefined {
  const input = hangInput({
    ...pair,
    hammock: {
      ...(ridgelineM === undefined ? {} : { ridgelineM }),
      ...(clothEaN === undefined ? {} : { eaN: clothEaN }),
    },
    suspension: { eaN },
    limits: { lowPointMinM: 0 },
  });
  const rig = hangRig(input);
  const core = hangCore(rig, input);
  if (!core.ok) return undefined;
  return { rig, rigInput: input, site: siteOf(input), trial: core.value.trial, errors: USUAL_ERRORS };
}

function solvedAt(input: BandInput, spanM: number) {
  const off = { ...NO_DEVIATION, spanM };
  const { setting, site, letOut } = deviated(input, off);
  const rig = deviatedRig(input, off);
  return {
    rig,
    site,
    setting,
    letOut,
    figures: hangFigures(rig, site, setting, startOf(input.trial.straps)),
  };
}

/** Slopes by halving differences of the forward map, with the lowest node the same on both sides. */
function differences(input: BandInput, spanM: number, cause: ErrorName) {
  const off = (by: number) => ({ ...NO_DEVIATION, spanM, [cause]: by + (cause === "spanM" ? spanM : 0) });
  const [more, less] = [comeOf(input, off(STEP)), comeOf(input, off(-STEP))];
  return COME_QUANTITIES.map((quantity) => (more[quantity] - less[quantity]) / (2 * STEP));
}

const STEP = 1e-5;

describe("the slopes of a hang", () => {
  it("are the derivatives of the forward solve, for every cause, also where straps had to be let out", () => {
    const seen = { taut: 0, slack: 0, letOut: 0 };
    fc.assert(
      fc.property(DRAWN, fc.constantFrom(0, 0.05, 0.35), (drawn, spanM) => {
        const input = bandInput(drawn);
        fc.pre(input !== undefined);
        const solved = solvedAt(input, spanM);
        seen[solved.letOut ? "letOut" : solved.figures.ridgeN > 0 ? "taut" : "slack"]++;
        const slopes = hangSlopes(solved);
        const into = new Float64Array(SLOPE_QUANTITIES.length);
        for (const cause of ERROR_NAMES) {
          slopes(cause, into);
          differences(input, spanM, cause).forEach((slope, index) => {
            // A heavier sleeper is taken as the same shape; the hammock's own weight grows with it.
            const tolerance = cause === "massRatio" ? 0.015 : 2e-4;
            const size = index === 2 || index === 3 || index === 7 ? input.rig.weightN : 1;
            expect([
              cause,
              index,
              Math.abs((into[index] ?? NaN) - slope) <= tolerance * (Math.abs(slope) + size / 5),
            ]).toEqual([cause, index, true]);
          });
        }
      }),
      { seed: 1, numRuns: 60 },
    );
    expect(Math.min(seen.taut, seen.slack, seen.letOut)).toBeGreaterThan(5);
  });

  it("foretell the next rest: a solve started there needs no more than half the steps", () => {
    const input = bandInput({
      spanM: 4.4,
      footGroundM: 0.1,
      ridgelineM: 2.49,
      clothEaN: undefined,
      eaN: 40_000,
    });
    if (input === undefined) throw new Error("refused");
    const here = solvedAt(input, 0);
    hangSlopes(here);
    const start = startOffBy(here, "spanM", 0.005);
    const { site, setting } = solvedAt(input, 0.005);
    const cold = hangFigures(input.rig, site, setting);
    const warm = hangFigures(input.rig, site, setting, start);
    expect(warm.iterations).toBeLessThanOrEqual(cold.iterations / 2);
    expect(warm.alongN).toBeCloseTo(cold.alongN, 6);
  });
});
