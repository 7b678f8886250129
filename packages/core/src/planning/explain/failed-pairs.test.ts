import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Camp } from "../../plan/camp.ts";
import type { FailedPair } from "../../plan/plan.ts";
import { at, camp, pair, sleeper } from "../testing/camp.fixture.ts";
import { planned } from "../testing/planned.fixture.ts";
import { WOOD } from "../testing/wood.fixture.ts";
import { explainPlan } from "./explain-plan.ts";

describe("pairs that nearly serve", () => {
  it("says who lies at a pair that would serve, and whose berth is in its way", () => {
    const row = camp()
      .trees(at(0, 0), at(4, 0), at(8.2, 0))
      .sleepers(sleeper("heavy", { massKg: 100 }), sleeper("light", { massKg: 60 }))
      .build();
    const plan = planned(row);
    const [lost] = plan.unplaced;
    const told = pairsOf(row, lost?.sleeper ?? "");
    const holder = plan.berths[0]?.sleeper;
    expect(rulesOf(told)).toEqual({ "T01 T02": ["site.taken"], "T02 T03": ["site.capacity"] });
    expect(told[0]?.because[0]?.about).toEqual([holder]);
    const crossing = camp()
      .trees(at(0, 0), at(4, 0), at(2, -2), at(2, 2))
      .rules("usual", { spanMinM: { value: 3.9, source: "test" } })
      .sleepers(2)
      .build();
    const overlap = Object.values(rulesOf(pairsOf(crossing, planned(crossing).unplaced[0]?.sleeper ?? "")));
    expect(overlap).toContainEqual(["site.in-the-way"]);
  });

  it("puts the pair first that misses by least: a span just too far before one far off, a stem last", () => {
    const near = camp()
      .trees(at(0, 0), at(5.1, 0), at(0, 12), at(5.4, 12), at(0, 24), at(4, 24), at(2, 24.5))
      .sleepers(1)
      .build();
    const told = pairsOf(near, "s1");
    expect(told.map(({ trees }) => trees.join(" "))).toEqual(["T01 T02", "T03 T04", "T05 T06"]);
    expect(rulesOf(told)).toEqual({
      "T01 T02": ["span.most"],
      "T03 T04": ["span.most"],
      "T05 T06": ["site.stem"],
    });
  });

  it("tells the limits of a hang that is refused, and the set-back in the way", () => {
    const low = camp()
      .trees(at(0, 0), at(4.5, 0))
      .sleepers(sleeper("a", { reachM: 1.2 }))
      .build();
    expect(new Set(rulesOf(pairsOf(low, "a"))["T01 T02"])).toEqual(new Set(["strap.reach"]));
    const path = camp()
      .trees(at(0, 0), at(4, 0))
      .obstacles({ id: "path", kind: "path", shape: { type: "point", at: [2, 3] }, setbackM: 2 })
      .sleepers(1)
      .build();
    expect(rulesOf(pairsOf(path, "s1"))).toEqual({ "T01 T02": ["site.setback"] });
  });

  it("knows stated pairs that the house rules keep out", () => {
    const stated = camp()
      .pairs(pair("far", ["A", "B"], { spanM: 5.3 }), pair("thin", ["C", "D"], { dbhM: [0.15, 0.3] }))
      .sleepers(1)
      .build();
    expect(rulesOf(pairsOf(stated, "s1"))).toEqual({ "A B": ["span.most"], "C D": ["tree.trunk-least"] });
  });
});

describe("pairs that fail and are not named", () => {
  it("are counted: of fifteen that others lie at or across, twelve are named", () => {
    const trees = Array.from({ length: 15 }, (_, row) => [at(0, 12 * row), at(4, 12 * row)]).flat();
    const wood = camp()
      .trees(...trees)
      .sleepers(16)
      .build();
    const [lost] = explainPlan(planned(wood), wood).unplaced;
    expect(lost?.pairs).toHaveLength(12);
    expect(lost?.pairsLeft).toBe(3);
  });

  it("are counted too where more strips are blocked than are looked at", () => {
    const row = Array.from({ length: 320 }, (_, n) => [at(0, 12 * n), at(4, 12 * n), at(2, 12 * n)]).flat();
    const wood = camp()
      .trees(...row)
      .sleepers(1)
      .build();
    const [lost] = explainPlan(planned(wood), wood).unplaced;
    expect([lost?.pairs?.length, lost?.pairsLeft]).toEqual([12, 308]);
  });

  it("are not spoken of where all are named", () => {
    const wood = camp().trees(at(0, 0), at(5.1, 0)).sleepers(1).build();
    expect(explainPlan(planned(wood), wood).unplaced[0]).not.toHaveProperty("pairsLeft");
  });
});

describe("laws of pairs that nearly serve", () => {
  it("names at most 12, each once and with a reason, and none that a berth of the plan would serve free", () => {
    let told = 0;
    fc.assert(
      fc.property(WOOD, (wood) => {
        for (const { sleeper: who } of planned(wood).unplaced) {
          const pairs = pairsOf(wood, who);
          const keys = pairs.map(({ trees }) => trees.join(" "));
          expect(pairs.length).toBeLessThanOrEqual(12);
          expect(new Set(keys).size).toBe(keys.length);
          expect(pairs.every(({ because }) => because.length > 0)).toBe(true);
          told += pairs.length;
        }
      }),
      { seed: 1, numRuns: 25 },
    );
    expect(told).toBeGreaterThan(50);
  });
});

function pairsOf(wood: Camp, who: string): readonly FailedPair[] {
  return explainPlan(planned(wood), wood).unplaced.find((one) => one.sleeper === who)?.pairs ?? [];
}

function rulesOf(pairs: readonly FailedPair[]): Record<string, string[]> {
  return Object.fromEntries(
    pairs.map(({ trees, because }) => [trees.join(" "), because.map(({ rule }) => rule)]),
  );
}
