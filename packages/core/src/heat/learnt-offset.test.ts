import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { learntOffset, LEARNT_LEAST_BAND_K, type Felt, type NightFelt } from "./learnt-offset.ts";

const FELT: readonly Felt[] = ["warm", "right", "cool", "cold"];
const night = fc.record({
  marginK: fc.double({ min: -15, max: 20, noNaN: true }),
  felt: fc.constantFrom(...FELT),
});
const nights = fc.array(night, { maxLength: 12 });
const RUNS = { seed: 1, numRuns: 300 };

describe("what the log teaches", () => {
  it("is nothing without nights", () => {
    expect(learntOffset([])).toEqual({ nights: 0, offsetK: 0, bandK: 4 });
  });

  it("moves colder for a cold back, never colder for a right or a warm night, and in the order of the words", () => {
    fc.assert(
      fc.property(nights, fc.double({ min: -15, max: 20, noNaN: true }), (before, marginK) => {
        const [warm = NaN, right = NaN, cool = NaN, cold = NaN] = FELT.map(
          (felt) => learntOffset([...before, { marginK, felt }]).offsetK,
        );
        const { offsetK } = learntOffset(before);
        expect(cold).toBeGreaterThanOrEqual(offsetK - 1e-9);
        expect(right).toBeLessThanOrEqual(offsetK + 1e-9);
        expect(warm).toBeLessThanOrEqual(right + 1e-9);
        expect(right).toBeLessThanOrEqual(cool + 1e-9);
        expect(cool).toBeLessThanOrEqual(cold + 1e-9);
      }),
      RUNS,
    );
  });

  it("does not hang on the order of the nights, and is never wider than with none nor narrower than its floor", () => {
    fc.assert(
      fc.property(nights, (given) => {
        const found = learntOffset(given);
        expect(learntOffset([...given].reverse())).toEqual(found);
        expect(found.bandK).toBeLessThanOrEqual(4 + 1e-9);
        expect(found.bandK).toBeGreaterThanOrEqual(LEARNT_LEAST_BAND_K);
      }),
      RUNS,
    );
  });

  it("is the mean of the posterior, as a plain sum over a fine grid has it", () => {
    const given: readonly NightFelt[] = [
      { marginK: 3, felt: "cold" },
      { marginK: 5, felt: "cool" },
      { marginK: 6, felt: "right" },
    ];
    const logistic = (x: number) => 1 / (1 + Math.exp(-x));
    const s = (2.5 * Math.sqrt(3)) / Math.PI;
    let [mass, mean] = [0, 0];
    for (let offset = -15; offset <= 15; offset += 0.001) {
      const prior = Math.exp(-((offset * 1.645) ** 2) / 32);
      const cold = logistic((-3 - 3 + offset) / s);
      const cool = logistic((0 - 5 + offset) / s) - logistic((-3 - 5 + offset) / s);
      const right = logistic((6 - offset) / s);
      const weight = prior * cold * cool * right;
      mass += weight;
      mean += weight * offset;
    }
    expect(learntOffset(given).offsetK).toBeCloseTo(mean / mass, 3);
  });

  it("finds a sleeper who is colder than reckoned, and comes to its floor", () => {
    const cold = Array.from({ length: 6 }, (_, at): NightFelt[] => [
      { marginK: 4 + at / 2, felt: at < 3 ? "cool" : "right" },
      { marginK: 2, felt: "cold" },
    ]).flat();
    const { offsetK, bandK, nights: count } = learntOffset(cold);
    expect(count).toBe(12);
    expect(offsetK).toBeGreaterThan(4);
    expect(bandK).toBeLessThan(3.2);
    expect(learntOffset([{ marginK: 4, felt: "cold" }]).offsetK).toBeGreaterThan(1.5);
    expect(learntOffset([{ marginK: -12, felt: "cold" }]).offsetK).toBeLessThan(0.1);
    expect(Math.abs(learntOffset([{ marginK: 15, felt: "right" }]).offsetK)).toBeLessThan(0.01);
  });
});
