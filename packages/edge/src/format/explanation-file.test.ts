import { explainPlan, repairPlan, type Camp } from "@nightspan/core";
import { describe, expect, it } from "vitest";
import { ENGINE } from "../engine.ts";
import { exampleCamp, planOf } from "../examples.fixture.ts";
import { planFile, writePlan } from "./plan-file.ts";
import { readPlan } from "./read-plan.ts";

/** The western half of the demo wood: not everybody has a berth. */
function half(): Camp {
  const { camp } = exampleCamp("demo");
  if (camp.ground === undefined) throw new Error("the demo camp has a ground");
  const trees = camp.ground.trees.filter(({ xM }) => xM < 30);
  return { ...camp, ground: { ...camp.ground, trees } };
}

describe("what explains a plan, in its file", () => {
  const camp = half();
  const plan = explainPlan(planOf(camp), camp);
  const file = planFile(plan);

  it("reads back as it was", () => {
    expect(readPlan(writePlan(file))).toEqual({ ok: true, value: file });
  });

  it("tells each change by key, in metres, with whom it takes to say so", () => {
    expect(file.counterfactuals?.length).toBeGreaterThan(0);
    for (const { placed, gained } of file.counterfactuals ?? []) expect(placed - gained).toBe(plan.placed);
    const setback = file.counterfactuals?.find(({ change }) => change === "setback");
    expect(setback).toMatchObject({ about: ["stream"], from: [3], to: [1.5], unit: "m", advice: true });
    const dead = file.counterfactuals?.find(({ change }) => change === "dead-gone");
    expect(dead).toMatchObject({ advice: false });
    expect(dead).not.toHaveProperty("from");
  });

  it("tells what decides it so that a map can draw it", () => {
    const known = new Set(camp.ground?.trees.map(({ id }) => id));
    expect(file.bottleneck?.trees.every((id) => known.has(id))).toBe(true);
    expect(file.bottleneck?.knots.reduce((sum, { most }) => sum + most, 0)).toBe(file.bottleneck?.most);
  });

  it("tells pins that were not kept, and who moves in a repair", () => {
    const pinned: Camp = { ...camp, pins: [{ sleeper: "rhodri", trees: ["A1", "A2"] }] };
    const refused = planFile(planOf(pinned)).pins_refused;
    expect(refused).toMatchObject([{ sleeper: "rhodri", trees: ["A1", "A2"] }]);
    expect(refused?.[0]?.because.length).toBeGreaterThan(0);
    const repair = repairPlan(plan, camp, { engine: ENGINE });
    if (!repair.ok) throw new Error("the camp can be planned");
    const mended = planFile(repair.value.repaired, repair.value);
    expect(mended.repair).toMatchObject({ moved: [], fewest: true, fresh: { placed: plan.placed } });
    expect(readPlan(writePlan(mended))).toEqual({ ok: true, value: mended });
  });
});
