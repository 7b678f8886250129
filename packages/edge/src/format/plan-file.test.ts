import { describe, expect, it } from "vitest";
import { exampleCamp, planOf } from "../examples.fixture.ts";
import { campOfOne } from "./camp-of-one.ts";
import { openCamp } from "./open-camp.ts";
import { planFile, writePlan } from "./plan-file.ts";
import { planSchema } from "./plan-schema.ts";
import { readPlan } from "./read-plan.ts";

function holes(value: unknown, path = "plan"): string[] {
  if (value === null || value === undefined || (typeof value === "number" && !Number.isFinite(value)))
    return [path];
  if (typeof value !== "object") return [];
  if (!Array.isArray(value) && Object.keys(value).length === 0 && !/\.(ok|band)$/.test(path)) return [path];
  return Object.entries(value).flatMap(([key, inner]) => holes(inner, `${path}.${key}`));
}

describe("the plan file", () => {
  const plan = planOf(exampleCamp("demo").camp);
  const file = planFile(plan);

  it("has nothing null, endless, undefined or empty in it", () => {
    expect(holes(file)).toEqual([]);
  });

  it("is what its schema says, and reads back as it was", () => {
    expect(planSchema.safeParse(file).error).toBeUndefined();
    expect(readPlan(writePlan(file))).toEqual({ ok: true, value: file });
  });

  it("speaks in the units of the file", () => {
    for (const [index, { hang }] of plan.berths.entries()) {
      const written = file.berths[index]?.hang.head;
      expect(written?.angle_deg).toBeCloseTo((hang.head.angle * 180) / Math.PI, 9);
      expect(written?.pull_n).toBeCloseTo(hang.head.pullN, 8);
    }
  });

  it("keeps pull² = sideways² + down² through its rounding", () => {
    for (const { hang } of file.berths) {
      for (const end of [hang.head, hang.foot]) {
        expect(Math.hypot(end.sideways_n, end.down_n) / end.pull_n).toBeCloseTo(1, 9);
      }
    }
  });

  it("names the quantities of ok and band as the file does", () => {
    const names = file.berths.flatMap(({ hang }) => [...Object.keys(hang.ok), ...Object.keys(hang.band)]);
    expect(names.length).toBeGreaterThan(0);
    for (const name of names) expect(name).toMatch(/^(?:head\.|foot\.)?[a-z_]+_(?:m|n|deg)$/);
  });

  it("leaves kit out where none is listed, and the foot strap's height where nobody knows the ground", () => {
    const opened = openCamp(campOfOne({ spanM: 4.2, statureM: 1.75 }));
    if (!opened.ok) throw new Error(JSON.stringify(opened.refusals));
    const unknown = planFile(planOf(opened.value.camp));
    expect(holes(unknown)).toEqual([]);
    const [berth] = unknown.berths;
    expect(berth).toMatchObject({ ground_known: false });
    expect(berth).not.toHaveProperty("kit");
    expect(berth?.hang.foot).not.toHaveProperty("strap_height_m");
    expect(berth?.hang.foot.above_level_m).toBeGreaterThan(0);
    expect(berth?.hang.head.strap_height_m).toBeGreaterThan(0);
    expect([...Object.keys(berth?.hang.ok ?? {}), ...Object.keys(berth?.hang.band ?? {})]).not.toContain(
      "foot.strap_height_m",
    );
    expect(readPlan(writePlan(unknown))).toEqual({ ok: true, value: unknown });
    expect(file.berths.length).toBeGreaterThan(0);
    for (const { hang, ground_known } of file.berths) {
      expect(ground_known).toBe(true);
      expect(hang.foot.strap_height_m).toBeGreaterThan(0);
    }
  });

  it("refuses a plan that was tampered with, by field", () => {
    const bad = readPlan(writePlan(file).replace('"verdict": "look-again"', '"verdict": "fine"'));
    expect(bad.ok ? [] : bad.refusals.map(({ field }) => field)).toEqual(["verdict"]);
  });
});
