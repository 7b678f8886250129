import { describe, expect, it } from "vitest";
import { ICE_K } from "../../heat/heat-units.ts";
import type { Night } from "../../plan/camp.ts";
import type { KitItem } from "../../plan/kit.ts";
import { at, camp, hammock, sleeper, webbing } from "../testing/camp.fixture.ts";
import { coolNight, overLayer, underLayer } from "../testing/layers.fixture.ts";
import { planned } from "../testing/planned.fixture.ts";

const NIGHT = coolNight({ lowK: ICE_K + 6, windMS: 3, gustMS: 6, stopGustMS: 12 });
const UNDER = underLayer("snug", { count: 3, limitK: ICE_K - 12 });
const OVER = overLayer("bag", { count: 3, comfortK: ICE_K - 8 });
const HUNG = [hammock("h", { count: 3 }), webbing("w", { count: 3 })];

function plannedWith(kit: readonly KitItem[], night: Night | undefined) {
  const sentence = camp()
    .trees(at(0, 0), at(4.2, 0), at(0, 9), at(4.2, 9))
    .sleepers(
      sleeper("grown", { ageYears: 40, leads: true, group: "g" }),
      sleeper("child", { ageYears: 12, massKg: 45, statureM: 1.5, group: "g" }),
    )
    .kit(...kit);
  return planned(night === undefined ? sentence.build() : sentence.night(night).build());
}

describe("warmth in a plan", () => {
  it("is checked where night, under and over are known, berth by berth", () => {
    const plan = plannedWith([...HUNG, UNDER, OVER], NIGHT);
    expect(plan.checked).toContain("warmth");
    expect(plan.berths.map(({ sleeper: who, warmth }) => [who, warmth?.by]).sort()).toEqual([
      ["child", "youth-rule"],
      ["grown", "balance"],
    ]);
    const child = plan.berths.find((berth) => berth.sleeper === "child");
    expect(child?.warmth).toMatchObject({ spare: "snug", checkedBy: "grown" });
    expect(child?.findings.some(({ rule }) => rule === "warmth.youth-rule")).toBe(true);
    expect(plan.findings.find(({ rule }) => rule === "warmth.spare-per-six")).toMatchObject({
      demand: 1,
      limit: 1,
      verdict: "clear",
    });
  });

  it("lists the defaults that it rests on", () => {
    const used = plannedWith([...HUNG, UNDER, OVER], NIGHT).defaultsUsed;
    const of = (field: string) => used.find((entry) => entry.field === field);
    expect(of("kit[].covered_underblanket")).toMatchObject({ value: 1, for: ["snug"] });
    expect(of("kit[].permeability_over")?.for).toEqual(["bag"]);
    expect(of("warmth.youth_margin_k")?.value).toBe(5);
    expect(of("sleepers[].age")).toBeUndefined();
  });

  it("judges a night hotter than any balance is made for", () => {
    const plan = plannedWith([...HUNG, UNDER, OVER], { ...NIGHT, lowK: ICE_K + 36, highK: ICE_K + 44 });
    for (const { warmth } of plan.berths) expect(warmth?.under.enough).toBe("enough");
    const [grown] = plan.berths.flatMap(({ warmth }) => (warmth?.by === "balance" ? [warmth] : []));
    expect(grown?.hours.every(({ over }) => over.needM2KPerW > 0 && over.lossWM2 > 0)).toBe(true);
  });

  it("is left out where the night or either half is not known", () => {
    for (const plan of [
      plannedWith([...HUNG, UNDER, OVER], undefined),
      plannedWith([...HUNG, UNDER], NIGHT),
      plannedWith(HUNG, NIGHT),
    ]) {
      expect(plan.notChecked).toContain("warmth");
      expect(plan.berths.every(({ warmth }) => warmth === undefined)).toBe(true);
    }
  });

  it("asks for a spare under layer for every six", () => {
    const plan = plannedWith([...HUNG, { ...UNDER, count: 2 }, OVER], NIGHT);
    expect(plan.findings.find(({ rule }) => rule === "warmth.spare-per-six")?.verdict).toBe("look-again");
    expect(plan.berths.find((berth) => berth.sleeper === "child")?.warmth).not.toHaveProperty("spare");
  });
});
