import { describe, expect, it } from "vitest";
import { exampleCamp, planOf, smallCamp } from "../examples.fixture.ts";
import { fileForm } from "./file-form.ts";
import { openCamp } from "./open-camp.ts";
import { planFile, writePlan } from "./plan-file.ts";
import {
  BALANCE,
  CUTS,
  DEALING,
  FIT,
  NIGHT_CLOCK,
  PACKING,
  SPARES,
  TARP,
  YOUTH,
} from "./plan-parts.fixture.ts";
import { planSchema } from "./plan-schema.ts";
import { readPlan } from "./read-plan.ts";
import { unknownFields } from "./unknown-fields.ts";

const PLAN = planOf(exampleCamp("demo").camp);
const WHOLE = {
  ...PLAN,
  spares: SPARES,
  dealing: DEALING,
  cuts: CUTS,
  packing: PACKING,
  fit: FIT,
  nightClock: NIGHT_CLOCK,
  timeline: [{ at: "2027-05-14T18:00Z", what: "arrive-by" }] as const,
  berths: PLAN.berths.map((berth, index) => ({
    ...berth,
    buddy: { sleeper: "ada", apartM: 6, withinCall: true },
    tarp: TARP,
    warmth: index % 2 === 0 ? BALANCE : YOUTH,
  })),
};

describe("parts of a plan in the form of its file", () => {
  const file = planFile(WHOLE);

  it("have every field that they have in SI, each known to the schema", () => {
    const parts = {
      spares: SPARES,
      dealing: DEALING,
      cuts: CUTS,
      packing: PACKING,
      fit: FIT,
      night_clock: NIGHT_CLOCK,
    };
    for (const [name, part] of Object.entries(parts)) {
      const known: unknown = Reflect.get(file, name);
      expect(unknownFields(fileForm(part), known), name).toEqual([]);
    }
    expect(unknownFields(fileForm(TARP), file.berths[0]?.tarp)).toEqual([]);
    expect(unknownFields(fileForm(BALANCE), file.berths[0]?.warmth)).toEqual([]);
    expect(unknownFields(fileForm(YOUTH), file.berths[1]?.warmth)).toEqual([]);
  });

  it("read back as they were written, with nothing null in them", () => {
    expect(planSchema.safeParse(file).error).toBeUndefined();
    expect(readPlan(writePlan(file))).toEqual({ ok: true, value: file });
    expect(writePlan(file)).not.toContain(": null");
  });

  it("speak in the units of their names", () => {
    expect(file.berths[0]?.tarp).toMatchObject({
      pitch: { left_angle_deg: 50, right_angle_deg: 20, closed_ends: ["head"] },
      guys: [{ from_m: [0, 1, 2], angle_deg: 40, pull_n: 60 }],
      ridge: { on_trees: { head: { towards_deg: 90 } } },
      overhang_m: { head: 0.3 },
      wet: { hammock_ml_h: 1, sleeper_ml_h: 2, under_ml_h: 3 },
      wet_verdicts: [{ part: "foot", share: 0.25, lower_by_m: 0.2 }],
      rose: [{ wind_from_deg: 180 }],
      vent_m2: 1.5,
      wind_m_s: 2,
    });
    expect(file.night_clock).toMatchObject({
      low_c: 3,
      lapse_k: -0.5,
      sun: { kind: "no-dusk", sunset: "2027-05-14T20:00Z" },
      hours: [{ air_c: 7, dew_point_c: 5, humidity: 0.8, rain_mm_h: 0.5, sky_c: -10 }],
      arrive_by: { per_berth_min: 15, tree_check_min: 30, margin_min: 20 },
    });
    expect(file.night_clock?.sun).not.toHaveProperty("dusk");
    expect(file.berths[0]?.warmth).toMatchObject({
      comfort_c: 4,
      limit_c: -1,
      band_k: 4,
      under: { margin_k: 3 },
      learnt: { under: { nights: 3, offset_k: 1.5, band_k: 3 } },
      top_w_m2: 40,
      total_m2k_w: 0.6,
      hours: [{ under: { need_m2k_w: 0.5, loss_w_m2: 40 } }],
    });
    expect(file.dealing).toMatchObject({
      least_margin_k: 1,
      shortages: [{ borrow: [{ max_user_kg: 120, strap_width_mm: 25, air_c: 2 }] }],
    });
    expect(file.cuts?.materials[0]).toMatchObject({ width_mm: 25, used_m: 50, to_buy: [{ length_m: 50 }] });
    expect(file.packing?.sleepers[0]).toMatchObject({ mass_kg: 4.2, of_body: 0.06 });
    expect(file.fit).toMatchObject({ low_c: 2, spans_m: [3, 5], girths_m: [0.6, 1.5] });
    expect(file.spares?.[0]).toMatchObject({ bearing_deg: 90, span_m: 4 });
  });

  it("say no temperature of anybody under 16", () => {
    expect(JSON.stringify(file.berths[1]?.warmth)).not.toMatch(/_[ck]"/);
  });

  it("are left out where they were not worked out", () => {
    const opened = openCamp(smallCamp());
    if (!opened.ok) throw new Error("refused");
    const plain = planFile(planOf(opened.value.camp));
    for (const part of ["spares", "night_clock", "timeline"]) expect(plain).not.toHaveProperty(part);
  });
});
