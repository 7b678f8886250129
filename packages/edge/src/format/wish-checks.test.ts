import { describe, expect, it } from "vitest";
import { faults, smallCamp } from "../examples.fixture.ts";
import { openCamp } from "./open-camp.ts";

const person = (id: string, over: object = {}) => ({ id, name: id, stature_m: 1.7, ...over });
const told = (sleepers: readonly object[], over: object = {}) =>
  faults(openCamp(smallCamp({ sleepers, ...over })));

describe("wishes that contradict each other", () => {
  it("are named with both lines, whoever of the two said which", () => {
    expect(told([person("a", { near: ["b"] }), person("b"), person("c", { apart: ["a", "b"] })])).toEqual([]);
    expect(told([person("a", { near: ["b"] }), person("b", { apart: ["c", "a"] }), person("c")])).toEqual([
      "sleepers[0].near[0]: somebody who is not to be kept apart: not both this and sleepers[1].apart[1]",
    ]);
  });

  it("are named with the group whose radius keeps two nearer than apart is", () => {
    const two = [person("a", { group: "g", apart: ["b"] }), person("b", { group: "g", apart: ["a"] })];
    expect(told(two, { groups: [{ id: "g", within_m: 4 }] })).toEqual([]);
    expect(told(two, { groups: [{ id: "g", within_m: 3.9 }] })).toEqual([
      "sleepers[0].apart[0]: at most three of these four lines, as who is apart lies 8 m off: " +
        "sleepers[0].apart[0], sleepers[0].group, sleepers[1].group, groups[0].within_m",
    ]);
  });

  it("are named along a chain that brings young and old together against the house", () => {
    const young = person("y", { age: 15, near: ["x"] });
    const between = person("x", { near: ["z"] });
    const old = person("z", { age: 40 });
    const asked = (adult_youth_m: unknown) => told([young, between, old], { rules: { adult_youth_m } });
    expect(asked(24)).toEqual([]);
    expect(asked({ value: 24.1, source: "house" })).toEqual([
      "sleepers[0].near[0]: at most 4 of these 5 lines, as together they ask for less than 24.1 m: " +
        "sleepers[0].near[0], sleepers[1].near[0], sleepers[0].age, sleepers[2].age, rules.adult_youth_m",
    ]);
    expect(told([{ ...young, age: 18 }, between, old], { rules: { adult_youth_m: 30 } })).toEqual([]);
    expect(told([young, { ...between, near: [] }, old], { rules: { adult_youth_m: 30 } })).toEqual([]);
  });

  it("are named with the group that holds young and old too near", () => {
    const two = [person("y", { age: 9, group: "g" }), person("z", { age: 30, group: "g" })];
    const asked = (within_m: number) =>
      told(two, { groups: [{ id: "g", within_m }], rules: { adult_youth_m: 20 } });
    expect(asked(10)).toEqual([]);
    expect(asked(9)).toEqual([
      "sleepers[0].group: at most 5 of these 6 lines, as together they ask for less than 20 m: " +
        "sleepers[0].group, groups[0].within_m, sleepers[1].group, sleepers[0].age, sleepers[1].age, rules.adult_youth_m",
    ]);
  });
});
