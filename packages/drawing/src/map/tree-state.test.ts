import type { Camp, Tree } from "@nightspan/core";
import { describe, expect, it } from "vitest";
import { harrowmere } from "../fixture/harrowmere.fixture.ts";
import { treeState } from "./tree-state.ts";

const camp = harrowmere();
const sound: Tree = {
  id: "A1",
  tag: "A1",
  xM: 0,
  yM: 0,
  dbhM: 0.3,
  condition: "healthy",
  use: true,
  lookedAt: { by: "Ngozi", on: "2027-05-14" },
};

describe("treeState", () => {
  it.each<[string, Partial<Tree>, string]>([
    ["looked at on the day", {}, "looked-at"],
    ["looked at the day before", { lookedAt: { by: "Ngozi", on: "2027-05-13" } }, "not-looked-at"],
    ["dead, whatever else", { condition: "dead", use: false, dbhM: 0.05 }, "dead"],
    ["doubtful, though looked at", { condition: "doubtful" }, "doubtful"],
    ["kept out by a rule", { use: false }, "barred"],
    ["under the least trunk", { dbhM: 0.19 }, "thin"],
    ["at the least trunk", { dbhM: 0.2 }, "looked-at"],
    ["not looked at, though a day is noted", { condition: "not-looked-at" }, "not-looked-at"],
  ])("a tree %s", (_, change, state) => expect(treeState({ ...sound, ...change }, camp)).toBe(state));

  it("takes any day where the camp has none", () => {
    const { name, rules, groups, kit, sleepers, defaultsUsed } = camp;
    const any: Camp = { name, rules, groups, kit, sleepers, defaultsUsed };
    expect(treeState({ ...sound, lookedAt: { by: "Ngozi", on: "2020-01-01" } }, any)).toBe("looked-at");
  });
});
