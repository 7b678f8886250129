import { describe, expect, it } from "vitest";
import { camp, pair } from "./testing/camp.fixture.ts";
import { onlyBerth, planned, troubles } from "./testing/planned.fixture.ts";

describe("planCamp by stated pairs", () => {
  it("plans just as well without a map, but knows nothing of the surroundings", () => {
    const plan = planned(
      camp()
        .pairs(pair("p", ["red 1", "red 2"]))
        .sleepers(1)
        .build(),
    );
    expect(plan).toMatchObject({ verdict: "clear", placed: 1 });
    expect(plan.notChecked).toContain("site");
    expect(onlyBerth(plan)).toMatchObject({
      pair: "p",
      headTree: "red 1",
      footTree: "red 2",
      stepItOut: false,
    });
  });

  it("does not use pairs together that are too near each other", () => {
    const pairs = [pair("p", ["A", "B"], { tooNear: ["q"] }), pair("q", ["C", "D"])];
    const plan = planned(
      camp()
        .pairs(...pairs)
        .sleepers(2)
        .build(),
    );
    expect(plan).toMatchObject({ placed: 1, bound: 1, asked: 2 });
  });

  it("shares a tree between two pairs only where the house allows two hammocks on it", () => {
    const pairs = [pair("p", ["A", "B"]), pair("q", ["B", "C"])];
    const two = camp()
      .pairs(...pairs)
      .sleepers(2);
    expect(planned(two.build()).placed).toBe(1);
    const shared = { hammocksPerTree: { value: 2, source: "land manager" } };
    expect(planned(two.rules("usual", shared).build()).placed).toBe(2);
  });

  it("says look again where nobody measured the trunks", () => {
    const plan = planned(
      camp()
        .pairs(pair("p", ["A", "B"], { dbhAssumed: true }))
        .sleepers(1)
        .build(),
    );
    expect(troubles(onlyBerth(plan).findings)).toEqual(["tree.trunk-unknown"]);
  });

  it("lets a span counted in steps stand where its error stays inside the rules, else asks to look again", () => {
    const stepped = (spanM: number) =>
      onlyBerth(
        planned(
          camp()
            .pairs(pair("p", ["A", "B"], { spanM, stepped: true }))
            .sleepers(1)
            .build(),
        ),
      );
    expect(stepped(4.2).verdict).toBe("clear");
    const [finding] = stepped(4.9).findings.filter(({ rule }) => rule === "span.stepped");
    expect(finding).toMatchObject({ verdict: "look-again", unit: "m" });
    expect(finding?.demand).toBeCloseTo(0.04 * 4.9, 12);
    expect(finding?.limit).toBeCloseTo(0.1, 12);
  });

  it("takes the fall as stated and knows the foot strap's ground by it", () => {
    const berth = onlyBerth(
      planned(
        camp()
          .pairs(pair("p", ["A", "B"], { fallM: 0.3 }))
          .sleepers(1)
          .build(),
      ),
    );
    expect([berth.headTree, berth.groundKnown]).toEqual(["B", true]);
  });
});
