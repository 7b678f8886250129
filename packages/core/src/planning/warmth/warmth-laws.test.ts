import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ICE_K } from "../../heat/heat-units.ts";
import { worstVerdict } from "../../outcome/finding.ts";
import type { Plan } from "../../plan/plan.ts";
import type { BalanceWarmth, Enough } from "../../plan/warmth-types.ts";
import { at, camp, hammock, sleeper, webbing } from "../testing/camp.fixture.ts";
import { coolNight, overLayer, underLayer } from "../testing/layers.fixture.ts";
import { planned } from "../testing/planned.fixture.ts";
import { berthWarmth } from "./berth-warmth.ts";
import { nightAirs } from "./night-airs.ts";

const GROWN = sleeper("grown", { ageYears: 40, leads: true });
const CHILD = sleeper("child", { ageYears: 12, massKg: 45, statureM: 1.5 });
const RANK: Readonly<Record<Enough, number>> = { "not-enough": 0, borderline: 1, enough: 2 };

/** A quilt and an underblanket, [m²K/W]. */
const insulation = fc.double({ min: 0.2, max: 2, noNaN: true });
const lowC = fc.integer({ min: -10, max: 14 });

function layers(underR: number, overR: number) {
  return {
    under: underLayer("u", { count: 2, insulationM2KPerW: underR }),
    over: overLayer("o", { count: 2, insulationM2KPerW: overR }),
  };
}

/** A person, or two, or nobody, all in the same kit. */
function planOf(people: readonly (typeof GROWN)[], underR: number, overR: number, low: number): Plan {
  const { under, over } = layers(underR, overR);
  return planned(
    camp()
      .trees(at(0, 0), at(4.2, 0), at(0, 9), at(4.2, 9))
      .sleepers(...people)
      .kit(hammock("h", { count: 2 }), webbing("w", { count: 2 }), under, over)
      .night(coolNight({ lowK: ICE_K + low }))
      .build(),
  );
}

describe("the laws of warmth", () => {
  it("more insulation in either half never says worse of a half, a berth or the plan", () => {
    const people = fc.constantFrom([GROWN], [CHILD], [GROWN, CHILD]);
    const more = fc.double({ min: 0, max: 0.6, noNaN: true });
    fc.assert(
      fc.property(people, insulation, insulation, more, more, lowC, (who, under, over, a, b, low) => {
        const before = planOf(who, under, over, low);
        const after = planOf(who, under + a, over + b, low);
        expect(worstVerdict([before.verdict, after.verdict])).toBe(before.verdict);
        expect(after.placed).toBe(before.placed);
        for (const berth of before.berths) {
          const then = after.berths.find((one) => one.sleeper === berth.sleeper);
          if (then?.warmth === undefined || berth.warmth === undefined) throw new Error("a berth has warmth");
          expect(worstVerdict([berth.verdict, then.verdict])).toBe(berth.verdict);
          for (const half of ["under", "over"] as const) {
            expect(RANK[then.warmth[half].enough]).toBeGreaterThanOrEqual(RANK[berth.warmth[half].enough]);
          }
        }
      }),
      { seed: 1, numRuns: 25 },
    );
  });

  it("the half that lets out more does so in every hour, and where it alone is short of the need it is the weaker", () => {
    let [below, above] = [0, 0];
    fc.assert(
      fc.property(insulation, insulation, lowC, (underR, overR, low) => {
        const airs = nightAirs(camp().build(), coolNight({ lowK: ICE_K + low }));
        const { warmth } = berthWarmth(GROWN, layers(underR, overR), airs, {});
        if (warmth.by !== "balance") throw new Error("a grown person has a balance");
        const { under, over } = coldestOf(warmth);
        if (Math.abs(under.haveM2KPerW - over.haveM2KPerW) < NEAR_M2K_PER_W) return;
        const less = under.haveM2KPerW < over.haveM2KPerW ? "under" : "over";
        for (const hour of warmth.hours) {
          expect(hour.under.lossWM2 > hour.over.lossWM2 ? "under" : "over").toBe(less);
        }
        const [thin, thick] = less === "under" ? [under, over] : [over, under];
        if (thin.haveM2KPerW >= thin.needM2KPerW || thick.haveM2KPerW < 1.2 * thick.needM2KPerW) return;
        expect(warmth.weaker).toBe(less);
        if (less === "under") below += 1;
        else above += 1;
      }),
      { seed: 1, numRuns: 400 },
    );
    expect(Math.min(below, above)).toBeGreaterThan(10);
  });

  it("a camp of nobody has no warmth to tell, and one of one is judged as that person is", () => {
    expect(planOf([], 1, 1, 5).berths).toEqual([]);
    const [alone] = planOf([GROWN], 1, 1, 5).berths;
    const [beside] = planOf([GROWN, CHILD], 1, 1, 5).berths.filter((berth) => berth.sleeper === "grown");
    expect(alone?.warmth).toBeDefined();
    expect(alone?.warmth).toEqual(beside?.warmth);
  });
});

/** Halves that are nearer than that may change places with the hour: air rises more slowly where it is warmer. */
const NEAR_M2K_PER_W = 0.05;

function coldestOf({ hours }: BalanceWarmth) {
  const hour = hours.find(({ coldest }) => coldest);
  if (hour === undefined) throw new Error("one hour is the coldest");
  return hour;
}
