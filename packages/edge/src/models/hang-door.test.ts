import { describe, expect, it } from "vitest";
import { runModel } from "./run-model.ts";

const ASKED = {
  span_m: 4.2,
  hammock: { length_m: 3, ridgeline_m: 2.5 },
  suspension: { type: "tied-webbing" },
  sleeper: { mass_kg: 80, stature_m: 1.75 },
};

interface Range {
  readonly low: number;
  readonly high: number;
  readonly binds_low: string;
  readonly binds_high: string;
}

interface Told {
  readonly ok: Readonly<Record<string, Range>>;
  readonly band: Readonly<Record<string, readonly [number, number]>>;
  readonly notes?: readonly string[];
}

function isTold(value: object): value is Told {
  return "ok" in value && "band" in value;
}

function told(over: object): Told {
  const answer = runModel("hang", { ...ASKED, ...over });
  if (!answer.ok) throw new Error(JSON.stringify(answer.refusals));
  const { value } = answer.value;
  if (!isTold(value)) throw new Error("no hang");
  return value;
}

/** Each refusal's field; every need is one line that says something. */
function refused(over: object): readonly string[] {
  const answer = runModel("hang", { ...ASKED, ...over });
  if (answer.ok) return [];
  for (const { need } of answer.refusals) expect(need).toMatch(/^\S[^\n]{3,}$/);
  return answer.refusals.map(({ field }) => field);
}

describe("the hang model's door", () => {
  it("tells ok ranges by the usual limits, a few centimetres either way, and what binds", () => {
    const { ok } = told({});
    expect(Object.keys(ok)).toEqual([
      "head.strap_height_m",
      "foot.strap_height_m",
      "head.strap_length_m",
      "foot.strap_length_m",
      "span_m",
    ]);
    for (const { low, high } of Object.values(ok)) {
      expect(high - low).toBeGreaterThan(0.01);
      expect(high - low).toBeLessThan(0.3);
    }
    expect(ok["span_m"]).toMatchObject({ binds_low: "angle-steepest", binds_high: "angle-flattest" });
    expect(ok["head.strap_height_m"]).toMatchObject({ binds_high: "foot-raise-least" });
  });

  it("keeps ranges and bands real where straps are a hand's breadth long, and says so", () => {
    const { ok, band, notes } = told({ span_m: 3.2, hammock: { length_m: 3.35, ridgeline_m: 2.78 } });
    const { low = NaN, high = NaN } = ok["head.strap_height_m"] ?? {};
    expect(low).toBeGreaterThan(1.2);
    expect(high).toBeLessThan(1.4);
    for (const [quantity, [least, most]] of Object.entries(band)) {
      expect(least).toBeLessThanOrEqual(most);
      if (quantity.endsWith("_n")) expect(least).toBeGreaterThanOrEqual(0);
      if (quantity.endsWith("_n")) expect(most).toBeLessThan(2_000);
      if (quantity.endsWith("_deg")) expect(least).toBeGreaterThan(0);
      if (quantity.endsWith("_deg")) expect(most).toBeLessThan(75);
    }
    expect(notes).toEqual(["short-straps"]);
  });

  it("tells no ok range for a hang that was asked for outside the usual limits, and names the limit", () => {
    const steep = told({ targets: { angle_deg: 40 } });
    expect(steep.ok).toEqual({});
    expect(steep.notes).toContain("outside-usual/angle-steepest");
    const level = told({ targets: { foot_raise_m: 0 } });
    expect(level.notes).toEqual(["outside-usual/foot-raise-least"]);
  });

  it.each<[string, object, readonly string[]]>([
    ["trees at one point", { span_m: 0 }, ["span_m"]],
    ["a negative span", { span_m: -4 }, ["span_m"]],
    ["a span in centimetres", { span_m: 420 }, ["span_m"]],
    ["a number as text", { span_m: "4.2" }, ["span_m"]],
    ["not a number", { span_m: Number.NaN }, ["span_m"]],
    ["nothing", { span_m: null }, ["span_m"]],
    ["endless", { sleeper: { mass_kg: Infinity, stature_m: 1.75 } }, ["sleeper.mass_kg"]],
    [
      "negative mass and a stature in centimetres",
      { sleeper: { mass_kg: -80, stature_m: 175 } },
      ["sleeper.mass_kg", "sleeper.stature_m"],
    ],
    ["a sleeper longer than the cloth", { hammock: { length_m: 1.6 } }, ["sleeper.stature_m"]],
    [
      "a ridgeline as long as the cloth",
      { hammock: { length_m: 3, ridgeline_m: 3 } },
      ["hammock.ridgeline_m"],
    ],
    [
      "a ridgeline longer than the cloth",
      { hammock: { length_m: 3, ridgeline_m: 3.4 } },
      ["hammock.ridgeline_m"],
    ],
    ["a negative ridgeline", { hammock: { length_m: 3, ridgeline_m: -2.5 } }, ["hammock.ridgeline_m"]],
    [
      "a sling longest below its shortest",
      { suspension: { type: "whoopie-sling", min_m: 1, max_m: 0.5 } },
      ["suspension.max_m"],
    ],
    ["a hammock too long for the trees", { span_m: 3, hammock: { length_m: 3.6 } }, ["span_m"]],
    [
      "straps too short for the trees",
      { suspension: { type: "whoopie-sling", max_m: 0.3 } },
      ["head.strap_length_m", "foot.strap_length_m"],
    ],
    ["a cliff", { foot: { elevation_m: 4 } }, ["foot.elevation_m"]],
    ["a trunk of no width", { head: { dbh_cm: 0 } }, ["head.dbh_cm"]],
    [
      "a foot raised by more than the cloth allows",
      { targets: { foot_raise_m: 2 } },
      ["targets.foot_raise_m"],
    ],
    ["a suspension nobody knows", { suspension: { type: "rope" } }, ["suspension.type"]],
  ])("refuses %s, by field", (_, over, expected) => {
    expect(refused(over)).toEqual(expected);
  });

  it.each<[string, object]>([
    ["short-cloth", { sleeper: { mass_kg: 80, stature_m: 2.04 }, hammock: { length_m: 2.9 } }],
    ["steep-ground", { foot: { elevation_m: 1.7 } }],
    ["stretchy-straps", { suspension: { type: "tied-webbing", ea_n: 9_000 } }],
    ["body-unlike-table", { sleeper: { mass_kg: 28, stature_m: 1.3 } }],
  ])("answers near its border with the note %s", (note, over) => {
    expect(told(over).notes).toContain(note);
  });
});
