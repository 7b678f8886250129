import { describe, expect, it } from "vitest";
import { faultFields, smallCamp, woodCamp } from "../examples.fixture.ts";
import { openCamp } from "./open-camp.ts";

const tree = (over: object) => ({ id: "K1", x_m: 0, y_m: 0, dbh_cm: 30, ...over });
const person = (over: object) => ({ id: "a", name: "A", stature_m: 1.7, ...over });
const fieldsOf = (document: unknown) => faultFields(openCamp(document));

describe("faults between fields", () => {
  it("wants dbh or girth, and both within 3 % where both are given", () => {
    const girth = (girth_cm: number) => fieldsOf(woodCamp([tree({ girth_cm })]));
    expect(girth(30 * Math.PI * 1.029)).toEqual([]);
    expect(girth(30 * Math.PI * 1.04)).toEqual(["ground.trees[0].dbh_cm"]);
    expect(fieldsOf(woodCamp([{ id: "K1", x_m: 0, y_m: 0 }]))).toEqual(["ground.trees[0].dbh_cm"]);
  });

  it("wants ids and tags once in their list", () => {
    expect(fieldsOf(woodCamp([tree({}), tree({ x_m: 4 })]))).toEqual(["ground.trees[1].id"]);
    expect(fieldsOf(woodCamp([tree({ tag: "9" }), tree({ id: "9" })]))).toEqual(["ground.trees[1].tag"]);
    expect(fieldsOf(smallCamp({ sleepers: [person({}), person({})] }))).toEqual(["sleepers[1].id"]);
    const peg = { id: "peg", kind: "peg" };
    expect(fieldsOf(smallCamp({ kit: [peg, peg] }))).toEqual(["kit[1].id"]);
  });

  it("wants groups, friends, pins and steppers that are there", () => {
    const sleepers = [
      person({ group: "g", near: ["zz", "a"], kit: { hammock: "peg", over: "bag" } }),
      person({ id: "b", kit: ["bag", "nothing"] }),
    ];
    const kit = [
      { id: "peg", kind: "peg" },
      { id: "bag", kind: "over" },
    ];
    const pairs = [
      { id: "p", trees: ["x", "x"], span_m: 4, steps: 5, too_near: ["q", "p"], stepped_by: "c" },
    ];
    expect(fieldsOf(smallCamp({ sleepers, kit, ground: { pairs } }))).toEqual([
      "ground.pairs[0].steps",
      "ground.pairs[0].trees",
      "ground.pairs[0].too_near[0]",
      "ground.pairs[0].too_near[1]",
      "ground.pairs[0].stepped_by",
      "sleepers[0].group",
      "sleepers[0].near[0]",
      "sleepers[0].near[1]",
      "sleepers[0].kit.hammock",
      "sleepers[1].kit[1]",
    ]);
  });

  it("finds near and apart at once, whoever of the two says it", () => {
    const both = [person({ near: ["b"], apart: ["b"] }), person({ id: "b" })];
    const each = [person({ near: ["b"] }), person({ id: "b", apart: ["a"] })];
    for (const sleepers of [both, each])
      expect(fieldsOf(smallCamp({ sleepers }))).toEqual(["sleepers[0].near[0]"]);
  });

  it("wants outlines that are closed and do not cross themselves", () => {
    const pond = (points: number[][]) => ({
      id: "pond",
      kind: "water",
      shape: { type: "Polygon", coordinates: [points] },
    });
    const where = "ground.obstacles[0].shape.coordinates[0]";
    const corners = [
      [0, 0],
      [4, 0],
      [4, 4],
      [0, 4],
    ];
    const square = [...corners, [0, 0]];
    const bow = [corners[0], corners[2], corners[1], corners[3], corners[0]].map((point) => point ?? []);
    const obstacles = (points: number[][]) => fieldsOf(woodCamp([tree({})], { obstacles: [pond(points)] }));
    expect(obstacles(square)).toEqual([]);
    expect(obstacles(corners)).toEqual([where]);
    expect(obstacles(bow)).toEqual([where]);
  });

  it("wants what hangs overhead as a point", () => {
    const shape = {
      type: "LineString",
      coordinates: [
        [0, 0],
        [1, 1],
      ],
    };
    const obstacles = [{ id: "limb", kind: "overhead", shape }];
    expect(fieldsOf(woodCamp([tree({})], { obstacles }))).toEqual(["ground.obstacles[0].shape.type"]);
  });

  it("wants bounds in order", () => {
    const rules = {
      span_min_m: 5,
      span_max_m: { value: 4, source: "ranger" },
      angle_min_deg: 40,
      angle_max_deg: 30,
    };
    expect(fieldsOf(smallCamp({ rules }))).toEqual(["rules.span_min_m", "rules.angle_min_deg"]);
    const kit = [
      { id: "s", kind: "suspension", type: "whoopie-sling", min_m: 2, max_m: 1 },
      { id: "h", kind: "hammock", length_m: 3, ridgeline_m: 3 },
    ];
    expect(fieldsOf(smallCamp({ kit }))).toEqual(["kit[0].min_m", "kit[1].ridgeline_m"]);
  });

  it("wants a mass within its band", () => {
    const mass = (mass_kg: number) =>
      fieldsOf(smallCamp({ sleepers: [person({ mass_kg, mass_band: "60 – 80 kg" })] }));
    expect(mass(80)).toEqual([]);
    expect(mass(81)).toEqual(["sleepers[0].mass_kg"]);
  });
});
