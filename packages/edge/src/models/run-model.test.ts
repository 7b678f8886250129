import { describe, expect, it } from "vitest";
import { MODEL_NAMES, runModel } from "./run-model.ts";

function value(name: string, input: unknown): Readonly<Record<string, unknown>> {
  const answer = runModel(name, input);
  if (!answer.ok) throw new Error(JSON.stringify(answer.refusals));
  expect(answer.value.basis.assumes.length).toBeGreaterThan(0);
  return answer.value.value;
}

function fields(name: string, input: unknown): readonly string[] {
  const answer = runModel(name, input);
  return answer.ok ? [] : answer.refusals.map(({ field }) => field);
}

const HANG = {
  span_m: 4.2,
  hammock: { length_m: 3, ridgeline_m: 2.5 },
  suspension: { type: "tied-webbing" },
  sleeper: { mass_kg: 80, stature_m: 1.75 },
};

describe("the models by name", () => {
  it("are these", () => {
    expect(MODEL_NAMES).toEqual([
      "two-cable",
      "catenary",
      "elastic-catenary",
      "hang",
      "trunk",
      "accessory-cord",
      "layout",
      "cutting",
      "assignment",
      "drop-speed",
      "rain-reach",
      "wind-load",
      "sun",
      "dew-point",
      "required-insulation",
      "sleeper-balance",
    ]);
    expect(fields("tarot", {})).toEqual(["NAME"]);
    expect(fields("__proto__", {})).toEqual(["NAME"]);
  });

  it("tell the least strength of accessory cord, from 4 to 8 mm", () => {
    expect(value("accessory-cord", { diameter_mm: 6 })).toEqual({ breaking_n: 7200 });
    expect(fields("accessory-cord", { diameter_mm: 3 })).toEqual(["diameter_mm"]);
    expect(fields("accessory-cord", { diameter_mm: 6, knot: "none" })).toEqual(["knot"]);
  });

  it("say what they need in words of their own, whatever comes in", () => {
    const odd = [undefined, null, [], 3, "x", true, {}, { head: [], hammock: 1, trees: {}, rules: [] }];
    for (const name of MODEL_NAMES) {
      for (const input of [...odd, { suspension: { type: 3 }, sleeper: null, night: 1, stock: [[]] }]) {
        const answer = runModel(name, input);
        const needs = answer.ok ? [] : answer.refusals.map(({ need }) => need);
        expect(needs.length, name).toBeGreaterThan(0);
        for (const need of needs) expect(need).not.toMatch(/invalid|expected|undefined|received/i);
      }
    }
    const hang = runModel("hang", { ...HANG, head: [], hammock: null });
    expect(hang.ok ? [] : hang.refusals.map(({ field, need }) => [field, need])).toEqual([
      ["head", "an object"],
      ["hammock", "an object"],
    ]);
  });

  it("share 122 N on cables at 37° and 53° as 73.4 and 97.4 N", () => {
    const { left_n, right_n } = value("two-cable", { load_n: 122, left_deg: 37, right_deg: 53 });
    expect(left_n).toBeCloseTo(73.4, 1);
    expect(right_n).toBeCloseTo(97.4, 1);
    expect(value("two-cable", { load_n: 100, left_deg: 90, right_deg: 90 })).toEqual({
      left_n: 50,
      right_n: 50,
    });
  });

  it("answer every fault and every unknown key of an input at once", () => {
    expect(fields("two-cable", { load_n: -1, left_deg: 0, right_deg: 91, angle: 3 })).toEqual([
      "load_n",
      "left_deg",
      "right_deg",
      "angle",
    ]);
    expect(fields("two-cable", undefined)).toEqual(["input"]);
    expect(fields("catenary", { span_m: 4, length_m: 3, rise_m: 0, weight_n_per_m: 1 })).toEqual([
      "length_m",
    ]);
    expect(fields("catenary", { span_m: 4, length_m: 5, rise_m: 0, weight_n_per_m: 1, ea_n: 1 })).toEqual([
      "ea_n",
    ]);
    expect(fields("hang", { ...HANG, head: { dbh: 30 }, targets: { angle_deg: 90 } })).toEqual([
      "head.dbh",
      "targets.angle_deg",
    ]);
  });

  it("stretch a cable that is shorter than its chord", () => {
    const cable = { span_m: 4, length_m: 3.9, rise_m: 0, weight_n_per_m: 0.01, ea_n: 1_000 };
    const { stretched_m, horizontal_n } = value("elastic-catenary", cable);
    expect(stretched_m).toBeGreaterThan(4);
    expect(horizontal_n).toBeCloseTo((1_000 * 0.1) / 3.9, 3);
  });

  it("hang at exactly the mean angle asked for", () => {
    for (const angle_deg of [20, 30, 40]) {
      const { head, foot } = value("hang", { ...HANG, targets: { angle_deg } });
      expect((angleOf(head) + angleOf(foot)) / 2).toBeCloseTo(angle_deg, 4);
    }
  });

  it("refuse a hang by the limit that binds, and never move the angle for it", () => {
    const sling = (suspension: object) =>
      runModel("hang", { ...HANG, suspension: { type: "whoopie-sling", ...suspension } });
    const binds = (answer: ReturnType<typeof runModel>) =>
      answer.ok ? [] : [...new Set(answer.refusals.map((refusal) => refusal.binds))];
    expect(binds(sling({ min_m: 1.5 }))).toEqual(["sling-shortest"]);
    expect(binds(sling({ max_m: 0.2 }))).toEqual(["sling-longest"]);
    expect(binds(runModel("hang", { ...HANG, span_m: 2.4 }))).toEqual(["trees-too-close"]);
    expect(binds(runModel("hang", { ...HANG, hammock: { length_m: 3, ridgeline_m: 3.2 } }))).toEqual([
      "ridgeline-longer-than-cloth",
    ]);
  });

  it("press 267 kPa on 15 cm of bark by a strap of 25 mm and 1 kN, and bend by 32 F h / π d³", () => {
    const input = { species: "QUERCUS alba", dbh_cm: 15, pull_n: 1_000, height_m: 1.5, strap_width_mm: 25 };
    const { bark_kpa, bark_peak_kpa, bending_mpa } = value("trunk", input);
    expect(bark_kpa).toBeCloseTo(266.7, 1);
    expect(bark_peak_kpa).toBeCloseTo(2 * 266.667, 1);
    expect(bending_mpa).toBeCloseTo((32 * 1_000 * 1.5) / (Math.PI * 0.15 ** 3) / 1e6, 9);
    expect(fields("trunk", { ...input, species: "broom", dbh_cm: 0, bark: 1 })).toEqual([
      "species",
      "dbh_cm",
      "bark",
    ]);
  });

  it("lay out trees as the camp file lists them, and refuse their faults by index", () => {
    const tree = (id: string, x_m: number, over: object = {}) => ({ id, x_m, y_m: 0, dbh_cm: 30, ...over });
    expect(value("layout", { trees: [tree("a", 0), tree("b", 4.25)], people: 3 })).toMatchObject({
      placed: 1,
      bound: 1,
      cost: 0.25,
      lower_bound: 0.25,
      gap: 0,
      proven: true,
      berths: [{ trees: ["a", "b"], span_m: 4.25 }],
    });
    const trees = [tree("a", 0), tree("a", 4), { id: "c", x_m: 9, y_m: 0 }, tree("d", 12, { owl: true })];
    expect(fields("layout", { trees, people: 1.5, rules: { span_min_m: 6, colour: "red" } })).toEqual([
      "trees[3].owl",
      "people",
      "rules.colour",
      "trees[1].id",
      "trees[2].dbh_cm",
    ]);
    expect(fields("layout", { trees: [], people: 0, rules: { span_min_m: 6 } })).toEqual([
      "rules.span_max_m",
    ]);
  });
});

function angleOf(end: unknown): number {
  return typeof end === "object" && end !== null && "angle_deg" in end ? Number(end.angle_deg) : NaN;
}
