import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Camp } from "../plan/camp.ts";
import type { HouseRules } from "../plan/house-rules.ts";
import type { Plan } from "../plan/plan.ts";
import type { Tree } from "../site/tree.ts";
import { hang } from "../statics/hang.ts";
import { at, camp, pair } from "./testing/camp.fixture.ts";
import { planned } from "./testing/planned.fixture.ts";

const house = (value: number) => ({ value, source: "house" });
/** Two hammocks a tree and narrow strips, so that the pull alone decides. */
const TWO: Partial<HouseRules> = { hammocksPerTree: house(2), footprintHalfWidthM: house(0.3) };

function wood(trees: readonly Partial<Tree>[], rules: Partial<HouseRules>, people = 2): Camp {
  return camp()
    .trees(...trees)
    .rules("usual", rules)
    .sleepers(people)
    .build();
}

/** The sideways pull of one usual hang between trees 4 m apart [N]. */
function onePullN(): number {
  const [berth] = planned(wood([at(0, 0), at(4, 0)], {}, 1)).berths;
  if (berth?.request === undefined) throw new Error("no berth");
  const again = hang(berth.request);
  if (!again.ok) throw new Error("no hang");
  return again.value.head.sidewaysN;
}

describe("pull at a tree", () => {
  const corner = [at(4, 0), at(0, 0), at(0, 4)];
  const line = [at(-4, 0), at(0, 0), at(4, 0)];
  const pullN = onePullN();
  const capped = (share: number): Partial<HouseRules> => ({ ...TWO, treePullMaxN: house(share * pullN) });

  it("lets nobody hang where one alone pulls harder than the house allows, and says so", () => {
    const plan = planned(wood([at(0, 0), at(4, 0)], { treePullMaxN: house(0.9 * pullN) }, 1));
    expect(plan.placed).toBe(0);
    expect(plan.unplaced[0]?.because[1]).toMatchObject({ about: ["T01", "T02", "tree-pull"] });
    expect(plan.supply.blockedBy.hang).toBe(1);
    expect(planned(wood([at(0, 0), at(4, 0)], { treePullMaxN: house(1.01 * pullN) }, 1)).placed).toBe(1);
  });

  it("lets two hang from one tree at a right angle only where it bears √2 of one", () => {
    expect(planned(wood(corner, TWO)).placed).toBe(2);
    expect(planned(wood(corner, capped(1.43))).placed).toBe(2);
    expect(planned(wood(corner, capped(1.4))).placed).toBe(1);
  });

  it("lets two that pull against each other hang where one may", () => {
    const plan = planned(wood(line, capped(1.01)));
    expect(plan.placed).toBe(2);
    const [middle] = plan.berths.flatMap(({ findings }) =>
      findings.filter(({ rule, subject }) => rule === "tree.pull" && subject === "tree/T02"),
    );
    // While one of the two is empty the other pulls alone.
    expect(middle?.demand).toBeCloseTo(pullN, 3);
    expect(middle).toMatchObject({ source: "house-rules", unit: "N", verdict: "look-again" });
  });

  it("adds up what it does not know the bearing of", () => {
    const stated = (share: number): number =>
      planned(
        camp()
          .pairs(pair("p", ["A", "B"], { spanM: 4 }), pair("q", ["B", "C"], { spanM: 4 }))
          .rules("usual", capped(share))
          .sleepers(2)
          .build(),
      ).placed;
    expect([stated(1.99), stated(2.01)]).toEqual([1, 2]);
  });

  it("keeps two from a trunk that bears one of them, by its own mechanics", () => {
    const thin = { ...TWO, trunkMinM: house(0.05) };
    const placed = (dbhM: number): number =>
      planned(wood([at(4, 0), at(0, 0, { dbhM, species: "Fagus sylvatica" }), at(0, 4)], thin)).placed;
    const counts = [0.06, 0.076, 0.12].map(placed);
    expect(counts).toEqual([0, 1, 2]);
  });
});

describe("laws of the pull at a tree", () => {
  /** One tree with others all round it, for four people. */
  const STAR = fc
    .array(fc.record({ turn: fc.nat({ max: 359 }), off: fc.integer({ min: 31, max: 49 }) }), {
      minLength: 3,
      maxLength: 7,
    })
    .map((others) =>
      camp()
        .trees(
          at(0, 0),
          ...others.map(({ turn, off }) =>
            at((off / 10) * Math.cos((turn * Math.PI) / 180), (off / 10) * Math.sin((turn * Math.PI) / 180)),
          ),
        )
        .sleepers(4)
        .build(),
    );
  const CAPPED = fc.tuple(STAR, fc.integer({ min: 2, max: 4 }), fc.integer({ min: 600, max: 2400 }));

  it("no berth of a plan pulls a tree harder than the house or its trunk allows, three and four at a tree too", () => {
    let [two, three] = [0, 0];
    fc.assert(
      fc.property(CAPPED, ([from, hammocks, mostN]) => {
        const plan = planned(capping(from, hammocks, mostN));
        const most = Math.max(0, ...loadsOf(plan).values());
        two += most === 2 ? 1 : 0;
        three += most > 2 ? 1 : 0;
        const bad = plan.berths.flatMap(({ findings }) =>
          findings.filter(
            ({ rule, verdict }) =>
              (rule === "tree.pull" || rule === "tree.bending") && verdict === "do-not-hang",
          ),
        );
        expect(bad).toEqual([]);
      }),
      { seed: 1, numRuns: 100 },
    );
    expect(two).toBeGreaterThan(20);
    expect(three).toBeGreaterThan(5);
  });

  it("a higher cap never places fewer", () => {
    let gained = 0;
    fc.assert(
      fc.property(CAPPED, ([from, hammocks, mostN]) => {
        const [low, high] = [mostN, 1.5 * mostN].map((most) => planned(capping(from, hammocks, most)).placed);
        expect(high).toBeGreaterThanOrEqual(low ?? Infinity);
        gained += (high ?? 0) > (low ?? 0) ? 1 : 0;
      }),
      { seed: 2, numRuns: 30 },
    );
    expect(gained).toBeGreaterThan(3);
  });
});

function capping(from: Camp, hammocks: number, mostN: number): Camp {
  const rules = { ...from.rules, hammocksPerTree: house(hammocks), footprintHalfWidthM: house(0.2) };
  return { ...from, rules: { ...rules, treePullMaxN: house(mostN) } };
}

function loadsOf({ berths }: Plan): Map<string, number> {
  const loads = new Map<string, number>();
  for (const { headTree, footTree } of berths) {
    for (const id of [headTree, footTree]) loads.set(id, (loads.get(id) ?? 0) + 1);
  }
  return loads;
}
