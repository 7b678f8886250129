import { describe, expect, it } from "vitest";
import { degrees } from "../../quantity/angle.ts";
import { at, camp } from "../testing/camp.fixture.ts";
import { onlyBerth, planned, troubles } from "../testing/planned.fixture.ts";

function leaning(...leans: readonly (number | undefined)[]) {
  const trees = leans.map((lean, index) =>
    at(4.2 * index, 0, lean === undefined ? {} : { leanRad: degrees(lean) }),
  );
  return onlyBerth(
    planned(
      camp()
        .trees(...trees)
        .sleepers(1)
        .build(),
    ),
  ).findings;
}

describe("a tree that leans", () => {
  it("is looked at again beyond ten degrees, either way, each tree for itself", () => {
    expect(troubles(leaning(10, undefined))).toEqual([]);
    expect(troubles(leaning(11, 3))).toEqual(["tree.lean"]);
    expect(troubles(leaning(2, -25))).toEqual(["tree.lean"]);
    const leans = leaning(11, -25).filter(({ rule }) => rule === "tree.lean");
    expect(leans.map(({ subject, verdict }) => [subject, verdict])).toEqual([
      ["tree/T01", "look-again"],
      ["tree/T02", "look-again"],
    ]);
    expect(leans[1]?.demand).toBeCloseTo(degrees(25), 12);
  });

  it("says nothing where nobody told a lean", () => {
    expect(leaning(undefined, undefined).filter(({ rule }) => rule === "tree.lean")).toEqual([]);
  });
});
