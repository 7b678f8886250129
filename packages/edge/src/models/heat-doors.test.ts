import { describe, expect, it } from "vitest";
import { runModel } from "./run-model.ts";

function value(name: string, input: unknown): Readonly<Record<string, number>> {
  const answer = runModel(name, input);
  if (!answer.ok) throw new Error(JSON.stringify(answer.refusals));
  expect(answer.value.basis.assumes.length).toBeGreaterThan(0);
  const entries = Object.entries(answer.value.value);
  return Object.fromEntries(entries.map(([key, figure]) => [key, Number(figure)]));
}

function fields(name: string, input: unknown): readonly string[] {
  const answer = runModel(name, input);
  return answer.ok ? [] : answer.refusals.map(({ field }) => field);
}

const MIN_58 = { metabolic_w_m2: 58, skin_c: 31.2868, air_c: -20, humidity: 0.5, wetness: 0.06 };

describe("required-insulation", () => {
  it("is the total resistance of ISO 11079 within 1 %, boundary layer included, also told in clo", () => {
    const { rc_m2k_w, clo } = value("required-insulation", MIN_58);
    expect(Math.abs((rc_m2k_w ?? 0) / 1.0331 - 1)).toBeLessThan(0.01);
    expect(clo).toBeCloseTo((rc_m2k_w ?? 0) / 0.155, 9);
  });

  it("refuses every fault, and keys it does not know", () => {
    expect(fields("required-insulation", { ...MIN_58, air_c: 35 })).toEqual(["air_c"]);
    expect(fields("required-insulation", { ...MIN_58, wetness: 2, wind_m_s: 1 })).toEqual([
      "wetness",
      "wind_m_s",
    ]);
  });
});

const NIGHT = { air_c: 0, wind_m_s: 0.3 };
const ASLEEP = { night: NIGHT, top: { r_m2k_w: 1 }, bottom: { r_m2k_w: 1 } };

describe("sleeper-balance", () => {
  it("answers with the fields of its contract", () => {
    const found = value("sleeper-balance", ASLEEP);
    for (const key of ["comfort_c", "limit_c", "top_w_m2", "bottom_w_m2", "rc_m2k_w", "band_k"]) {
      expect(found[key], key).toBeTypeOf("number");
    }
    expect(found["limit_c"]).toBeLessThan(found["comfort_c"] ?? NaN);
    expect(found["band_k"]).toBeGreaterThanOrEqual(4);
  });

  it("has for two equal halves one flow, whatever the share", () => {
    for (const top_share of [0, 0.3, 1]) {
      const { top_w_m2, bottom_w_m2, rc_m2k_w } = value("sleeper-balance", { ...ASLEEP, top_share });
      expect(top_w_m2).toBeCloseTo(bottom_w_m2 ?? NaN, 6);
      expect(rc_m2k_w).toBeCloseTo(33 / (top_w_m2 ?? NaN), 6);
    }
  });

  it("is colder for what covers less, for a bare bottom, for wind and for a clear sky", () => {
    const comfort = (change: object) =>
      value("sleeper-balance", { ...ASLEEP, ...change })["comfort_c"] ?? NaN;
    const base = comfort({});
    expect(comfort({ bottom: { r_m2k_w: 1, covered: 0.7 } })).toBeGreaterThan(base);
    expect(comfort({ bottom: { r_m2k_w: 0 } })).toBeGreaterThan(base + 10);
    expect(comfort({ night: { ...NIGHT, wind_m_s: 3 } })).toBeGreaterThan(base);
    expect(comfort({ night: { ...NIGHT, radiant_c: -18 } })).toBeGreaterThan(base);
    expect(
      comfort({ top: { r_m2k_w: 1, permeability: 100 }, night: { ...NIGHT, wind_m_s: 3 } }),
    ).toBeGreaterThan(comfort({ night: { ...NIGHT, wind_m_s: 3 } }));
  });

  it("takes a person, but no child, and refuses what it does not know", () => {
    const person = { mass_kg: 65, stature_m: 1.65, age: 60, sex: "f" };
    const of = (change: object) => ({ ...ASLEEP, person: { ...person, ...change } });
    expect(value("sleeper-balance", of({}))["comfort_c"]).toBeGreaterThan(
      value("sleeper-balance", ASLEEP)["comfort_c"] ?? NaN,
    );
    expect(fields("sleeper-balance", of({ age: 12 }))).toEqual(["person.age"]);
    expect(fields("sleeper-balance", { ...ASLEEP, head: "hat", night: { air_c: 0 } })).toEqual([
      "night.wind_m_s",
      "head",
    ]);
  });
});
