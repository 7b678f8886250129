import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { worstVerdict } from "../outcome/finding.ts";
import type { Camp } from "../plan/camp.ts";
import type { HouseRule } from "../plan/house-rules.ts";
import type { Tarp } from "../plan/kit.ts";
import type { Plan } from "../plan/plan.ts";
import type { Obstacle } from "../site/obstacle.ts";
import type { Tree } from "../site/tree.ts";
import { layoutFaults } from "./layout-faults.ts";
import { planned } from "./testing/planned.fixture.ts";
import { WOOD } from "./testing/wood.fixture.ts";

const TARP: Tarp = {
  kind: "tarp",
  id: "t",
  count: 5,
  state: "in-use",
  shape: "rectangle",
  ridgeM: 3.4,
  widthM: 3,
};

const SEEDED = { seed: 1, numRuns: 40 };

describe("laws of a plan", () => {
  it("has the verdict of its worst finding", () => {
    fc.assert(
      fc.property(WOOD, (wood) => {
        const plan = planned(wood);
        const all = [...plan.findings, ...plan.berths.flatMap(({ findings }) => findings)];
        expect(plan.verdict).toBe(worstVerdict(all.map(({ verdict }) => verdict)));
        for (const { verdict, findings } of plan.berths) {
          expect(verdict).toBe(worstVerdict(findings.map((finding) => finding.verdict)));
        }
      }),
      SEEDED,
    );
  });

  it("accounts for everybody once: a berth, or a reason why there is none", () => {
    let placed = 0;
    fc.assert(
      fc.property(WOOD, (wood) => {
        const plan = planned(wood);
        const told = [
          ...plan.berths.map((berth) => berth.sleeper),
          ...plan.unplaced.map((one) => one.sleeper),
        ];
        expect(told.sort()).toEqual(wood.sleepers.map(({ id }) => id).sort());
        expect(plan.unplaced.every(({ because }) => because.length > 0)).toBe(true);
        expect(plan.placed).toBeLessThanOrEqual(plan.bound);
        placed += plan.placed;
      }),
      SEEDED,
    );
    expect(placed).toBeGreaterThan(SEEDED.numRuns);
  });

  it("never says no rule broken of a berth with a tree nobody looked at", () => {
    fc.assert(
      fc.property(WOOD, (wood) => {
        const seen = new Map(wood.ground?.trees.map((tree) => [tree.id, tree.lookedAt]));
        return planned(wood).berths.every(
          ({ headTree, footTree, verdict }) =>
            (seen.get(headTree) !== undefined && seen.get(footTree) !== undefined) || verdict !== "clear",
        );
      }),
      SEEDED,
    );
  });

  it("never places fewer when a rule is relaxed", () => {
    const relaxed: readonly ((rules: Camp["rules"]) => Camp["rules"])[] = [
      (rules) => ({ ...rules, spanMaxM: plus(rules.spanMaxM, 0.5) }),
      (rules) => ({ ...rules, spanMinM: plus(rules.spanMinM, -0.3) }),
      (rules) => ({ ...rules, trunkMinM: plus(rules.trunkMinM, -0.04) }),
      (rules) => ({ ...rules, hammocksPerTree: plus(rules.hammocksPerTree, 1) }),
      (rules) => ({ ...rules, footprintHalfWidthM: plus(rules.footprintHalfWidthM, -0.5) }),
      (rules) => ({ ...rules, angleMaxRad: plus(rules.angleMaxRad, 0.1) }),
      (rules) => ({
        ...rules,
        deadTreeHeights: plus(rules.deadTreeHeights, -0.5),
        doubtfulTreeHeights: plus(rules.deadTreeHeights, -0.5),
      }),
    ];
    fc.assert(
      fc.property(WOOD, fc.constantFrom(...relaxed), (wood, relax) => {
        expect(planned({ ...wood, rules: relax(wood.rules) }).placed).toBeGreaterThanOrEqual(
          planned(wood).placed,
        );
      }),
      SEEDED,
    );
  });

  it("keeps its score and its hangs when the map is mirrored", () => {
    fc.assert(
      fc.property(WOOD, (wood) => {
        const [here, there] = [planned(wood), planned(mirrored(wood))];
        expect(score(there)).toEqual(score(here));
      }),
      SEEDED,
    );
  });

  it("does not depend on the order in which trees and sleepers are listed", () => {
    fc.assert(
      fc.property(WOOD, (wood) => {
        const { ground } = wood;
        if (ground === undefined) return;
        const turned = planned({
          ...wood,
          ground: { ...ground, trees: ground.trees.toReversed() },
          sleepers: wood.sleepers.toReversed(),
        });
        expect(turned.berths).toEqual(planned(wood).berths);
      }),
      SEEDED,
    );
  });
});

describe("laws of the ground under a plan", () => {
  it("keeps every rule of the ground when looked at again by other arithmetic", () => {
    let berths = 0;
    fc.assert(
      fc.property(WOOD, (wood) => {
        const { ground } = wood;
        if (ground === undefined) return;
        const fenced = { ...wood, ground: { ...ground, obstacles: OBSTACLES } };
        const plan = planned(fenced);
        berths += plan.berths.length;
        expect(layoutFaults(fenced, plan.berths)).toEqual([]);
      }),
      SEEDED,
    );
    expect(berths).toBeGreaterThan(20);
  });

  it("keeps the ground of the widest tarp dealt, and places no more for a wider one", () => {
    let narrowed = 0;
    fc.assert(
      fc.property(WOOD, fc.integer({ min: 24, max: 36 }), (wood, dm) => {
        const under = (widthM: number) => planned({ ...wood, kit: [...wood.kit, { ...TARP, widthM }] });
        const [plan, wider] = [under(dm / 10), under(dm / 10 + 1)];
        // Half the cloth at 30°, and the guy from its edge on along the diagonal, at 45° down from there.
        const sideM = dm / 20;
        const reachM = sideM * Math.cos(Math.PI / 6) + (1.7 - sideM / 2) * Math.SQRT1_2;
        const kept = { ...wood.rules, tarpHalfWidthM: { value: reachM, source: "test" } };
        expect(layoutFaults({ ...wood, rules: kept }, plan.berths)).toEqual([]);
        expect(wider.placed).toBeLessThanOrEqual(plan.placed);
        if (plan.berths.length > 0) expect(plan.keptHalfWidthM).toBeCloseTo(Math.max(1.5, reachM), 9);
        if (plan.placed < planned(wood).placed) narrowed += 1;
      }),
      SEEDED,
    );
    expect(narrowed).toBeGreaterThan(0);
  });

  it("is never worse for one more healthy tree that stands in nobody's way", () => {
    let gained = 0;
    fc.assert(
      fc.property(WOOD, fc.nat({ max: 20 }), (wood, step) => {
        const before = planned(wood);
        // East of all others by 3 to 5 m of the easternmost: near enough to serve, in no strip between others.
        const after = planned(withTree(wood, 3 + step / 10));
        expect(after.placed).toBeGreaterThanOrEqual(before.placed);
        if (after.placed > before.placed) gained++;
        else expect(after.cost).toBeLessThanOrEqual(before.cost + 1e-9);
      }),
      SEEDED,
    );
    expect(gained).toBeGreaterThan(0);
  });

  it("keeps its cost to one unit a berth when site and slope are turned together", () => {
    fc.assert(
      fc.property(WOOD, fc.integer({ min: 1, max: 359 }), (wood, degrees) => {
        const [here, there] = [planned(wood), planned(turned(wood, (degrees * Math.PI) / 180))];
        expect(there.placed).toBe(here.placed);
        expect(Math.abs(there.cost - here.cost)).toBeLessThanOrEqual(1e-4 * Math.max(1, here.placed) + 1e-9);
      }),
      SEEDED,
    );
  });
});

const OBSTACLES: readonly Obstacle[] = [
  { id: "fire", kind: "fire", shape: { type: "point", at: [10, 10] }, setbackM: 2 },
  {
    id: "path",
    kind: "path",
    shape: {
      type: "line",
      points: [
        [0, 5],
        [20, 6],
      ],
    },
    setbackM: 1,
  },
];

/** One more tree so far east of the easternmost. */
function withTree(wood: Camp, offM: number): Camp {
  const { ground } = wood;
  const [last] = [...(ground?.trees ?? [])].sort((a, b) => b.xM - a.xM);
  if (ground === undefined || last === undefined) return wood;
  const more = {
    ...last,
    id: "more",
    tag: "more",
    xM: last.xM + offM,
    condition: "healthy" as const,
    dbhM: 0.3,
  };
  return { ...wood, ground: { ...ground, trees: [...ground.trees, more] } };
}

/** Everything turned about the origin, clockwise, the slope with it. */
function turned(wood: Camp, by: number): Camp {
  const { ground } = wood;
  if (ground?.slope === undefined) return wood;
  const [sin, cos] = [Math.sin(by), Math.cos(by)];
  return {
    ...wood,
    ground: {
      ...ground,
      trees: ground.trees.map((tree): Tree => {
        return { ...tree, xM: cos * tree.xM + sin * tree.yM, yM: cos * tree.yM - sin * tree.xM };
      }),
      slope: { ...ground.slope, downhillRad: ground.slope.downhillRad + by },
    },
  };
}

function plus(rule: HouseRule, by: number): HouseRule {
  return { ...rule, value: rule.value + by };
}

/** East becomes west, on the map and down the slope. */
function mirrored(wood: Camp): Camp {
  const { ground } = wood;
  if (ground?.slope === undefined) return wood;
  const { riseRatio, downhillRad } = ground.slope;
  return {
    ...wood,
    ground: {
      ...ground,
      trees: ground.trees.map((tree): Tree => ({ ...tree, xM: -tree.xM })),
      slope: { riseRatio, downhillRad: -downhillRad },
    },
  };
}

function score({ placed, bound, cost, verdict, berths }: Plan) {
  return {
    placed,
    bound,
    cost: Math.round(cost * 1e4),
    verdict,
    looks: berths.filter((one) => one.verdict === "clear").length,
  };
}
