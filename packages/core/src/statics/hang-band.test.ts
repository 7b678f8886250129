import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chanceFrom, type Chance } from "../numeric/seeded.ts";
import {
  COME_QUANTITIES,
  comeOf,
  ERROR_NAMES,
  errorSizes,
  hangBand,
  inputSpread,
  type BandInput,
  type HangDeviation,
} from "./hang-band.ts";
import { hangCore } from "./hang-core.ts";
import { CENTRAL_90, USUAL_ERRORS } from "./hang-errors.ts";
import { hangInput, type HangFixture } from "./hang.fixture.ts";
import { hangRig } from "./hang-rig.ts";
import { siteOf } from "./hang-trial.ts";

function bandInput(given: HangFixture): BandInput {
  const input = hangInput(given);
  const rig = hangRig(input);
  const core = hangCore(rig, input);
  if (!core.ok) throw new Error(JSON.stringify(core.refusals));
  return { rig, rigInput: input, site: siteOf(input), trial: core.value.trial, errors: USUAL_ERRORS };
}

const NONE = ERROR_NAMES.reduce((off, name) => ({ ...off, [name]: 0 }), errorSizes(USUAL_ERRORS));

function drawn(chance: Chance, sizes: HangDeviation): HangDeviation {
  return ERROR_NAMES.reduce((off, name) => ({ ...off, [name]: sizes[name] * chance.normal() }), sizes);
}

describe("the band", () => {
  it("of input errors covers 88 to 92 % of 2000 seeded hangs, each quantity", () => {
    const input = bandInput({ spanM: 4.4 });
    const spread = inputSpread(input);
    const planned = comeOf(input, NONE);
    const chance = chanceFrom(11);
    const sizes = errorSizes(USUAL_ERRORS);
    const cases = Array.from({ length: 2000 }, () => comeOf(input, drawn(chance, sizes)));
    for (const quantity of COME_QUANTITIES.filter((name) => name !== "ridgelinePullN")) {
      const half = CENTRAL_90 * spread[quantity];
      const within = cases.filter((come) => Math.abs(come[quantity] - planned[quantity]) <= half).length;
      expect([quantity, within / 2000 > 0.88 && within / 2000 < 0.92, within / 2000]).toEqual([
        quantity,
        true,
        expect.any(Number),
      ]);
    }
  });

  it("agrees between the straight-line and the sampled way on a taut ridgeline too, to a tenth", () => {
    const input = bandInput({ spanM: 4.4, hammock: { ridgelineM: 2.49 } });
    const spread = inputSpread(input);
    const chance = chanceFrom(12);
    const small = { ...errorSizes(USUAL_ERRORS) };
    const cases = Array.from({ length: 2000 }, () => comeOf(input, drawn(chance, small)));
    for (const quantity of COME_QUANTITIES) {
      const values = cases.map((come) => come[quantity]);
      const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
      const sampled = Math.sqrt(
        values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1),
      );
      expect([quantity, Math.abs(sampled / spread[quantity] - 1) < 0.1]).toEqual([quantity, true]);
    }
  });

  it("holds the plan and both other bodies, and knows no ridgeline where there is none", () => {
    const span = fc.double({ min: 3.5, max: 5.5, noNaN: true });
    fc.assert(
      fc.property(span, fc.boolean(), (spanM, ridge) => {
        const input = bandInput({ spanM, ...(ridge ? { hammock: { ridgelineM: 2.49 } } : {}) });
        const band = hangBand(input);
        expect(band.ridgelinePullN === undefined).toBe(!ridge);
        for (const body of ["body", "vee", "arc"] as const) {
          const come = comeOf(input, NONE, body);
          for (const quantity of COME_QUANTITIES) {
            const [low, high] = band[quantity] ?? [-Infinity, Infinity];
            expect(come[quantity]).toBeGreaterThanOrEqual(low);
            expect(come[quantity]).toBeLessThanOrEqual(high);
          }
        }
      }),
      { seed: 1, numRuns: 20 },
    );
  });

  it("widens with a stepped span", () => {
    const taped = bandInput({ spanM: 4.4 });
    const stepped = { ...taped, errors: { ...USUAL_ERRORS, spanM: 0.2 } };
    expect(inputSpread(stepped)["head.angle"]).toBeGreaterThan(2 * inputSpread(taped)["head.angle"]);
  });
});
