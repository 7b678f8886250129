import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Camp } from "../plan/camp.ts";
import { repairPlan } from "./repair/repair-plan.ts";
import { at, camp, pair, sleeper } from "./testing/camp.fixture.ts";
import { layoutFaults } from "./layout-faults.ts";
import { planned } from "./testing/planned.fixture.ts";
import { WOOD } from "./testing/wood.fixture.ts";

/** The same camp whose house asks for one spare berth for each so many. */
function keeping(wood: Camp, per: number): Camp {
  return { ...wood, rules: { ...wood.rules, sparePer: { value: per, source: "house" } } };
}

/** Three pairs far apart: the ideal span, then 0.4 and 0.8 m off. */
const THREE = [at(0, 0), at(4, 0), at(0, 20), at(4.4, 20), at(0, 40), at(4.8, 40)] as const;

describe("spare berths", () => {
  const two = camp()
    .trees(...THREE)
    .sleepers(sleeper("heavy", { massKg: 100 }), sleeper("light", { massKg: 60 }))
    .build();

  it("are none where no house asks for them", () => {
    const plan = planned(two);
    expect(plan.spares).toBeUndefined();
    expect(plan.cost).toBeCloseTo(0.4, 9);
  });

  it("are kept beside everybody's own, numbered by themselves, and say whom they serve", () => {
    const plan = planned(keeping(two, 6));
    expect(plan.placed).toBe(2);
    expect(plan.berths.map(({ id }) => id)).toEqual(["1", "2"]);
    expect(plan.spares).toMatchObject([{ id: "S1", serves: ["heavy", "light"], verdict: "clear" }]);
    const spoken = plan.spares?.flatMap(({ findings }) => findings.map(({ subject }) => subject)) ?? [];
    expect(spoken.filter((subject) => subject.startsWith("sleeper/"))).toEqual([]);
    expect(plan.findings).toMatchObject([{ rule: "layout.spare", demand: 1, limit: 1, verdict: "clear" }]);
    expect(plan.treesLookedAt.of).toBe(4);
  });

  it("count one for each so many people and one for those left over", () => {
    const many = (people: number, per: number) =>
      planned(keeping(camp().sleepers(people).build(), per)).findings.find(
        ({ rule }) => rule === "layout.spare",
      );
    expect(many(6, 6)).toMatchObject({ limit: 1, demand: 0, verdict: "look-again" });
    expect(many(7, 6)).toMatchObject({ limit: 2 });
  });

  it("cost like the others, and the bound is of them all", () => {
    const plan = planned(keeping(two, 2));
    expect(plan.cost).toBeCloseTo(1.2, 9);
    expect([plan.gap, plan.bound]).toEqual([0, 2]);
  });

  it("move somebody to a dearer pair where only that leaves one free", () => {
    // One row: the middle pair is the best for one, and leaves none free.
    const row = camp().trees(at(0, 0), at(4.9, 0), at(8.9, 0), at(13.8, 0)).sleepers(1).build();
    expect(planned(row).berths[0]?.headTree).toBe("T02");
    const plan = planned(keeping(row, 1));
    expect(plan.placed).toBe(1);
    expect(plan.spares?.length).toBe(1);
  });

  it("never take anybody's berth: none is kept while somebody goes without, and fewer where the ground ends", () => {
    const three = camp()
      .trees(...THREE)
      .sleepers(3)
      .build();
    expect(planned(keeping(three, 6))).toMatchObject({ placed: 3, spares: [] });
    const short = planned(keeping(two, 1));
    expect(short).toMatchObject({ placed: 2, spares: [{ id: "S1" }] });
    expect(short.findings).toMatchObject([
      { rule: "layout.spare", demand: 1, limit: 2, verdict: "look-again" },
    ]);
  });

  it("are found among stated pairs too", () => {
    const stated = camp()
      .pairs(pair("p", ["A", "B"]), pair("q", ["C", "D"]))
      .sleepers(1)
      .build();
    expect(planned(keeping(stated, 6)).spares).toMatchObject([{ id: "S1", pair: "q" }]);
  });

  it("say look again at trees nobody looked at, without changing what is said of the plan", () => {
    const trees = THREE.map((tree, index) =>
      index > 3 ? { ...tree, condition: "not-looked-at" as const } : tree,
    );
    const wood = camp()
      .trees(...trees)
      .sleepers(2)
      .build();
    expect(planned(keeping(wood, 6))).toMatchObject({
      verdict: "clear",
      spares: [{ verdict: "look-again" }],
    });
  });

  it("are kept by a repair as well", () => {
    const lost = { ...keeping(two, 6) };
    const before = planned(lost);
    const mended = repairPlan(before, lost, { engine: "test" });
    expect(mended.ok && mended.value.moved).toEqual([]);
    expect(mended.ok && mended.value.repaired.spares?.length).toBe(1);
  });
});

describe("laws of spare berths", () => {
  it("places as many people as without, and every berth and spare keeps the rules of the ground", () => {
    let spared = 0;
    fc.assert(
      fc.property(WOOD, fc.integer({ min: 1, max: 4 }), (wood, per) => {
        const [plain, plan] = [planned(wood), planned(keeping(wood, per))];
        expect(plan.placed).toBe(plain.placed);
        const { spares = [] } = plan;
        spared += spares.length;
        if (plain.placed < wood.sleepers.length) expect(spares).toEqual([]);
        expect(plan.lowerBound).toBeLessThanOrEqual(plan.cost + 1e-9);
        expect(layoutFaults(wood, [...plan.berths, ...spares])).toEqual([]);
      }),
      { seed: 1, numRuns: 30 },
    );
    expect(spared).toBeGreaterThan(5);
  });
});
