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
});
