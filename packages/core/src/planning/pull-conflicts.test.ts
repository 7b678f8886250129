import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Camp } from "../plan/camp.ts";
import type { HouseRules } from "../plan/house-rules.ts";
import type { Plan } from "../plan/plan.ts";
import type { Tree } from "../site/tree.ts";
import { hang } from "../statics/hang.ts";
import { prepareCamp } from "./prepare-camp.ts";
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

  it("lets three that balance hang where two of them may", () => {
    const turns = [0, 120, 240].map((turn) =>
      at(4 * Math.sin((turn * Math.PI) / 180), 4 * Math.cos((turn * Math.PI) / 180)),
    );
    const placed = (share: number): number =>
      planned(wood([at(0, 0), ...turns], { ...capped(share), hammocksPerTree: house(3) }, 3)).placed;
    expect([0.99, 1.01].map(placed)).toEqual([0, 3]);
  });

  it("keeps three from a tree that bears each two of them", () => {
    const fan = [-40, 0, 40].map((turn) =>
      at(4 * Math.sin((turn * Math.PI) / 180), 4 * Math.cos((turn * Math.PI) / 180)),
    );
    const placed = (share: number): number =>
      planned(wood([at(0, 0), ...fan], { ...capped(share), hammocksPerTree: house(3) }, 3)).placed;
    // Two 40° apart pull 2 cos 20° = 1.88 of one, two 80° apart 1.53, all three 1 + 2 cos 40° = 2.53.
    expect([1.52, 1.54, 1.89, 2.52, 2.54].map(placed)).toEqual([1, 2, 2, 2, 3]);
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

  it("three at a tree: never more than trying every layout finds, and nearly always as many", () => {
    let [same, binding] = [0, 0];
    fc.assert(
      fc.property(STAR, fc.integer({ min: 600, max: 1600 }), (from, mostN) => {
        const found = planned(capping(from, 3, mostN)).placed;
        const best = mostByTrying(capping(from, 3, mostN), mostN);
        expect(found).toBeLessThanOrEqual(best);
        same += found === best ? 1 : 0;
        binding += best < mostByTrying(capping(from, 3, mostN), Infinity) ? 1 : 0;
      }),
      { seed: 3, numRuns: 40 },
    );
    expect(binding).toBeGreaterThan(10);
    expect(same).toBeGreaterThanOrEqual(38);
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

/** How many of a camp of people all alike could be placed, by every set of places and every pull added up. */
function mostByTrying(from: Camp, mostN: number): number {
  const { ground, desk, allowed } = prepareCamp({
    ...from,
    rules: { ...from.rules, treePullMaxN: house(Infinity) },
  });
  const excluded = new Set(ground.conflicts.map(([a, b]) => `${a} ${b}`));
  const ends = ground.places.map(({ first, second, bearingRad = 0 }, place) => {
    const [one, other] = desk.pullsAt(0, place) ?? [];
    const [eastN, northN] = [Math.sin(bearingRad), Math.cos(bearingRad)];
    const [p, q] = [one?.sidewaysN ?? Infinity, other?.sidewaysN ?? Infinity];
    return [
      { tree: first, east: p * eastN, north: p * northN },
      { tree: second, east: -q * eastN, north: -q * northN },
    ];
  });
  const keeps = (chosen: readonly number[]): boolean =>
    [...ground.anchors.keys()].every((tree) => {
      const there = chosen.flatMap((place) => (ends[place] ?? []).filter((end) => end.tree === tree));
      const sums = there.reduce(
        (all, { east, north }) => [...all, ...all.map((sum) => ({ e: sum.e + east, n: sum.n + north }))],
        [{ e: 0, n: 0 }],
      );
      return there.length <= 3 && sums.every(({ e, n }) => Math.hypot(e, n) <= mostN);
    });
  const grow = (chosen: readonly number[], next: number): number => {
    if (chosen.length === from.sleepers.length) return chosen.length;
    let most = chosen.length;
    for (let place = next; place < ground.places.length; place++) {
      if (allowed[0]?.[place] !== 1 || chosen.some((other) => excluded.has(`${other} ${place}`))) continue;
      if (keeps([...chosen, place])) most = Math.max(most, grow([...chosen, place], place + 1));
    }
    return most;
  };
  return grow([], 0);
}

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
