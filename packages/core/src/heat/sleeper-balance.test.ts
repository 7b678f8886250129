import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { SleeperBalanceInput } from "./balance-input.ts";
import { ICE_K } from "./heat-units.ts";
import { outerFilm } from "./outer-film.ts";
import { balanceAt } from "./required-insulation.ts";
import { STANDARD_MAN, STANDARD_WOMAN, type SleepingPerson } from "./sleep-heat.ts";
import { SKIN_K, SLEEP_STATES } from "./sleep-states.ts";
import { balanceOf, sleeperBalance } from "./sleeper-balance.ts";

const NIGHT = { airK: ICE_K, windMS: 0.3, humidityRatio: 0.5, radiantK: ICE_K };

function night(change: Partial<SleeperBalanceInput["night"]> = {}): SleeperBalanceInput["night"] {
  const airK = change.airK ?? NIGHT.airK;
  return { ...NIGHT, radiantK: airK, ...change };
}

function asleep(top: number, bottom: number, change: Partial<SleeperBalanceInput> = {}): SleeperBalanceInput {
  return {
    night: NIGHT,
    top: { insulationM2KPerW: top, permeabilityMS: 0.008 },
    bottom: { insulationM2KPerW: bottom, permeabilityMS: 0.008, coveredRatio: 1 },
    topShareRatio: 0.7,
    ...change,
  };
}

const insulation = fc.double({ min: 0, max: 3, noNaN: true });
const wind = fc.double({ min: 0, max: 12, noNaN: true });
const share = fc.double({ min: 0, max: 1, noNaN: true });
const airC = fc.double({ min: -30, max: 20, noNaN: true });
const RUNS = { seed: 1, numRuns: 150 };

describe("the balance of a sleeper", () => {
  it("lets out in comfort's own air just the heat that is made", () => {
    fc.assert(
      fc.property(insulation, insulation, share, wind, (top, bottom, topShareRatio, windMS) => {
        let airK = ICE_K;
        const at = () => balanceOf(asleep(top, bottom, { topShareRatio, night: night({ airK, windMS }) }));
        for (let pass = 0; pass < 60; pass++)
          airK = Math.min(Math.max(at().comfortK, ICE_K - 60), ICE_K + 30);
        const found = at();
        fc.pre(airK > ICE_K - 60 && airK < ICE_K + 30);
        expect(found.comfortK).toBeCloseTo(airK, 6);
        const { breathWM2, sweatWM2 } = balanceAt(SLEEP_STATES.comfort, airK, 0.5);
        const dry = topShareRatio * found.topWM2 + (1 - topShareRatio) * found.bottomWM2;
        expect(dry + breathWM2 + sweatWM2).toBeCloseTo(40, 4);
        expect(found.residualWM2).toBeCloseTo(0, 4);
      }),
      { seed: 1, numRuns: 40 },
    );
  });

  it("has a residual that is what the flows leave of the heat made", () => {
    const found = balanceOf(asleep(0.8, 0.5));
    const { breathWM2, sweatWM2, totalM2KPerW } = balanceAt(SLEEP_STATES.comfort, ICE_K, 0.5);
    const sweat = (sweatWM2 * totalM2KPerW) / found.totalM2KPerW;
    const dry = 0.7 * found.topWM2 + 0.3 * found.bottomWM2;
    expect(40 - dry - breathWM2 - sweat).toBeCloseTo(found.residualWM2, 8);
    expect(found.residualWM2).toBeLessThan(0);
  });

  it("has with equal halves the plain resistance and the air outside, whatever the shares", () => {
    fc.assert(
      fc.property(insulation, share, (r, topShareRatio) => {
        const still = { permeabilityMS: 0 };
        const found = balanceOf(
          asleep(r, r, {
            topShareRatio,
            top: { insulationM2KPerW: r, ...still },
            bottom: { insulationM2KPerW: r, ...still, coveredRatio: 1 },
          }),
        );
        const flow = (SKIN_K - ICE_K) / found.totalM2KPerW;
        expect(outerFilm(NIGHT)(SKIN_K - flow * r)).toBeCloseTo(flow, 5);
        expect(found.topM2KPerW).toBeCloseTo(found.totalM2KPerW, 9);
      }),
      RUNS,
    );
  });

  it("never gets colder for more insulation or more of the back covered", () => {
    fc.assert(
      fc.property(insulation, insulation, insulation, share, share, airC, (top, bottom, more, c, d, air) => {
        const at = (t: number, b: number, coveredRatio: number) =>
          balanceOf({
            ...asleep(t, b, { night: night({ airK: ICE_K + air }) }),
            bottom: { insulationM2KPerW: b, permeabilityMS: 0.008, coveredRatio },
          });
        const found = at(top, bottom, Math.min(c, d));
        const better = [
          at(top + more, bottom, Math.min(c, d)),
          at(top, bottom + more, Math.min(c, d)),
          at(top, bottom, Math.max(c, d)),
        ];
        for (const { comfortK, limitK } of better) {
          expect(comfortK).toBeLessThanOrEqual(found.comfortK + 1e-7);
          expect(limitK).toBeLessThanOrEqual(found.limitK + 1e-7);
        }
      }),
      RUNS,
    );
  });

  it("is never colder for a hung layer that the wind blows through than with a bare back", () => {
    fc.assert(
      fc.property(insulation, share, wind, airC, (bottom, coveredRatio, windMS, air) => {
        const at = (covered: number) =>
          balanceOf({
            ...asleep(1, bottom, { night: night({ airK: ICE_K + air, windMS }) }),
            bottom: { insulationM2KPerW: bottom, permeabilityMS: 0.5, coveredRatio: covered },
          });
        expect(at(coveredRatio).comfortK).toBeLessThanOrEqual(at(0).comfortK + 1e-7);
      }),
      RUNS,
    );
  });

  it("never loses less for more wind, a more open cloth or a colder sky", () => {
    fc.assert(
      fc.property(insulation, insulation, wind, wind, airC, (top, bottom, a, b, air) => {
        const airK = ICE_K + air;
        const at = (windMS: number, skyK = 0, permeabilityMS = 0.008) =>
          balanceOf({
            ...asleep(top, bottom, { night: night({ airK, windMS, radiantK: airK - skyK }) }),
            top: { insulationM2KPerW: top, permeabilityMS },
          });
        const [calm, windy] = [at(Math.min(a, b)), at(Math.max(a, b))];
        expect(windy.topWM2).toBeGreaterThanOrEqual(calm.topWM2 - 1e-7);
        expect(windy.bottomWM2).toBeGreaterThanOrEqual(calm.bottomWM2 - 1e-7);
        expect(windy.comfortK).toBeGreaterThanOrEqual(calm.comfortK - 1e-7);
        expect(at(a, 15).topWM2).toBeGreaterThan(at(a).topWM2 - 1e-7);
        expect(at(1 + a, 0, 0.1).topWM2).toBeGreaterThanOrEqual(at(1 + a).topWM2 - 1e-7);
      }),
      RUNS,
    );
  });

  it("is the top alone where all the heat goes up, and the bottom alone where none does", () => {
    const all = balanceOf(asleep(1, 0.1, { topShareRatio: 1 }));
    expect(all.totalM2KPerW).toBeCloseTo(all.topM2KPerW, 9);
    const none = balanceOf(asleep(1, 0.1, { topShareRatio: 0 }));
    expect(none.totalM2KPerW).toBeCloseTo(none.bottomM2KPerW, 9);
  });

  it("has a cold back where nothing lies under it, and no worse than the film allows", () => {
    const found = balanceOf({
      ...asleep(1, 0.1),
      top: { insulationM2KPerW: 1, permeabilityMS: 0 },
      bottom: { insulationM2KPerW: 0.1, permeabilityMS: 0, coveredRatio: 1 },
      night: night({ windMS: 0.3 }),
    });
    expect(found.comfortK - ICE_K).toBeCloseTo(16.5, 1);
    expect(found.bottomWM2).toBeGreaterThan(4 * found.topWM2);
    expect(balanceOf(asleep(1, 0)).bottomWM2).toBeCloseTo(outerFilm(NIGHT)(SKIN_K), 6);
  });

  it("loses through a bare head, less through a hat, least through a hood", () => {
    const of = (head: "hood" | "hat" | "bare") => balanceOf(asleep(1, 1, { head })).comfortK;
    expect(of("hood")).toBeLessThan(of("hat"));
    expect(of("hat")).toBeLessThan(of("bare"));
  });

  it("tells a band of 4 K that widens in the deep cold", () => {
    expect(balanceOf(asleep(0.8, 0.8)).bandK).toBe(4);
    expect(balanceOf(asleep(2, 2)).bandK).toBeGreaterThan(6);
  });
});

describe("the person", () => {
  const of = (person: SleepingPerson) => balanceOf(asleep(1, 1, { person }));

  it("is the standard woman for comfort and the standard man for the limit where nobody is named", () => {
    const pair = balanceOf(asleep(1, 1));
    expect(of(STANDARD_WOMAN).comfortK).toBeCloseTo(pair.comfortK, 9);
    expect(of(STANDARD_MAN).limitK).toBeCloseTo(pair.limitK, 9);
  });

  it("needs warmer air the older and the more they say that they sleep cold", () => {
    const woman = of(STANDARD_WOMAN).comfortK;
    expect(of({ ...STANDARD_WOMAN, ageYears: 65 }).comfortK).toBeGreaterThan(woman);
    expect(of({ ...STANDARD_WOMAN, sleeps: "cold" }).comfortK).toBeGreaterThan(woman);
    expect(of({ ...STANDARD_WOMAN, sleeps: "warm" }).comfortK).toBeLessThan(woman);
  });

  it("is at 16 to 18 never warmer than the standard woman, nor than a man of 35", () => {
    const body = fc.record({
      massKg: fc.double({ min: 40, max: 110, noNaN: true }),
      statureM: fc.double({ min: 1.5, max: 2, noNaN: true }),
      ageYears: fc.integer({ min: 16, max: 18 }),
      sex: fc.constantFrom("f" as const, "m" as const),
    });
    const man = of({ massKg: 78, statureM: 1.78, ageYears: 35, sex: "m", sleeps: "usual" });
    fc.assert(
      fc.property(body, (young) => {
        const found = of({ ...young, sleeps: "usual" });
        expect(found.comfortK).toBeGreaterThanOrEqual(of(STANDARD_WOMAN).comfortK - 1e-9);
        expect(found.limitK).toBeGreaterThanOrEqual(of(STANDARD_WOMAN).limitK - 1e-9);
        expect(found.comfortK).toBeGreaterThan(man.comfortK);
        expect(found.limitK).toBeLessThan(found.comfortK);
      }),
      RUNS,
    );
  });

  it("is not a child, and every fault is named", () => {
    const outcome = sleeperBalance({
      ...asleep(-1, 1, { person: { ...STANDARD_WOMAN, ageYears: 12 } }),
      topShareRatio: 2,
      night: night({ windMS: -1 }),
    });
    expect(outcome.ok ? [] : outcome.refusals.map(({ field }) => field)).toEqual([
      "night.windMS",
      "top.insulationM2KPerW",
      "topShareRatio",
      "person.ageYears",
    ]);
  });
});
