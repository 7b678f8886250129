import { describe, expect, it } from "vitest";
import { exampleCamp, exampleText, faultFields, faults, smallCamp, woodCamp } from "../examples.fixture.ts";
import { openCamp, readCamp } from "./open-camp.ts";

const K1 = { id: "K1", x_m: 0, y_m: 0, dbh_cm: 30 };
const K2 = { id: "K2", x_m: 4, y_m: 0, dbh_cm: 30 };

function opened(document: unknown) {
  const outcome = openCamp(document);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.refusals));
  return outcome.value;
}

describe("opening a camp", () => {
  it("opens every example but the one that is made of faults", () => {
    for (const name of ["demo", "pairs"]) expect(exampleCamp(name).unknownFields).toEqual([]);
  });

  it("tells ten faults as ten refusals, each by its own field", () => {
    const fields = faultFields(readCamp(exampleText("ten-faults")));
    expect(fields).toHaveLength(10);
    expect(new Set(fields).size).toBe(10);
  });

  it("needs format, name and sleepers, and says so at once", () => {
    expect(faultFields(openCamp({}))).toEqual(["format", "name", "sleepers"]);
    expect(faultFields(openCamp([]))).toEqual(["file"]);
    expect(faultFields(openCamp(null))).toEqual(["file"]);
  });

  it("refuses a format version nobody knows, and names those that are known", () => {
    expect(faults(openCamp(smallCamp({ format: "nightspan-camp/0" })))).toEqual([
      'format: "nightspan-camp/1"; a newer file needs a newer version of Nightspan',
    ]);
  });

  it("keeps within its limits: 1 to 1,000 sleepers, 1 to 10,000 trees", () => {
    const sleeper = (index: number) => ({ id: String(index), name: "A", stature_m: 1.7 });
    const tree = (index: number) => ({ id: String(index), x_m: index * 3, y_m: 0, dbh_cm: 30 });
    const many = (count: number, make: (index: number) => object) =>
      Array.from({ length: count }, (_, i) => make(i));
    expect(faultFields(openCamp(smallCamp({ sleepers: [] })))).toEqual(["sleepers"]);
    expect(faultFields(openCamp(smallCamp({ sleepers: many(1_001, sleeper) })))).toEqual(["sleepers"]);
    expect(faultFields(openCamp(smallCamp({ sleepers: many(1_000, sleeper) })))).toEqual([]);
    expect(faultFields(openCamp(woodCamp([])))).toEqual(["ground.trees"]);
    expect(faultFields(openCamp(woodCamp(many(10_001, tree))))).toContain("ground.trees");
    expect(faultFields(openCamp(woodCamp(many(10_000, tree))))).toEqual([]);
  });

  it("refuses numbers that are none, endless or out of range", () => {
    for (const x_m of [NaN, Infinity, "4", null, 2e5]) {
      expect(faultFields(openCamp(woodCamp([{ ...K1, x_m }])))).toEqual(["ground.trees[0].x_m"]);
    }
  });

  it("converts to SI once: centimetres, degrees, degrees Celsius, millimetres", () => {
    const { camp } = opened({
      ...smallCamp({
        kit: [
          {
            id: "w",
            kind: "suspension",
            type: "tied-webbing",
            strap_width_mm: 25,
            rated_load_n: 3000,
            through_own_eye: true,
          },
        ],
        night: { low_c: 0, wind_m_s: 3, wind_from_deg: 180 },
      }),
      ground: { trees: [{ ...K1, lean_deg: 90 / Math.PI }], slope: { rise_ratio: 0.1, downhill_deg: 90 } },
    });
    expect(camp.ground?.trees[0]).toMatchObject({ dbhM: 0.3, leanRad: 0.5 });
    expect(camp.ground?.slope?.downhillRad).toBeCloseTo(Math.PI / 2, 12);
    expect(camp.night).toMatchObject({ lowK: 273.15, windFromRad: Math.PI });
    expect(camp.kit[0]).toMatchObject({ strapWidthM: 0.025, ratedLoadN: 3000, throughOwnEye: true });
  });

  it("takes a girth for a diameter, the upper end of a mass band, and steps for a span", () => {
    const { camp } = opened(
      smallCamp({
        sleepers: [{ id: "s", name: "S", mass_band: "60-80", stature_m: 1.8, step_m: 0.75 }],
        ground: {
          trees: [{ id: "K1", x_m: 0, y_m: 0, girth_cm: 100 }],
          pairs: [{ id: "p", trees: ["a", "b"], steps: 6 }],
        },
      }),
    );
    expect(camp.ground?.trees[0]?.dbhM).toBeCloseTo(1 / Math.PI, 12);
    expect(camp.sleepers[0]?.massKg).toBe(80);
    expect(camp.ground?.pairs[0]).toMatchObject({ spanM: 4.5, stepped: true, dbhAssumed: true });
  });

  it("counts steps by the one named, else the first who leads", () => {
    const sleepers = [
      { id: "a", name: "A", stature_m: 1.7, step_m: 0.6 },
      { id: "b", name: "B", stature_m: 1.7, step_m: 0.8, leads: true },
    ];
    const span = (stepped_by?: string) =>
      opened(
        smallCamp({ sleepers, ground: { pairs: [{ id: "p", trees: ["x", "y"], steps: 5, stepped_by }] } }),
      ).camp.ground?.pairs[0]?.spanM;
    expect(span("a")).toBe(3);
    expect(span()).toBe(4);
  });

  it("keeps unknown fields and reports each by its path", () => {
    const { document, unknownFields } = opened(woodCamp([{ ...K1, bird: "owl" }, K2], { moss: true }));
    expect(unknownFields).toEqual(["ground.trees[0].bird", "ground.moss"]);
    expect(document.ground?.trees?.[0]).toEqual({ ...K1, bird: "owl" });
  });

  it("is not harmed by __proto__, and keeps it like any other unknown field", () => {
    const text = JSON.stringify(smallCamp()).replace("{", '{"__proto__": {"polluted": true},');
    const outcome = readCamp(text);
    expect(outcome.ok && outcome.value.unknownFields).toEqual(["__proto__"]);
    expect(Object.hasOwn(Object.prototype, "polluted")).toBe(false);
  });

  it("lists each default it used with the ids it was used for", () => {
    const { camp } = opened(woodCamp([K1, { ...K2, condition: "dead" }]));
    const used = new Map(camp.defaultsUsed.map((entry) => [entry.field, entry]));
    expect(used.get("ground.trees[].condition")).toMatchObject({ value: "not-looked-at", for: ["K1"] });
    expect(used.get("ground.trees[].height_m")?.for).toEqual(["K2"]);
    expect(used.get("rules.span_max_m")?.value).toBe(5);
    expect(used.has("sleepers[].mass_kg")).toBe(false);
    const windy = opened(smallCamp({ night: { low_c: 5, wind_m_s: 3 } })).camp;
    expect(windy.night?.gustMS).toBe(3);
    expect(windy.defaultsUsed).toContainEqual({ field: "night.gust_m_s", value: 3, for: [] });
  });

  it("puts stated rules over the preset, with who says so", () => {
    const { camp } = opened(
      smallCamp({
        rules: { preset: "cautious", trunk_min_cm: { value: 25, source: "ranger", read_on: "2027-01-02" } },
      }),
    );
    expect(camp.rules.trunkMinM).toEqual({ value: 0.25, source: "ranger", readOn: "2027-01-02" });
    expect(camp.rules.strapHeightMaxM?.value).toBe(1.83);
    expect(opened(smallCamp({ rules: { span_max_m: 3.5 } })).camp.rules.spanIdealM.value).toBe(3.5);
  });
});
