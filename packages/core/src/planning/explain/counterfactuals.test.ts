import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Camp } from "../../plan/camp.ts";
import type { Counterfactual } from "../../plan/explanation.ts";
import type { HouseRule } from "../../plan/house-rules.ts";
import { at, camp, hammock, sleeper, webbing } from "../testing/camp.fixture.ts";
import { planned } from "../testing/planned.fixture.ts";
import { WOOD } from "../testing/wood.fixture.ts";
import { explainPlan } from "./explain-plan.ts";

const SEEDED = { seed: 1, numRuns: 25 };

/** Three trees in a row: two pairs that share the middle one. */
const ROW = [at(0, 0), at(4, 0), at(8, 0)] as const;

describe("what would change it", () => {
  it("says nothing where everybody has a berth", () => {
    const all = camp()
      .trees(...ROW)
      .sleepers(1)
      .build();
    expect(explained(all).counterfactuals).toBeUndefined();
  });

  it("finds that a second hammock on the middle tree gives one more a berth", () => {
    const two = camp()
      .trees(...ROW)
      .sleepers(2)
      .build();
    expect(told(two, "hammocks-per-tree")).toMatchObject({
      from: [1],
      to: [2],
      placed: 2,
      gained: 1,
      proven: true,
      advice: true,
    });
  });

  it("finds wider spans, and tells both ends of the window", () => {
    const near = camp().trees(at(0, 0), at(5.4, 0)).sleepers(1).build();
    expect(told(near, "span-window")).toMatchObject({ from: [3, 5], to: [2.5, 5.5], gained: 1 });
  });

  it("asks for kit alone where there is a berth for everybody who has any", () => {
    const short = camp()
      .trees(at(0, 0), at(4, 0), at(0, 9), at(4, 9))
      .sleepers(2)
      .kit(hammock("h"), webbing("w"))
      .build();
    expect(explained(short).counterfactuals).toMatchObject([
      { change: "kit-more", about: ["hammock", "suspension"], gained: 1, advice: true },
    ]);
  });

  it("gives a hammock that carries whoever had none", () => {
    const heavy = camp()
      .trees(at(0, 0), at(4, 0), at(0, 9), at(4, 9))
      .sleepers(sleeper("a", { massKg: 60 }), sleeper("b", { massKg: 130 }))
      .kit(hammock("h", { count: 2, maxUserKg: 100 }), webbing("w", { count: 2 }))
      .build();
    expect(told(heavy, "kit-more")).toMatchObject({ about: ["hammock"], gained: 1 });
  });

  it("tells the set-back that is in the way, and never advises to come nearer to a fire", () => {
    const beside = (kind: "path" | "fire") =>
      camp()
        .trees(at(0, 0), at(4, 0))
        .obstacles({ id: kind, kind, shape: { type: "point", at: [2, 3] }, setbackM: 2 })
        .sleepers(1)
        .build();
    expect(told(beside("path"), "setback")).toMatchObject({
      about: ["path"],
      from: [2],
      to: [1],
      advice: true,
    });
    expect(told(beside("fire"), "setback")).toMatchObject({ gained: 1, advice: false });
  });

  it("tells what the house bars: spokes at a tree, and species", () => {
    const spokes = camp()
      .trees(at(0, 0), at(4, 0), at(0, 4))
      .rules("usual", {
        hammocksPerTree: rule(2),
        noSpokes: { value: true, source: "test" },
        footprintHalfWidthM: rule(0.5),
      })
      .sleepers(2)
      .build();
    expect(told(spokes, "spokes")).toMatchObject({ gained: 1, advice: true });
    const beeches = camp()
      .trees(at(0, 0, { species: "beech" }), at(4, 0))
      .rules("usual", { speciesNot: { value: ["beech"], source: "test" } })
      .sleepers(1)
      .build();
    expect(told(beeches, "species")).toMatchObject({ about: ["beech"], gained: 1 });
  });

  it("tells as information what only an arborist may say", () => {
    const doubtful = camp()
      .trees(at(0, 0), at(4, 0, { condition: "doubtful", heightM: 3 }))
      .sleepers(1)
      .build();
    expect(told(doubtful, "doubtful-sound")).toMatchObject({ about: ["T02"], gained: 1, advice: false });
    const dead = camp()
      .trees(at(0, 0), at(4, 0), at(2, 6, { condition: "dead", heightM: 12 }))
      .sleepers(1)
      .build();
    expect(told(dead, "dead-gone")).toMatchObject({ about: ["T03"], gained: 1, advice: false });
    const thin = camp()
      .trees(at(0, 0), at(4, 0, { dbhM: 0.16 }))
      .sleepers(1)
      .build();
    expect(told(thin, "trunk-least")).toMatchObject({ from: [0.2], to: [0.15], gained: 1, advice: false });
    const limb = camp()
      .trees(at(0, 0), at(4, 0))
      .obstacles({ id: "limb", kind: "overhead", shape: { type: "point", at: [2, 1] }, setbackM: 2 })
      .sleepers(1)
      .build();
    expect(told(limb, "limb-down")).toMatchObject({ about: ["limb"], gained: 1, advice: false });
  });

  it("finds that a taller helper gives a berth where every strap is out of reach", () => {
    const short = sleeper("a", { reachM: 1.4 });
    const found = explained(camp().trees(at(0, 0), at(4.5, 0)).sleepers(short).build());
    const reach = found.counterfactuals?.find(({ change }) => change === "reach");
    expect(found.unplaced[0]?.because.map(({ rule }) => rule)).toContain("strap.reach");
    expect(reach).toMatchObject({ from: [1.4], to: [1.6], gained: 1, advice: true });
  });
});

describe("laws of what would change it", () => {
  it("counts as planning the changed camp does, and never fewer than before", () => {
    let gaining = 0;
    fc.assert(
      fc.property(WOOD, (wood) => {
        const plan = explained(wood);
        for (const { change, placed, gained } of plan.counterfactuals ?? []) {
          const changed = CHANGED[change]?.(wood);
          expect(gained).toBe(placed - plan.placed);
          expect(gained).toBeGreaterThanOrEqual(0);
          if (changed !== undefined) expect(planned(changed).placed, change).toBe(placed);
          gaining += gained > 0 ? 1 : 0;
        }
      }),
      SEEDED,
    );
    expect(gaining).toBeGreaterThan(5);
  });

  it("puts those that gain most first, advice before information", () => {
    fc.assert(
      fc.property(WOOD, (wood) => {
        const worth = (explained(wood).counterfactuals ?? []).map(
          ({ gained, advice }) => 2 * gained + Number(advice),
        );
        expect(worth).toEqual([...worth].sort((a, b) => b - a));
      }),
      SEEDED,
    );
  });
});

function explained(wood: Camp) {
  return explainPlan(planned(wood), wood, { all: true });
}

function told(wood: Camp, change: Counterfactual["change"]) {
  return explained(wood).counterfactuals?.find((one) => one.change === change);
}

/** Some of the changes again, by hand. */
const CHANGED: Readonly<Partial<Record<Counterfactual["change"], (wood: Camp) => Camp>>> = {
  "hammocks-per-tree": (wood) => ruled(wood, { hammocksPerTree: rule(2) }),
  "strip-width": (wood) => ruled(wood, { footprintHalfWidthM: rule(1) }),
  "span-window": (wood) => ruled(wood, { spanMinM: rule(2.5), spanMaxM: rule(5.5) }),
  "trunk-least": (wood) => ruled(wood, { trunkMinM: rule(0.15) }),
  "doubtful-sound": (wood) => ({
    ...wood,
    ...(wood.ground === undefined
      ? {}
      : {
          ground: {
            ...wood.ground,
            trees: wood.ground.trees.map((tree) =>
              tree.condition === "doubtful" ? { ...tree, condition: "not-looked-at" as const } : tree,
            ),
          },
        }),
  }),
};

function ruled(wood: Camp, but: Partial<Camp["rules"]>): Camp {
  return { ...wood, rules: { ...wood.rules, ...but } };
}

function rule(value: number): HouseRule {
  return { value, source: "usual" };
}
