import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { campPlaces } from "./camp-places.ts";
import { firstPairs, type FirstPairs } from "./first-pairs.ts";
import { NO_GROUND } from "./no-ground.ts";
import { planCamp } from "./plan-camp.ts";
import { at, camp } from "./testing/camp.fixture.ts";
import { WOOD } from "./testing/wood.fixture.ts";

describe("the first pairs", () => {
  it("are used together by no tree beyond its hammocks, and no two exclude each other", () => {
    let pairs = 0;
    fc.assert(
      fc.property(WOOD, (wood) => {
        const ground = campPlaces(wood.ground ?? NO_GROUND, wood.rules);
        const found = firstPairs(wood, ground);
        expect(found.asked).toBe(wood.sleepers.length);
        expect(found.pairs.length).toBeLessThanOrEqual(found.asked);
        const idOf = (anchor: number) => ground.anchors[anchor]?.id ?? "";
        const chosen = found.pairs.map(([one, other]) =>
          ground.places.findIndex(({ first, second }) => idOf(first) === one && idOf(second) === other),
        );
        expect(chosen).not.toContain(-1);
        const load = new Map<string, number>();
        for (const id of found.pairs.flat()) load.set(id, (load.get(id) ?? 0) + 1);
        for (const count of load.values())
          expect(count).toBeLessThanOrEqual(wood.rules.hammocksPerTree.value);
        for (const [a, b] of ground.conflicts) expect(chosen.includes(a) && chosen.includes(b)).toBe(false);
        pairs += found.pairs.length;
      }),
      { seed: 1, numRuns: 40 },
    );
    expect(pairs).toBeGreaterThan(40);
  });

  it("are told before any plan, and again with each layout on the way", () => {
    const trees = Array.from({ length: 9 }, (_, index) => at(4 * (index % 3), 4.2 * Math.floor(index / 3)));
    const wood = camp()
      .trees(...trees)
      .sleepers(3)
      .build();
    const told: (FirstPairs | string)[] = [];
    const plan = planCamp(wood, {
      engine: "0",
      onPairs: (found) => told.push(found),
      onIncumbent: () => told.push("plan"),
    });
    const [first, ...others] = told;
    expect(first).toMatchObject({ asked: 3 });
    expect(others).toContain("plan");
    const last = told.filter((one) => typeof one !== "string").at(-1);
    expect(plan.ok && plan.value.placed).toBe(last?.pairs.length);
  });
});
