import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Camp } from "../../plan/camp.ts";
import type { Plan } from "../../plan/plan.ts";
import { at, camp, hammock, sleeper, webbing } from "../testing/camp.fixture.ts";
import { planned } from "../testing/planned.fixture.ts";
import { WOOD } from "../testing/wood.fixture.ts";
import { movedSleepers } from "./moved-sleepers.ts";
import { repairPlan } from "./repair-plan.ts";
import type { PlanBefore, PlanRepair } from "./repair-types.ts";

/** Three pairs far apart: the first is the ideal span, the others are longer. */
const THREE = [at(0, 0), at(4, 0), at(0, 12), at(4.4, 12), at(0, 24), at(4.8, 24)] as const;

describe("a repair", () => {
  it("moves nobody where nothing changed", () => {
    const wood = camp()
      .trees(...THREE)
      .sleepers(2)
      .build();
    expect(repaired(planned(wood), wood)).toMatchObject({ moved: [], fewest: true, freshMoved: [] });
  });

  it("moves those alone who lay at a tree that is lost", () => {
    const wood = camp()
      .trees(...THREE)
      .sleepers(sleeper("heavy", { massKg: 100 }), sleeper("light", { massKg: 50 }))
      .build();
    const before = planned(wood);
    const lost = before.berths.find((berth) => berth.sleeper === "heavy")?.headTree ?? "";
    const repair = repaired(before, without(wood, lost));
    expect(repair).toMatchObject({ moved: ["heavy"], fewest: true });
    expect(repair.repaired.placed).toBe(2);
    expect(pairOf(repair.repaired, "light")).toBe(pairOf(before, "light"));
  });

  it("keeps people where planning anew would change them about", () => {
    const wood = camp()
      .trees(...THREE)
      .sleepers(sleeper("a"), sleeper("b", { massKg: 60 }))
      .build();
    const before: PlanBefore = {
      berths: [
        { sleeper: "a", headTree: "T03", footTree: "T04" },
        { sleeper: "b", headTree: "T06", footTree: "T05" },
      ],
    };
    const { moved, freshMoved, repaired: plan, fresh } = repaired(before, wood);
    expect(moved).toEqual([]);
    expect(freshMoved.length).toBeGreaterThan(0);
    expect(plan.cost).toBeCloseTo(1.2, 9);
    expect(fresh.cost).toBeCloseTo(0.4, 9);
    expect(plan.lowerBound).toBeCloseTo(0.4, 9);
    expect(plan.method).toMatch(/^repair, /);
  });

  it("moves one more where only that gives everybody a berth", () => {
    // One row: T01 T02 T03 T04. Whoever lies in the middle leaves no other pair free.
    const row = camp().trees(at(0, 0), at(4, 0), at(8, 0), at(12, 0)).sleepers(2).build();
    const before: PlanBefore = { berths: [{ sleeper: "s1", headTree: "T02", footTree: "T03" }] };
    const repair = repaired(before, row);
    expect(repair.repaired.placed).toBe(2);
    expect(repair).toMatchObject({ moved: ["s1"], fewest: true });
  });

  it("leaves out who is gone, and finds a berth for who is new without moving anybody", () => {
    const wood = camp()
      .trees(...THREE)
      .sleepers(2)
      .build();
    const before = planned(wood);
    const after = { ...wood, sleepers: [sleeper("s2"), sleeper("new")] };
    const repair = repaired(before, after);
    expect(repair.moved).toEqual([]);
    expect(repair.repaired.berths.map((berth) => berth.sleeper).sort()).toEqual(["new", "s2"]);
  });

  it("keeps pins before berths", () => {
    const wood = camp()
      .trees(...THREE)
      .sleepers(2)
      .build();
    const before = planned(wood);
    const taken = before.berths.find((berth) => berth.sleeper === "s2");
    const pins = [{ sleeper: "s1", trees: [taken?.headTree ?? "", taken?.footTree ?? ""] as const }];
    const repair = repaired(before, { ...wood, pins });
    expect(pairOf(repair.repaired, "s1")).toBe(pairOf(before, "s2"));
    expect(repair.moved).toEqual(["s1", "s2"]);
  });

  it("tells who loses the berth where not everybody can be placed any more", () => {
    const wood = camp()
      .trees(...THREE)
      .sleepers(3)
      .build();
    const before = planned(wood);
    const repair = repaired(before, without(wood, "T06"));
    const [one, ...more] = repair.moved;
    expect(more).toEqual([]);
    expect(repair.repaired.unplaced.map((lost) => lost.sleeper)).toEqual([one]);
  });
});

describe("a repair with kit that differs", () => {
  it("counts as one who stays whoever keeps the trees, whatever the kit", () => {
    const wood = camp()
      .trees(...THREE)
      .sleepers(2)
      .kit(hammock("h", { count: 2 }), webbing("w", { count: 2 }))
      .build();
    const after = { ...wood, kit: [hammock("x", { count: 2, lengthM: 3.1 }), webbing("w", { count: 2 })] };
    expect(repaired(planned(wood), after).moved).toEqual([]);
  });
});

describe("laws of a repair", () => {
  it("never moves more than planning anew, and as few as trying every choice of who stays", () => {
    let [spared, tried] = [0, 0];
    fc.assert(
      fc.property(WOOD, fc.nat(), (wood, at) => {
        const before = planned(wood);
        const lost = before.berths[at % Math.max(1, before.berths.length)]?.footTree;
        if (lost === undefined) return;
        const after = without(wood, lost);
        const { repaired: plan, moved, fresh, freshMoved, fewest } = repaired(before, after);
        expect(plan.placed).toBe(fresh.placed);
        expect(moved.length).toBeLessThanOrEqual(freshMoved.length);
        expect(moved).toEqual(movedSleepers(before, plan, after));
        expect(fewest).toBe(true);
        expect(moved.length).toBe(fewestByTrying(before, after, fresh.placed));
        spared += freshMoved.length > moved.length ? 1 : 0;
        tried++;
      }),
      { seed: 1, numRuns: 25 },
    );
    expect(tried).toBeGreaterThan(10);
    expect(spared).toBeGreaterThan(0);
  });
});

/** Pins every choice of people to their berths, and sees how few must move for as many to be placed. */
function fewestByTrying(before: Plan, wood: Camp, placed: number): number {
  const { berths } = before;
  let fewest = berths.length;
  for (let choice = 0; choice < 1 << berths.length; choice++) {
    const stay = berths.filter((_, at) => (choice & (1 << at)) !== 0);
    if (berths.length - stay.length >= fewest) continue;
    const pins = stay.map(({ sleeper: who, headTree, footTree }) => {
      return { sleeper: who, trees: [headTree, footTree] as const };
    });
    const plan = planned({ ...wood, pins });
    if (plan.pinsRefused === undefined && plan.placed === placed) fewest = berths.length - stay.length;
  }
  return fewest;
}

function repaired(before: PlanBefore, wood: Camp): PlanRepair {
  const outcome = repairPlan(before, wood, { engine: "test" });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.refusals));
  return outcome.value;
}

/** The same camp with one tree that may not be used any more. */
function without(wood: Camp, id: string): Camp {
  const { ground } = wood;
  if (ground === undefined) return wood;
  const trees = ground.trees.map((tree) => (tree.id === id ? { ...tree, use: false } : tree));
  return { ...wood, ground: { ...ground, trees } };
}

function pairOf({ berths }: Plan, who: string): string | undefined {
  const berth = berths.find((one) => one.sleeper === who);
  return berth && [berth.headTree, berth.footTree].sort().join(" ");
}
