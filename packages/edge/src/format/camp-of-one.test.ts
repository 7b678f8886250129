import { describe, expect, it } from "vitest";
import { planOf } from "../examples.fixture.ts";
import { campOfOne, type TwoTrees } from "./camp-of-one.ts";
import { openCamp } from "./open-camp.ts";

function planned(two: TwoTrees) {
  const opened = openCamp(campOfOne(two));
  if (!opened.ok) throw new Error(JSON.stringify(opened.refusals));
  return planOf(opened.value.camp);
}

describe("two trees, tonight", () => {
  it("is a camp of one that has a berth", () => {
    const plan = planned({ spanM: 4.5, statureM: 1.75 });
    expect(plan).toMatchObject({ placed: 1, asked: 1, verdict: "look-again" });
    expect(plan.berths[0]).toMatchObject({ sleeper: "you", spanM: 4.5, pair: "tonight" });
  });

  it("counts steps by the sleeper's own step", () => {
    expect(planned({ steps: 6, stepM: 0.7, statureM: 1.75 }).berths[0]?.spanM).toBeCloseTo(4.2, 12);
    expect(planned({ steps: 6, statureM: 1.75 }).berths[0]?.spanM).toBeCloseTo(6 * 0.41 * 1.75, 12);
  });

  it("has its head at the lower ground", () => {
    expect(planned({ spanM: 4.2, statureM: 1.75, fallM: 0.3 }).berths[0]?.headTree).toBe("the second tree");
    expect(planned({ spanM: 4.2, statureM: 1.75, fallM: -0.3 }).berths[0]?.headTree).toBe("the first tree");
  });

  it("finds a sling too long for near trees", () => {
    const plan = planned({ spanM: 3.2, statureM: 1.75, sling: { shortestM: 0.9 } });
    expect(plan.placed).toBe(0);
    expect(plan.unplaced[0]?.because.map(({ rule }) => rule)).toContain("sling.shortest");
  });
});
