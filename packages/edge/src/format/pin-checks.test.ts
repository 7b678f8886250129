import { describe, expect, it } from "vitest";
import { faultFields, faults, smallCamp } from "../examples.fixture.ts";
import { openCamp } from "./open-camp.ts";

const trees = [
  { id: "K1", x_m: 0, y_m: 0, dbh_cm: 30, tag: "red" },
  { id: "K2", x_m: 4, y_m: 0, dbh_cm: 30 },
];
const pairs = [
  { id: "p", trees: ["A", "B"], span_m: 4 },
  { id: "q", trees: ["C", "D"], span_m: 4 },
];
const withPins = (...pins: readonly object[]) => smallCamp({ ground: { trees, pairs }, pins });
const fieldsOf = (...pins: readonly object[]) => faultFields(openCamp(withPins(...pins)));

describe("pins in a camp file", () => {
  it("name two trees by id or tag, or a stated pair, and the head where somebody minds", () => {
    const opened = openCamp(withPins({ sleeper: "s1", trees: ["red", "K2"], head: "K1" }));
    expect(opened).toMatchObject({
      ok: true,
      value: { camp: { pins: [{ sleeper: "s1", trees: ["red", "K2"], head: "K1" }] }, unknownFields: [] },
    });
    expect(fieldsOf({ sleeper: "s1", pair: "p", head: "B" })).toEqual([]);
    expect(fieldsOf({ sleeper: "s1", trees: ["B", "A"] })).toEqual([]);
  });

  it("are left out of the camp where there are none", () => {
    const opened = openCamp(smallCamp());
    expect(opened.ok && "pins" in opened.value.camp).toBe(false);
  });

  it("want a sleeper, trees and pairs that are in the file", () => {
    expect(
      fieldsOf({ sleeper: "nobody", trees: ["K1", "K2"] }, { sleeper: "s1", trees: ["K1", "K9"] }),
    ).toEqual(["pins[0].sleeper", "pins[1].trees[1]"]);
    expect(fieldsOf({ sleeper: "s1", pair: "r" })).toEqual(["pins[0].pair"]);
  });

  it("want one of trees and pair, two different trees, and one pin for each sleeper", () => {
    expect(fieldsOf({ sleeper: "s1" })).toEqual(["pins[0].trees"]);
    expect(fieldsOf({ sleeper: "s1", trees: ["K1", "K2"], pair: "p" })).toEqual(["pins[0].trees"]);
    expect(fieldsOf({ sleeper: "s1", trees: ["K1", "red"] })).toEqual(["pins[0].trees"]);
    const twice = openCamp(withPins({ sleeper: "s1", trees: ["K1", "K2"] }, { sleeper: "s1", pair: "p" }));
    expect(faults(twice)).toEqual(["pins[1].sleeper: one pin each; pins[0] is theirs"]);
  });

  it("want tags of one stated pair, as nobody says how far others stand, and a head that is an end", () => {
    expect(fieldsOf({ sleeper: "s1", trees: ["A", "C"] })).toEqual(["pins[0].trees"]);
    expect(fieldsOf({ sleeper: "s1", trees: ["K1", "K2"], head: "A" })).toEqual(["pins[0].head"]);
    expect(fieldsOf({ sleeper: "s1", pair: "p", head: "C" })).toEqual(["pins[0].head"]);
  });
});
