import { describe, expect, it } from "vitest";
import type { Camp } from "../plan/camp.ts";
import type { Tree } from "../site/tree.ts";
import { at, camp, pair } from "./testing/camp.fixture.ts";
import { planned } from "./testing/planned.fixture.ts";

/** Why the first without a berth has none: rule and subject. */
function why(wood: Camp): string[] {
  const because = planned(wood).unplaced[0]?.because ?? [];
  return because.slice(1).map(({ rule, subject }) => `${rule} ${subject}`);
}

describe("why two trees carry nobody", () => {
  const two = (...trees: readonly Partial<Tree>[]) =>
    camp()
      .trees(...trees)
      .sleepers(1)
      .build();

  it("names the tree that is dead, doubtful, too thin or kept out", () => {
    expect(why(two(at(0, 0), at(4, 0, { condition: "dead", heightM: 1 })))).toEqual(["tree.dead tree/T02"]);
    expect(why(two(at(0, 0, { condition: "doubtful" }), at(4, 0)))).toEqual(["tree.doubtful tree/T01"]);
    expect(why(two(at(0, 0), at(4, 0, { dbhM: 0.15 })))).toEqual(["tree.trunk-least tree/T02"]);
    expect(why(two(at(0, 0, { use: false }), at(4, 0, { dbhM: 0.1 })))).toEqual([
      "tree.trunk-least tree/T02",
      "tree.not-allowed tree/T01",
    ]);
  });

  it("tells a span out of range, with both trees", () => {
    const [, far] = planned(two(at(0, 0), at(6, 0))).unplaced[0]?.because ?? [];
    expect(far).toMatchObject({ rule: "span.most", demand: 6, limit: 5, about: ["T01", "T02"] });
  });

  it("says nothing of single trees where there are many", () => {
    const many = Array.from({ length: 13 }, (_, index) =>
      at(4 * index, 0, { condition: "dead", heightM: 1 }),
    );
    expect(why(two(...many))).toEqual([]);
  });
});

describe("stated pairs that must not be used", () => {
  const stated = (but: Parameters<typeof pair>[2]) =>
    camp()
      .pairs(pair("p", ["A", "B"], but))
      .sleepers(1)
      .build();

  it("are left out, and say why", () => {
    expect(planned(stated({})).placed).toBe(1);
    expect(why(stated({ use: false }))).toEqual(["pair.not-allowed sleeper/s1"]);
    expect(why(stated({ conditions: ["healthy", "dead"] }))).toEqual(["tree.dead tree/B"]);
    expect(why(stated({ conditions: ["doubtful", "healthy"] }))).toEqual(["tree.doubtful tree/A"]);
    expect(planned(stated({ conditions: ["doubtful", "healthy"] })).supply).toMatchObject({
      trees: 2,
      usable: 1,
      pairs: 0,
    });
    expect(planned(stated({ conditions: ["healthy", "not-looked-at"] })).placed).toBe(1);
  });

  it("take their dead tree out of every other pair, stated before or after, whichever end it is", () => {
    const row = camp()
      .pairs(
        pair("p", ["A", "B"], { conditions: ["healthy", "dead"] }),
        pair("q", ["B", "C"]),
        pair("r", ["D", "E"]),
      )
      .sleepers(2)
      .build();
    const plan = planned(row);
    expect(plan.berths.map((berth) => berth.pair)).toEqual(["r"]);
  });

  it("keep the same pair of the map out too, but not its trees", () => {
    const wood = camp()
      .trees(at(0, 0, { id: "A" }), at(4, 0, { id: "B" }), at(0, 20, { id: "C" }), at(4, 20, { id: "D" }))
      .pairs(pair("p", ["B", "A"], { use: false }))
      .sleepers(2)
      .build();
    const plan = planned(wood);
    expect(plan.berths.map(({ headTree, footTree }) => [headTree, footTree].sort())).toEqual([["C", "D"]]);
    expect(plan.supply.usable).toBe(4);
  });
});
