import { describe, expect, it } from "vitest";
import { ICE_K } from "../../heat/heat-units.ts";
import type { OverInsulation, UnderInsulation } from "../../plan/kit.ts";
import { sleeper } from "../testing/camp.fixture.ts";
import { coolNight, overLayer, plainTarp, underLayer } from "../testing/layers.fixture.ts";
import { halfMargins, warmthMargin } from "./warmth-margin.ts";
import { tonightAir } from "./tonight-air.ts";

const NIGHT = coolNight({ windMS: 3, gustMS: 6 });

function under(change: Partial<UnderInsulation> = {}): UnderInsulation {
  return underLayer("u", { limitK: ICE_K - 5, ...change });
}

function over(change: Partial<OverInsulation> = {}): OverInsulation {
  return overLayer("o", { comfortK: ICE_K, ...change });
}

const TARP = plainTarp("t");

function marginC(u?: UnderInsulation, o?: OverInsulation, night = NIGHT, age = 30): number {
  return warmthMargin({ ...sleeper("s"), ageYears: age }, night, u, o);
}

describe("the margin of warmth that the store deals by", () => {
  it("grows with what is under and over, with a tarp and with a warmer night", () => {
    const base = marginC(under(), over());
    expect(marginC(undefined, over())).toBeLessThan(base);
    expect(marginC(under(), undefined)).toBeLessThan(base);
    const warmer = { ...NIGHT, lowK: NIGHT.lowK + 3 };
    expect(marginC(under(), over(), warmer)).toBeGreaterThan(base);
    const clear = { ...NIGHT, cloudRatio: 0 };
    const [open, below] = [undefined, TARP].map((tarp) =>
      warmthMargin(sleeper("s"), clear, under({ limitK: ICE_K - 25 }), over(), tarp),
    );
    expect(below).toBeGreaterThan(open ?? Infinity);
  });

  it("is that of the weaker half", () => {
    const air = tonightAir(NIGHT);
    const who = { ...sleeper("s"), ageYears: 30 };
    const thin = under({ limitK: ICE_K + 15 });
    const margins = halfMargins(who, air, { under: thin, over: over() });
    expect(margins.under.marginK).toBeLessThan(margins.over.marginK);
    expect(warmthMargin(who, NIGHT, thin, over())).toBe(margins.under.marginK);
  });

  it("holds a thin half never against the other, and lets a warm one help", () => {
    const air = tonightAir(NIGHT);
    const who = { ...sleeper("s"), ageYears: 30 };
    const of = (u: UnderInsulation | undefined, o: OverInsulation) =>
      halfMargins(who, air, {
        ...(u === undefined ? {} : { under: u }),
        over: { ...o, form: "quilt" as const },
      });
    const quilt = over({ comfortK: ICE_K });
    expect(of(undefined, quilt).over.marginK).toBeCloseTo(
      of(under({ limitK: ICE_K + 15 }), quilt).over.marginK,
      9,
    );
    const warm = over({ insulationM2KPerW: 3 });
    expect(of(under({ limitK: ICE_K + 2 }), warm).under.marginK).toBeGreaterThan(
      of(under({ limitK: ICE_K + 2 }), quilt).under.marginK,
    );
    expect(of(undefined, warm).under.floorK).toBeLessThan(0);
  });

  it("falls with a gap, with a lower cover, with damp and where a mat slides", () => {
    const good = marginC(under(), over({ comfortK: ICE_K - 15 }));
    for (const worse of [
      { gapRatio: 0.3 },
      { coveredRatio: 0.5 },
      { loftLeftRatio: 0.7 },
      { placement: "on-cloth" as const },
    ]) {
      expect(marginC(under(worse), over({ comfortK: ICE_K - 15 }))).toBeLessThan(good);
    }
    const mat = under({ form: "mat", insulationM2KPerW: 0.6 });
    const who = sleeper("s");
    const single = warmthMargin(who, NIGHT, mat, over(), undefined, { layers: 1 });
    expect(warmthMargin(who, NIGHT, mat, over(), undefined, { layers: 2 })).toBeGreaterThan(single);
  });

  it("asks more of the young, as the standard woman", () => {
    const woman = { ...sleeper("s"), massKg: 60, statureM: 1.6, sex: "f" as const, ageYears: 25 };
    const grown = warmthMargin(woman, NIGHT, under(), over());
    const young = { ...woman, ageYears: 12, massKg: 40 };
    expect(warmthMargin(young, NIGHT, under(), over())).toBeLessThan(grown - 0.5);
    const air = tonightAir(NIGHT);
    const { floorK, marginK } = halfMargins(young, air, { under: under(), over: over() }).over;
    expect(floorK - marginK).toBeGreaterThan(4);
  });

  it("takes from each half what the log has taught, and asks less where the log has made it surer", () => {
    const air = tonightAir(NIGHT);
    const kit = { under: under(), over: over() };
    const who = { ...sleeper("s"), ageYears: 30 };
    const half = (offsetK: number, bandK: number) => ({ nights: 9, offsetK, bandK });
    const of = (under: ReturnType<typeof half>) =>
      halfMargins({ ...who, learnt: { by: "nights", under, over: half(0, 4) } }, air, kit);
    const plain = halfMargins(who, air, kit);
    expect(of(half(0, 4))).toEqual(plain);
    const colder = of(half(3, 4));
    expect(colder.under.marginK).toBeCloseTo(plain.under.marginK - 3, 9);
    expect(colder.under.floorK).toBeCloseTo(plain.under.floorK - 3, 9);
    expect(colder.under.reckonedK).toBe(plain.under.reckonedK);
    expect(colder.over).toEqual(plain.over);
    expect(of(half(0, 2.6)).under.marginK).toBeGreaterThanOrEqual(plain.under.marginK);
  });

  it("asks of a child once cool a warmer half, and of no other", () => {
    const air = tonightAir(NIGHT);
    const kit = { under: under(), over: over() };
    const child = { ...sleeper("s"), ageYears: 12 };
    const learnt = { by: "youth-rule", under: "warmer-than-the-rule", over: "as-the-rule" } as const;
    const [before, after] = [halfMargins(child, air, kit), halfMargins({ ...child, learnt }, air, kit)];
    expect(after.under.marginK).toBeCloseTo(before.under.marginK - 4, 9);
    expect(after.over).toEqual(before.over);
  });

  it("finds enough only what is comfortable with 2 K over and above the limit by most of the band", () => {
    const air = tonightAir(NIGHT);
    const who = { ...sleeper("s"), ageYears: 30 };
    for (let limitC = 20; limitC > -20; limitC -= 0.5) {
      const kit = { under: under({ limitK: ICE_K + limitC }), over: over({ comfortK: ICE_K + limitC }) };
      for (const { marginK, floorK, reckonedK } of Object.values(halfMargins(who, air, kit))) {
        if (marginK >= 0) expect(Math.min(reckonedK - 2, floorK - 3.1)).toBeGreaterThanOrEqual(-1e-9);
        expect(marginK).toBeLessThan(floorK);
      }
    }
  });

  it("counts what nobody knows for nothing", () => {
    const unknown: UnderInsulation = { id: "u", kind: "under", count: 1, state: "in-use" };
    expect(marginC(unknown, over())).toBeCloseTo(marginC(undefined, over()), 9);
  });
});
