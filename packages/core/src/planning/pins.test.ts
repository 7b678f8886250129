import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Camp, Pin } from "../plan/camp.ts";
import type { Plan } from "../plan/plan.ts";
import { countPlaced } from "./explain/count-placed.ts";
import { prepareCamp } from "./prepare-camp.ts";
import { at, camp, hammock, pair, sleeper, webbing } from "./testing/camp.fixture.ts";
import { planned } from "./testing/planned.fixture.ts";
import { WOOD } from "./testing/wood.fixture.ts";

/** Two pairs far from each other; the first is nearer to the ideal span. */
const TWO_PAIRS = [at(0, 0), at(4, 0), at(0, 12), at(4.8, 12)] as const;

describe("a pin", () => {
  it("keeps a sleeper at a pair that the search would not have chosen", () => {
    const one = camp()
      .trees(...TWO_PAIRS)
      .sleepers(1)
      .build();
    expect(pairsOf(planned(one))).toEqual({ s1: "T01 T02" });
    const plan = planned({ ...one, pins: [{ sleeper: "s1", trees: ["T04", "T03"] }] });
    expect(pairsOf(plan)).toEqual({ s1: "T03 T04" });
    expect(plan).toMatchObject({ placed: 1, bound: 1, gap: 0 });
    expect(plan.cost).toBeCloseTo(0.8, 9);
    expect(plan.pinsRefused).toBeUndefined();
  });

  it("puts the head where it says, also on the higher ground", () => {
    const slope = camp()
      .trees(at(0, 0), at(4, 0))
      .ground({ slope: { riseRatio: 0.05, downhillRad: Math.PI / 2 } })
      .sleepers(1)
      .build();
    expect(planned(slope).berths[0]?.headTree).toBe("T02");
    const plan = planned({ ...slope, pins: [{ sleeper: "s1", trees: ["T01", "T02"], head: "T01" }] });
    expect(plan.berths[0]).toMatchObject({ headTree: "T01", footTree: "T02" });
  });

  it("knows trees by their tags and stated pairs by their ids", () => {
    const tagged = camp()
      .trees(at(0, 0, { tag: "red" }), at(4, 0, { tag: "blue" }))
      .sleepers(1)
      .build();
    expect(pairsOf(planned({ ...tagged, pins: [{ sleeper: "s1", trees: ["blue", "red"] }] }))).toEqual({
      s1: "T01 T02",
    });
    const stated = camp()
      .pairs(pair("near", ["A", "B"], { spanM: 4 }), pair("far", ["C", "D"], { spanM: 4.8 }))
      .sleepers(1)
      .build();
    const plan = planned({ ...stated, pins: [{ sleeper: "s1", pair: "far" }] });
    expect(plan.berths[0]).toMatchObject({ pair: "far" });
  });

  it("leaves the others what is left: no place across it, and no hammock too many on its trees", () => {
    const row = camp().trees(at(0, 0), at(4, 0), at(8, 0)).sleepers(2).build();
    const plan = planned({ ...row, pins: [{ sleeper: "s2", trees: ["T02", "T03"] }] });
    expect(pairsOf(plan)).toEqual({ s2: "T02 T03" });
    expect(plan).toMatchObject({ placed: 1, bound: 1 });
    expect(plan.unplaced[0]?.because[0]).toMatchObject({ rule: "layout.no-berth", about: ["all-taken"] });
  });
});

describe("a pin that is refused", () => {
  const refusal = (wood: Camp, ...pins: readonly Pin[]) => {
    const plan = planned({ ...wood, pins });
    return plan.pinsRefused?.map(({ sleeper: who, because }) => [who, ...because.map(({ rule }) => rule)]);
  };
  const two = (but: Parameters<typeof at>[2], spanM = 4) =>
    camp()
      .trees(at(0, 0), at(spanM, 0, but), at(0, 12), at(4, 12))
      .sleepers(2)
      .build();
  const pin: Pin = { sleeper: "s1", trees: ["T01", "T02"] };

  it("names every house rule in its way, and the sleeper gets another berth", () => {
    expect(refusal(two({}, 5.5), pin)).toEqual([["s1", "span.most"]]);
    expect(refusal(two({ dbhM: 0.15 }), pin)).toEqual([["s1", "tree.trunk-least"]]);
    expect(refusal(two({ condition: "doubtful", heightM: 3 }), pin)).toEqual([["s1", "tree.doubtful"]]);
    expect(refusal(two({ condition: "dead", heightM: 3 }), pin)).toEqual([["s1", "tree.dead"]]);
    expect(refusal(two({ use: false }), pin)).toEqual([["s1", "tree.not-allowed"]]);
    const barred = two({ species: "beech" });
    const rules = { ...barred.rules, speciesNot: { value: ["beech"], source: "test" } };
    expect(refusal({ ...barred, rules }, pin)).toEqual([["s1", "tree.not-allowed"]]);
    const plan = planned({ ...two({ use: false }), pins: [pin] });
    expect(plan.placed).toBe(1);
    expect(plan.findings).toMatchObject([
      { rule: "layout.no-berth" },
      { rule: "pin.refused", about: ["T01", "T02"] },
    ]);
  });

  it("names what stands in the strip", () => {
    const stem = camp().trees(at(0, 0), at(4, 0), at(2, 1)).sleepers(1).build();
    expect(refusal(stem, pin)).toEqual([["s1", "site.stem"]]);
    const path = camp()
      .trees(at(0, 0), at(4, 0))
      .obstacles({ id: "path", kind: "path", shape: { type: "point", at: [2, 3] }, setbackM: 2 })
      .sleepers(1)
      .build();
    expect(refusal(path, pin)).toEqual([["s1", "site.setback"]]);
  });

  it("says whose pin was there before: the same pair, a strip across, a tree that is full", () => {
    const other = (trees: readonly [string, string]): Pin => ({ sleeper: "s2", trees });
    expect(refusal(two({}), pin, other(["T02", "T01"]))).toEqual([["s2", "site.taken"]]);
    const row = camp().trees(at(0, 0), at(4, 0), at(8, 0)).sleepers(2).build();
    expect(refusal(row, pin, other(["T02", "T03"]))).toEqual([["s2", "site.capacity"]]);
    const cross = camp()
      .trees(at(0, 0), at(4, 0), at(2, -2), at(2, 2))
      .rules("usual", { spanMinM: { value: 3.9, source: "test" } })
      .sleepers(2)
      .build();
    expect(refusal(cross, pin, other(["T03", "T04"]))).toEqual([["s2", "site.in-the-way"]]);
  });

  it("tells the limit of a hang that is refused, and a part that is too weak", () => {
    const low = { ...two({}), sleepers: [sleeper("s1", { reachM: 0.6 })] };
    expect(refusal(low, pin)).toEqual([["s1", "strap.reach", "strap.reach"]]);
    const weak = { ...two({}), kit: [hammock("h", { maxUserKg: 70 }), webbing("w")] };
    const forced = { ...weak, sleepers: [sleeper("s1", { kit: ["h"] })] };
    expect(refusal(forced, pin)).toEqual([["s1", "part.user-weight"]]);
  });

  it("is refused without kit, and where nobody says how far apart the trees stand", () => {
    const bare = { ...two({}), kit: [hammock("h"), webbing("w")] };
    const light = { ...bare, sleepers: [sleeper("heavy", { massKg: 90 }), sleeper("s1")] };
    expect(refusal(light, pin)).toEqual([["s1", "layout.kit-short", "layout.kit-short"]]);
    expect(refusal(two({}), { sleeper: "s1", trees: ["X", "Y"] })).toEqual([["s1"]]);
  });
});

describe("laws of pins", () => {
  it("pinning the plan's own berths changes neither how many are placed nor the cost", () => {
    fc.assert(
      fc.property(WOOD, (wood) => {
        const plan = planned(wood);
        const pins = plan.berths.map(({ sleeper: who, headTree, footTree }): Pin => ({
          sleeper: who,
          trees: [headTree, footTree],
        }));
        const kept = planned({ ...wood, pins });
        expect(kept.pinsRefused).toBeUndefined();
        expect(pairsOf(kept)).toEqual(pairsOf(plan));
        expect([kept.placed, kept.cost]).toEqual([plan.placed, plan.cost]);
      }),
      { seed: 1, numRuns: 30 },
    );
  });

  it("one pin never gives more people a berth, and the count agrees with the plan", () => {
    let kept = 0;
    fc.assert(
      fc.property(WOOD, fc.nat(), (wood, at) => {
        const [who] = wood.sleepers;
        const places = prepareCamp(wood).ground.places;
        const place = places[at % Math.max(1, places.length)];
        if (who === undefined || place === undefined) return;
        const { anchors } = prepareCamp(wood).ground;
        const trees = [anchors[place.first]?.id ?? "", anchors[place.second]?.id ?? ""] as const;
        const pinned = { ...wood, pins: [{ sleeper: who.id, trees }] };
        const plan = planned(pinned);
        expect(plan.placed).toBeLessThanOrEqual(planned(wood).placed);
        expect(countPlaced(prepareCamp(pinned)).placed).toBe(plan.placed);
        if (plan.pinsRefused === undefined) {
          kept++;
          expect(pairsOf(plan)[who.id]).toBe([...trees].sort().join(" "));
        }
      }),
      { seed: 1, numRuns: 30 },
    );
    expect(kept).toBeGreaterThan(10);
  });
});

function pairsOf({ berths }: Plan): Record<string, string> {
  return Object.fromEntries(
    berths.map(({ sleeper: who, headTree, footTree }) => [who, [headTree, footTree].sort().join(" ")]),
  );
}
