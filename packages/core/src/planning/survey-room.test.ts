import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Camp, Ground } from "../plan/camp.ts";
import { drawFrom } from "../geometry/draw.fixture.ts";
import type { Obstacle } from "../site/obstacle.ts";
import { explainPlan } from "./explain/explain-plan.ts";
import { repairPlan } from "./repair/repair-plan.ts";
import { at, camp, sleeper } from "./testing/camp.fixture.ts";
import { planned, troubles } from "./testing/planned.fixture.ts";

/** Rows of two trees, 20 m apart, with the given spans. */
function rows(
  spans: readonly number[],
  ground: Partial<Ground>,
  room?: boolean,
  people = spans.length,
): Camp {
  const trees = spans.flatMap((spanM, row) => [at(0, 20 * row), at(spanM, 20 * row)]);
  return camp()
    .trees(...trees)
    .ground(ground)
    .rules("usual", room === undefined ? {} : { surveyRoom: { value: room, source: "test" } })
    .sleepers(people)
    .build();
}

function fireAt(yM: number): Obstacle {
  return { id: "fire", kind: "fire", shape: { type: "point", at: [2, yM] }, setbackM: 4 };
}

const STEPPED = { source: "stepped", positionErrorM: 0.06 } as const;

describe("a layout that keeps room for the survey", () => {
  it("gives up the berth whose span may really be out of range, and tells what that costs", () => {
    const plan = planned(rows([4, 4.4, 4.9], STEPPED, true));
    expect(plan.placed).toBe(2);
    expect(plan.robust).toEqual({ errorM: 0.06, placed: 2, most: 3, asSurveyed: 3 });
    const told = explainPlan(plan, rows([4, 4.4, 4.9], STEPPED, true));
    expect(told.unplaced[0]?.pairs?.map(({ trees }) => trees.join(" "))).toContain("T05 T06");
  });

  it("keeps clear of a fire by the error too, so that no berth need be measured again", () => {
    const near = { source: "taped", positionErrorM: 0.3 } as const;
    const both = { ...near, obstacles: [fireAt(-5.55), { ...fireAt(25.55), id: "fire2" }] };
    const ordinary = planned(rows([4, 4], both, false, 1));
    expect(troubles(ordinary.berths[0]?.findings ?? [])).toContain("site.setback");
    expect(planned(rows([4, 4], both, true, 1)).placed).toBe(0);
    const oneFree = { ...near, obstacles: [fireAt(-5.55)] };
    const roomy = planned(rows([4, 4], oneFree, true, 1));
    expect(roomy.berths.map(({ headTree, footTree }) => [headTree, footTree].sort())).toEqual([
      ["T03", "T04"],
    ]);
    expect(troubles(roomy.berths[0]?.findings ?? [])).not.toContain("site.setback");
  });

  it("says why a pin has no room, by the span less that room", () => {
    const wood = { ...rows([4.9], STEPPED, true), pins: [{ sleeper: "s1", trees: ["T01", "T02"] as const }] };
    const [refused] = planned(wood).pinsRefused ?? [];
    expect(refused?.because).toMatchObject([{ rule: "span.most", demand: 4.9 }]);
    expect(refused?.because[0]?.limit).toBeCloseTo(5 - 2 * Math.SQRT2 * 0.06, 9);
  });

  it("is left alone where the survey was taped as well as usual", () => {
    const plan = planned(rows([4, 4.4, 4.99], {}, true));
    expect(plan.placed).toBe(3);
    expect(plan.robust).toBeUndefined();
  });
});

describe("where the house does not say whether room is kept", () => {
  it("keeps it where steps or GPS give positions and nobody loses a berth", () => {
    const plan = planned(rows([4, 4.4, 4.9], STEPPED, undefined, 2));
    expect(plan).toMatchObject({ placed: 2, robust: { placed: 2, asSurveyed: 2 } });
    const trees = plan.berths.flatMap(({ headTree, footTree }) => [headTree, footTree]);
    expect(trees).not.toContain("T06");
  });

  it("does not where somebody would lose one, a pin would be lost, the house says no, or a tape was used", () => {
    const kept = (wood: Camp) => planned(wood).robust?.asSurveyed !== undefined;
    expect(kept(rows([4, 4.4, 4.9], STEPPED))).toBe(false);
    const pinned = rows([4, 4.4, 4.9], STEPPED, undefined, 2);
    expect(kept({ ...pinned, pins: [{ sleeper: "s1", trees: ["T05", "T06"] }] })).toBe(false);
    expect(kept(rows([4, 4.4, 4.9], STEPPED, false, 2))).toBe(false);
    expect(kept(rows([4, 4.4, 4.9], { source: "taped", positionErrorM: 0.2 }, undefined, 1))).toBe(false);
  });

  it("mends a plan as it was made: with room, or without", () => {
    const wood = rows([4, 4.4, 4.9], STEPPED, undefined, 2);
    const roomy = planned(wood);
    const ordinary = planned(rows([4, 4.4, 4.9], STEPPED, false, 2));
    for (const [before, kept] of [
      [roomy, true],
      [ordinary, false],
    ] as const) {
      const mended = repairPlan(before, wood, { engine: "test" });
      if (!mended.ok) throw new Error("not mended");
      expect(mended.value.moved).toEqual([]);
      expect(mended.value.repaired.robust?.asSurveyed !== undefined).toBe(kept);
    }
  });
});

describe("laws of the room", () => {
  it("more error never places more, nor more than without room", () => {
    fc.assert(
      fc.property(fc.noBias(fc.nat({ max: 1_000_000 })), (start) => {
        const draw = drawFrom(start);
        const trees = Array.from({ length: 24 }, () => at(draw(0, 2400) / 100, draw(0, 2400) / 100));
        const count = (positionErrorM: number, value: boolean): number =>
          planned(
            camp()
              .trees(...trees)
              .ground({ source: "gps", positionErrorM, obstacles: [fireAt(12)] })
              .rules("usual", { surveyRoom: { value, source: "test" } })
              .sleepers(...["a", "b", "c", "d"].map((id) => sleeper(id)))
              .build(),
          ).placed;
        const counts = [count(0.02, false), ...[0.02, 0.08, 0.2, 0.5].map((error) => count(error, true))];
        counts.forEach((placed, index) => expect(placed).toBeLessThanOrEqual(counts[index - 1] ?? Infinity));
      }),
      { seed: 1, numRuns: 8 },
    );
  });
});
