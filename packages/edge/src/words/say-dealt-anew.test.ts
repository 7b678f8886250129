import type { DealtChange } from "@nightspan/core";
import { describe, expect, it } from "vitest";
import { sayDealtAnew } from "./say-dealt-anew.ts";

const names = { sleeper: (id: string) => id.toUpperCase() };
const change = (sleeper: string, from?: string): DealtChange => {
  return { sleeper, kind: "suspension", to: "short", ...(from === undefined ? {} : { from }) };
};

describe("kit dealt anew in words", () => {
  it("is nothing where the first dealing was kept", () => {
    expect(sayDealtAnew({ placed: 3 }, names)).toEqual([]);
  });

  it("tells how many more lie and who has what instead", () => {
    const dealtAnew = { placedBefore: 2, changes: [change("ada", "long"), change("bo")] };
    expect(sayDealtAnew({ placed: 3, dealtAnew }, names)).toEqual([
      "Kit was dealt anew for the places there are: 1 more has a berth.",
      "ADA has short instead of long.",
      "BO has short.",
    ]);
  });

  it("tells how many changes it leaves off", () => {
    const changes = Array.from({ length: 15 }, () => change("ada", "long"));
    const said = sayDealtAnew({ placed: 4, dealtAnew: { placedBefore: 2, changes } }, names);
    expect(said[0]).toContain("2 more have a berth");
    expect(said.at(-1)).toBe("And 3 more changes.");
    expect(said).toHaveLength(14);
  });
});
