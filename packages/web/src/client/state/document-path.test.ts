import { describe, expect, it } from "vitest";
import { readAt, writeAt, writePath } from "./document-path.ts";

const CAMP = { name: "Wood", sleepers: [{ id: "a", stature_m: 1.7 }, { id: "b" }], odd: { kept: true } };

describe("document path", () => {
  it("is written as refusals write it", () => {
    expect(writePath(["sleepers", 2, "stature_m"])).toBe("sleepers[2].stature_m");
    expect(writePath(["ground", "trees", 0])).toBe("ground.trees[0]");
  });

  it("reads a value, and nothing where there is none", () => {
    expect(readAt(CAMP, ["sleepers", 0, "stature_m"])).toBe(1.7);
    expect(readAt(CAMP, ["night", "low_c"])).toBeUndefined();
    expect(readAt(CAMP, ["sleepers", "length"])).toBeUndefined();
    expect(readAt(CAMP, ["constructor"])).toBeUndefined();
  });

  it("writes one value and shares the rest", () => {
    const changed = writeAt(CAMP, ["sleepers", 0, "stature_m"], 1.8);
    expect(changed).toEqual({ ...CAMP, sleepers: [{ id: "a", stature_m: 1.8 }, { id: "b" }] });
    expect(readAt(changed, ["sleepers", 1])).toBe(CAMP.sleepers[1]);
    expect(readAt(changed, ["odd"])).toBe(CAMP.odd);
    expect(CAMP.sleepers[0]?.stature_m).toBe(1.7);
  });

  it("keeps the order of fields", () => {
    const changed = writeAt(CAMP, ["name"], "Hill");
    expect(Object.keys(changed ?? {})).toEqual(["name", "sleepers", "odd"]);
  });

  it("makes what is missing on the way", () => {
    expect(writeAt({}, ["night", "low_c"], 4)).toEqual({ night: { low_c: 4 } });
  });

  it("takes a field or a list item away", () => {
    expect(writeAt(CAMP, ["sleepers", 0, "stature_m"], undefined)).toEqual({
      ...CAMP,
      sleepers: [{ id: "a" }, { id: "b" }],
    });
    expect(writeAt(CAMP, ["sleepers", 0], undefined)).toEqual({ ...CAMP, sleepers: [{ id: "b" }] });
  });
});
