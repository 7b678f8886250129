import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Camp } from "../plan/camp.ts";
import { COST_WEIGHTS, type CostWeights } from "../plan/cost-weights.ts";
import { presetRules } from "../plan/rule-defaults.ts";
import type { Tree } from "../site/tree.ts";
import { at, camp } from "./testing/camp.fixture.ts";
import { planned } from "./testing/planned.fixture.ts";
import { WOOD } from "./testing/wood.fixture.ts";

describe("terms of the cost", () => {
  const east = [at(0, 0), at(4, 0)];
  const north = [at(20, 0), at(20, 4)];
  const weighed = (weights: Partial<CostWeights>, trees: readonly Partial<Tree>[]): Camp => ({
    ...camp()
      .trees(...trees)
      .rules("usual", { ...presetRules("usual"), weights: { ...COST_WEIGHTS, ...weights } })
      .ground({ meetingPoint: { at: [100, 0] }, slope: { riseRatio: 0.1, downhillRad: 0 } })
      .night({ windFromRad: 0 })
      .sleepers(1)
      .build(),
  });

  it("lies across the wind only where that is asked for", () => {
    const crossing = planned(weighed({ wind: 1 }, [...north, ...east])).berths[0];
    expect([crossing?.headTree, crossing?.footTree].sort()).toEqual(["T03", "T04"]);
    expect(planned(weighed({ wind: 1 }, north)).cost).toBeCloseTo(1, 4);
    expect(planned(weighed({}, north)).cost).toBe(0);
  });

  it("counts the rise along and across a berth", () => {
    expect(planned(weighed({ slope: 3 }, north)).cost).toBeCloseTo(0.3, 4);
    expect(planned(weighed({ slope: 3 }, east)).cost).toBeCloseTo(0.3, 4);
  });

  it("counts the way to the meeting point", () => {
    expect(planned(weighed({ walk: 0.01 }, east)).cost).toBeCloseTo(0.98, 4);
    expect(planned(weighed({ walk: 0.01 }, [...east, ...north])).cost).toBeCloseTo(0.8, 2);
  });

  it("keeps the cost when site, wind, slope and meeting point are mirrored together, to one unit a berth", () => {
    let placed = 0;
    fc.assert(
      fc.property(WOOD, fc.integer({ min: 0, max: 7 }), (wood, way) => {
        const before = planned(facing(wood, way));
        const after = planned(mirrored(facing(wood, way)));
        placed += before.placed;
        expect(after.placed).toBe(before.placed);
        expect(Math.abs(after.cost - before.cost)).toBeLessThanOrEqual(
          1e-4 * Math.max(1, before.placed) + 1e-9,
        );
      }),
      { seed: 4, numRuns: 30 },
    );
    expect(placed).toBeGreaterThan(30);
  });
});

/** The same wood with every term of a place weighed, the wind from one of eight sides. */
function facing(wood: Camp, way: number): Camp {
  const weights = { ...COST_WEIGHTS, wind: 0.5, slope: 2, walk: 0.02 };
  const { night } = camp()
    .night({ windFromRad: (way * Math.PI) / 4 })
    .build();
  return {
    ...wood,
    rules: { ...wood.rules, weights },
    ...(night === undefined ? {} : { night }),
    ...(wood.ground === undefined ? {} : { ground: { ...wood.ground, meetingPoint: { at: [3, 5] } } }),
  };
}

function mirrored(wood: Camp): Camp {
  const { ground, night } = wood;
  if (ground === undefined || night === undefined) throw new Error("a wood has ground and a night");
  return {
    ...wood,
    night: { ...night, windFromRad: -(night.windFromRad ?? 0) },
    ground: {
      ...ground,
      trees: ground.trees.map((tree) => ({ ...tree, xM: -tree.xM })),
      meetingPoint: { at: [-3, 5] },
      ...(ground.slope === undefined
        ? {}
        : { slope: { ...ground.slope, downhillRad: -ground.slope.downhillRad } }),
    },
  };
}
