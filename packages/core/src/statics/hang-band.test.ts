import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chanceFrom, type Chance } from "../numeric/seeded.ts";
import {
  COME_QUANTITIES,
  comeOf,
  ERROR_NAMES,
  errorSizes,
  hangBand,
  inputBand,
  inputSpread,
  type BandInput,
  type ComeQuantity,
  type HangDeviation,
} from "./hang-band.ts";
import { NO_DEVIATION } from "./hang-deviation.ts";
import { hangCore } from "./hang-core.ts";
import { CENTRAL_90, USUAL_ERRORS } from "./hang-errors.ts";
import { hangInput, type HangFixture } from "./hang.fixture.ts";
import { hangRig } from "./hang-rig.ts";
import { siteOf } from "./hang-trial.ts";

const FREE = { footRaiseMinM: -1, footRaiseMaxM: 1, lowPointMinM: 0, seatHeightMaxM: 3 };

function findBandInput(given: HangFixture, spanErrorM = USUAL_ERRORS.spanM): BandInput | undefined {
  const input = hangInput({ ...given, limits: { ...FREE, ...given.limits } });
  const rig = hangRig(input);
  const core = hangCore(rig, input);
  if (!core.ok) return undefined;
  const errors = { ...USUAL_ERRORS, spanM: spanErrorM };
  return { rig, rigInput: input, site: siteOf(input), trial: core.value.trial, errors };
}

function bandInput(given: HangFixture, spanErrorM?: number): BandInput {
  const input = findBandInput(given, spanErrorM);
  if (input === undefined) throw new Error("refused");
  return input;
}

function drawn(chance: Chance, sizes: HangDeviation): HangDeviation {
  const off = { ...sizes };
  for (const name of ERROR_NAMES) off[name] *= chance.normal();
  return off;
}

function valuesOf(input: BandInput, seed: number, cases: number): readonly ReturnType<typeof comeOf>[] {
  const chance = chanceFrom(seed);
  const sizes = errorSizes(input.errors);
  return Array.from({ length: cases }, () => comeOf(input, drawn(chance, sizes)));
}

/** A ridgeline that goes slack in a twentieth of cases or more starts its band at 0: nothing lies below. */
function expectedShare(values: readonly number[]): number {
  const slack = values.filter((value) => value === 0).length / values.length;
  if (slack < 0.05) return 0.9;
  return slack < 0.95 ? 0.95 : 1;
}

const RIDGE = { ridgelineM: 2.49 };
const LONG = { lengthM: 3.35, ridgelineM: 2.78 };

/** Ordinary hangs, and those that bend: short straps, taut and nearly slack ridgelines, slopes, stepped spans. */
const HARD: readonly (readonly [what: string, fixture: HangFixture, spanErrorM: number])[] = [
  ["no ridgeline", { spanM: 4.4 }, 0.05],
  ["taut ridgeline", { spanM: 4.4, hammock: RIDGE }, 0.05],
  ["taut ridgeline, span off a map", { spanM: 4.4, hammock: RIDGE }, 0.14],
  ["stepped span, sling", { spanM: 4.6, hammock: RIDGE, suspension: { type: "whoopie-sling" } }, 0.18],
  [
    "uphill, cloth that stretches",
    { spanM: 4.2, footGroundM: 0.5, hammock: { ...RIDGE, eaN: 30_000 } },
    0.05,
  ],
  ["downhill", { spanM: 3.7, footGroundM: -0.4 }, 0.05],
  ["straps of 7 cm", { spanM: 3.2, hammock: LONG }, 0.05],
  ["straps of 10 cm, span off a map", { spanM: 3.25, hammock: LONG }, 0.14],
  ["straps of 19 cm", { spanM: 3.4, hammock: LONG }, 0.05],
  ["short straps without a ridgeline", { spanM: 3.1 }, 0.05],
  ["ridgeline nearly slack", { spanM: 4.2, hammock: { ridgelineM: 2.8 } }, 0.14],
  ["short straps uphill", { spanM: 3.4, footGroundM: 0.6, hammock: { ridgelineM: 2.6 } }, 0.05],
];

const DRAWN = fc.record({
  spanM: fc.double({ min: 3.15, max: 5.5, noNaN: true }),
  footGroundM: fc.double({ min: -0.6, max: 0.6, noNaN: true }),
  lengthM: fc.double({ min: 2.8, max: 3.4, noNaN: true }),
  ridgeRatio: fc.option(fc.double({ min: 0.78, max: 0.94, noNaN: true }), { nil: undefined }),
  spanErrorM: fc.constantFrom(0.05, 0.1, 0.18),
});

type Drawn = typeof DRAWN extends fc.Arbitrary<infer T> ? T : never;

function inputOf({ lengthM, ridgeRatio, spanErrorM, ...pair }: Drawn): BandInput | undefined {
  const hammock = { lengthM, ...(ridgeRatio === undefined ? {} : { ridgelineM: ridgeRatio * lengthM }) };
  return findBandInput({ ...pair, hammock }, spanErrorM);
}

describe("the band of input errors", () => {
  it.each(HARD)("covers 88 to 92 %% of 4000 seeded cases, each quantity: %s", (_, fixture, spanErrorM) => {
    const input = bandInput(fixture, spanErrorM);
    const band = inputBand(input);
    const cases = valuesOf(input, 11, 4000);
    for (const [quantity, [low, high]] of told(band)) {
      const values = cases.map((come) => come[quantity]);
      const within = values.filter((value) => value >= low && value <= high).length / values.length;
      const off = within - expectedShare(values);
      expect([quantity, within, Math.abs(off) <= 0.02]).toEqual([quantity, within, true]);
    }
  });

  it("covers 88 to 92 % over 2000 seeded hangs, each with errors of its own", () => {
    const chance = chanceFrom(21);
    const within: Partial<Record<ComeQuantity, number>> = {};
    const hangs = fc.sample(DRAWN, { seed: 4, numRuns: 2800 }).flatMap((given) => inputOf(given) ?? []);
    const tried = hangs.slice(0, 2000);
    expect(tried).toHaveLength(2000);
    for (const input of tried) {
      const band = inputBand(input);
      const come = comeOf(input, drawn(chance, errorSizes(input.errors)));
      for (const [quantity, [low, high]] of told(band)) {
        const isWithin = come[quantity] >= low && come[quantity] <= high;
        within[quantity] = (within[quantity] ?? 0) + (isWithin ? 1 : 0);
      }
    }
    for (const quantity of COME_QUANTITIES.filter((name) => name !== "ridgelinePullN")) {
      const share = (within[quantity] ?? 0) / 2000;
      expect([quantity, share, share >= 0.88 && share <= 0.92]).toEqual([quantity, share, true]);
    }
  });

  it("agrees with straight lines through the plan where a hang bends little", () => {
    const input = bandInput({ spanM: 4.6 });
    const [band, spread, planned] = [inputBand(input), inputSpread(input), comeOf(input, NO_DEVIATION)];
    for (const [quantity, [low, high]] of told(band)) {
      const half = CENTRAL_90 * spread[quantity];
      expect(Math.abs(low - (planned[quantity] - half)) / half).toBeLessThan(0.2);
      expect(Math.abs(high - (planned[quantity] + half)) / half).toBeLessThan(0.2);
      const cases = valuesOf(input, 12, 2000).map((come) => come[quantity]);
      const covered = cases.filter((value) => Math.abs(value - planned[quantity]) <= half).length / 2000;
      expect([quantity, covered, covered > 0.88 && covered < 0.92]).toEqual([quantity, covered, true]);
    }
  });

  it("agrees with straight lines to a thousandth where errors are a fiftieth", () => {
    const input = bandInput({ spanM: 4.4, hammock: RIDGE });
    const small = Object.fromEntries(Object.entries(USUAL_ERRORS).map(([name, size]) => [name, size / 50]));
    const exact = { ...input, errors: { ...USUAL_ERRORS, ...small } };
    const [band, spread, planned] = [inputBand(exact), inputSpread(exact), comeOf(exact, NO_DEVIATION)];
    for (const [quantity, [low, high]] of told(band)) {
      const half = CENTRAL_90 * spread[quantity];
      expect((high - low) / (2 * half)).toBeCloseTo(1, 2);
      expect(((high + low) / 2 - planned[quantity]) / half).toBeCloseTo(0, 1);
    }
  });
});

describe("the band", () => {
  it("is physically possible: no end lies beyond what hangs with errors up to four standard deviations come to", () => {
    const seen = { shortest: Infinity };
    fc.assert(
      fc.property(DRAWN, (given) => {
        const input = inputOf(given);
        fc.pre(input !== undefined);
        seen.shortest = Math.min(seen.shortest, input.trial.straps.headStrapM);
        const band = hangBand(input);
        const chance = chanceFrom(31);
        const sizes = errorSizes(input.errors);
        const cases = (["body", "vee", "arc"] as const).flatMap((body) =>
          Array.from({ length: 200 }, () => comeOf(input, drawn(chance, sizes), body)),
        );
        for (const [quantity, [low, high]] of told(band)) {
          const values = cases.map((come) => come[quantity]);
          expect(low).toBeLessThanOrEqual(high);
          expect(low).toBeGreaterThanOrEqual(Math.min(...values));
          expect(high).toBeLessThanOrEqual(Math.max(...values));
          if (quantity.endsWith("N")) expect(low).toBeGreaterThanOrEqual(0);
          if (quantity.endsWith("angle")) expect(low).toBeGreaterThanOrEqual(0);
          if (quantity.endsWith("angle")) expect(high).toBeLessThan(Math.PI / 2);
        }
      }),
      { seed: 1, numRuns: 40 },
    );
    expect(seen.shortest).toBeLessThan(0.1);
  });

  it("holds the plan and both other bodies, and knows no ridgeline where there is none", () => {
    const span = fc.double({ min: 3.5, max: 5.5, noNaN: true });
    fc.assert(
      fc.property(span, fc.boolean(), (spanM, ridge) => {
        const input = bandInput({ spanM, ...(ridge ? { hammock: RIDGE } : {}) });
        const band = hangBand(input);
        expect(band.ridgelinePullN === undefined).toBe(!ridge);
        for (const body of ["body", "vee", "arc"] as const) {
          const come = comeOf(input, NO_DEVIATION, body);
          for (const [quantity, [low, high]] of told(band)) {
            expect(come[quantity]).toBeGreaterThanOrEqual(low);
            expect(come[quantity]).toBeLessThanOrEqual(high);
          }
        }
      }),
      { seed: 1, numRuns: 20 },
    );
  });

  it("of input errors lies within the whole one", () => {
    const input = bandInput({ spanM: 3.3, hammock: LONG });
    const [whole, part] = [hangBand(input), inputBand(input)];
    for (const [quantity, [low, high]] of told(part)) {
      expect(whole[quantity]?.[0]).toBeLessThanOrEqual(low);
      expect(whole[quantity]?.[1]).toBeGreaterThanOrEqual(high);
    }
  });

  it("widens with a stepped span", () => {
    const taped = bandInput({ spanM: 4.4 });
    const stepped = { ...taped, errors: { ...USUAL_ERRORS, spanM: 0.2 } };
    expect(inputSpread(stepped)["head.angle"]).toBeGreaterThan(2 * inputSpread(taped)["head.angle"]);
  });

  it("lets straps out that do not reach: nobody ties them to nothing", () => {
    const input = bandInput({ spanM: 3.2, hammock: LONG });
    const far = comeOf(input, { ...NO_DEVIATION, spanM: 0.3 });
    const further = comeOf(input, { ...NO_DEVIATION, spanM: 0.6 });
    // Straight and unloaded, then stretched under the weight: tan³ of the angle is about W/EA, whatever the span.
    expect(further["head.angle"]).toBeCloseTo(far["head.angle"], 1);
    expect(far["head.pullN"]).toBeLessThan(2.5 * input.rig.weightN);
  });
});

function told(band: ReturnType<typeof hangBand>) {
  return COME_QUANTITIES.flatMap((quantity) => {
    const range = band[quantity];
    return range === undefined ? [] : [[quantity, range] as const];
  });
}
