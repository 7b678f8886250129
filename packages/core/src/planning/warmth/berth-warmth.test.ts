import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ICE_K } from "../../heat/heat-units.ts";
import type { Sleeper } from "../../plan/camp.ts";
import type { OverInsulation, UnderInsulation } from "../../plan/kit.ts";
import { camp, sleeper } from "../testing/camp.fixture.ts";
import { coolNight, overLayer, underLayer } from "../testing/layers.fixture.ts";
import { berthWarmth } from "./berth-warmth.ts";
import type { WarmKit } from "./kit-halves.ts";
import { nightAirs } from "./night-airs.ts";
import { warmthFindings } from "./warmth-findings.ts";

const NIGHT = coolNight({ windMS: 3, gustMS: 6 });
const CAMP = camp().build();
const GROWN = sleeper("s", { ageYears: 40, sex: "m", massKg: 80 });
const CHILD = sleeper("c", { ageYears: 13, sex: "f", massKg: 45, statureM: 1.55 });

function under(change: Partial<UnderInsulation> = {}): UnderInsulation {
  return underLayer("u", { limitK: ICE_K - 12, ...change });
}

function over(change: Partial<OverInsulation> = {}): OverInsulation {
  return overLayer("o", { comfortK: ICE_K - 8, ...change });
}

function judged(who: Sleeper, kit: WarmKit, night = NIGHT, care = {}) {
  return berthWarmth(who, kit, nightAirs(CAMP, night), care);
}

const WARM: WarmKit = { under: under(), over: over() };

describe("the warmth of a berth", () => {
  it("tells a grown person's halves, temperatures with a band, flows and hours", () => {
    const { warmth, farShort } = judged(GROWN, WARM);
    expect(farShort).toBe(false);
    if (warmth.by !== "balance") throw new Error("a grown person has a balance");
    expect(warmth.under).toMatchObject({ enough: "enough", item: "u" });
    expect(warmth.over).toMatchObject({ enough: "enough", item: "o" });
    expect(warmth.under.marginK).toBeGreaterThan(2);
    expect(warmth.helps).toBeUndefined();
    expect(warmth.limitK).toBeLessThan(warmth.comfortK);
    expect(warmth.bandK).toBeGreaterThanOrEqual(4);
    expect(warmth.hours.length).toBe(16);
    expect(warmth.hours.filter(({ coldest }) => coldest).map(({ airK }) => airK)).toEqual([NIGHT.lowK]);
    const least = Math.min(...warmth.hours.map(({ airK }) => airK));
    expect(least).toBe(NIGHT.lowK);
    for (const hour of warmth.hours) {
      expect(hour.under.haveM2KPerW).toBeCloseTo((ICE_K + 33 - hour.airK) / hour.under.lossWM2, 9);
      expect(hour.over.needM2KPerW).toBe(hour.under.needM2KPerW);
    }
    expect(warmth.notes).toContain("hours-from-low");
  });

  it("names the weaker half and the change that raises it most", () => {
    const thin = judged(GROWN, { ...WARM, under: under({ gapRatio: 0.5 }) }).warmth;
    expect(thin.under.enough).not.toBe("enough");
    expect(thin.weaker).toBe("under");
    expect(thin.helps?.change).toBe("close-gap");
    const none = judged(GROWN, { over: over() }).warmth;
    expect(none.under.enough).toBe("not-enough");
    expect(none.under.item).toBeUndefined();
    expect(none.helps?.change).toBe("add-underblanket");
    const quilt = { ...WARM, over: over({ form: "quilt", insulationM2KPerW: 2 }), hat: false };
    const bareHead = judged(GROWN, quilt, { ...NIGHT, lowK: ICE_K - 3 }).warmth;
    expect(bareHead.helps?.change).toBe("wear-hat");
  });

  it("gains in the weaker half what it says", () => {
    const gap = { ...WARM, under: under({ gapRatio: 0.5 }) };
    const before = judged(GROWN, gap);
    const after = judged(GROWN, WARM);
    const gain = after.margins.under.marginK - before.margins.under.marginK;
    expect(before.warmth.helps?.gainK).toBeCloseTo(gain, 9);
  });

  it("holds no temperature at all of anybody under 16", () => {
    const { warmth } = judged(CHILD, { under: under({ limitK: ICE_K + 5 }), over: over() }, NIGHT, {
      spare: "x",
    });
    expect(warmth.by).toBe("youth-rule");
    expect(Object.keys(warmth).filter((key) => /K$|WM2$|hours/.test(key))).toEqual([]);
    expect(warmth.helps).toBeDefined();
    expect(warmth.helps?.gainK).toBeUndefined();
    expect(warmth.notes).toContain("not-for-children");
    expect(warmth.by === "youth-rule" ? warmth.checkAt : "").toMatch(/^0\d:00$/);
  });

  it("is far too cold with nothing under in frost, and says so for young and grown", () => {
    const frost = { ...NIGHT, lowK: ICE_K - 5 };
    for (const who of [GROWN, CHILD]) {
      const found = judged(who, { over: over() }, frost);
      expect(found.farShort).toBe(true);
      expect(warmthFindings("1", found).map(({ verdict }) => verdict)).toContain("do-not-hang");
    }
  });

  it("never says worse of a warmer night, and never promises with a word", () => {
    const low = fc.double({ min: -15, max: 20, noNaN: true });
    const rank = { enough: 2, borderline: 1, "not-enough": 0 };
    fc.assert(
      fc.property(low, low, fc.boolean(), (a, b, young) => {
        const at = (airC: number) =>
          judged(young ? CHILD : GROWN, WARM, { ...NIGHT, lowK: ICE_K + airC }).warmth;
        const [cold, mild] = [at(Math.min(a, b)), at(Math.max(a, b))];
        for (const half of ["under", "over"] as const) {
          expect(rank[mild[half].enough]).toBeGreaterThanOrEqual(rank[cold[half].enough]);
        }
      }),
      { seed: 1, numRuns: 40 },
    );
  });
});

describe("the findings of warmth", () => {
  it("tell each half, the weaker one, what helps and who looks in", () => {
    const found = judged(CHILD, { under: under({ limitK: ICE_K + 5 }), over: over() }, NIGHT, {
      checkedBy: "g",
    });
    const findings = warmthFindings("4", found);
    const of = (rule: string) => findings.find((finding) => finding.rule === rule);
    expect(of("under.enough")).toMatchObject({ subject: "berth/4/under", verdict: "look-again" });
    expect(of("over.enough")).toMatchObject({ verdict: "clear" });
    expect(of("warmth.weaker-half")).toMatchObject({ about: ["under"], depth: "why" });
    expect(of("warmth.youth-rule")).toMatchObject({ demand: 1, limit: 3, about: ["not-rated", "", "g"] });
  });
});
