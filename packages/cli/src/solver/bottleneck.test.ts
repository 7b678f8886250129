import { explainPlan, planCamp, presetRules, type Camp, type Sleeper, type Tree } from "@nightspan/core";
import { describe, expect, it } from "vitest";
import { loadSolver } from "./load-solver.ts";

/** A dense square wood whose places all hang together, and more people than it holds. */
function denseWood(stems: number, people: number): Camp {
  let state = 7;
  const chance = (): number => (state = (state * 48_271) % 2_147_483_647) / 2_147_483_647;
  const sideM = Math.sqrt(stems / 0.09);
  const trees = Array.from({ length: stems }, (_, index): Tree => {
    const id = `t${index}`;
    return {
      id,
      tag: id,
      xM: sideM * chance(),
      yM: sideM * chance(),
      dbhM: 0.3,
      condition: "healthy",
      use: true,
    };
  });
  const sleepers = Array.from({ length: people }, (_, index): Sleeper => {
    return {
      id: `s${index}`,
      name: `s${index}`,
      massKg: 70,
      statureM: 1.7,
      hand: "right",
      reachM: 2.1,
      stepM: 0.7,
      sleeps: "usual",
      leads: false,
      near: [],
      apart: [],
      kit: [],
    };
  });
  return {
    name: "Dense wood",
    rules: { ...presetRules("usual"), footprintHalfWidthM: { value: 0.6, source: "test" } },
    ground: { trees, pairs: [], obstacles: [], source: "taped", positionErrorM: 0.1 },
    sleepers,
    groups: [],
    kit: [],
    defaultsUsed: [],
  };
}

describe("what limits a wood too entangled to search part by part", () => {
  it("is shown by the solver: knots that allow between them no more than lie there", async () => {
    const solver = await loadSolver();
    const camp = denseWood(100, 60);
    const planned = planCamp(camp, { engine: "test", solver });
    if (!planned.ok) throw new Error("the wood can be planned");
    const plan = planned.value;
    expect(plan.method).toMatch(/linear relaxation|branch and bound/);
    expect(plan.placed).toBe(plan.bound);
    const { bottleneck, counterfactuals } = explainPlan(plan, camp, { solver });
    expect(bottleneck?.most).toBe(plan.placed);
    const knots = bottleneck?.knots ?? [];
    expect(knots.reduce((sum, { most }) => sum + most, 0)).toBe(plan.placed);
    const held = new Set(knots.flatMap(({ pairs }) => pairs.map(([a, b]) => [a, b].sort().join(" "))));
    expect(held.size).toBe(plan.supply.berths);
    for (const { headTree, footTree } of plan.berths)
      expect(held).toContain([headTree, footTree].sort().join(" "));
    expect(counterfactuals?.[0]?.gained).toBeGreaterThan(0);
  });
});
