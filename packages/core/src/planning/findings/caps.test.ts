import { describe, expect, it } from "vitest";
import type { Finding } from "../../outcome/finding.ts";
import type { HouseRules } from "../../plan/house-rules.ts";
import type { PlannedBerth } from "../../plan/plan.ts";
import { degrees } from "../../quantity/angle.ts";
import { at, camp, sleeper } from "../testing/camp.fixture.ts";
import { onlyBerth, planned } from "../testing/planned.fixture.ts";

const house = (value: number) => ({ value, source: "land manager" });
const FLAT: Partial<HouseRules> = { angleMinRad: house(degrees(15)) };

function hung(spanM: number, rules: Partial<HouseRules>): PlannedBerth {
  return onlyBerth(
    planned(
      camp()
        .trees(at(0, 0), at(spanM, 0))
        .sleepers(sleeper("s1"))
        .rules("usual", { ...FLAT, ...rules })
        .build(),
    ),
  );
}

function of(rule: Finding["rule"], { findings }: PlannedBerth): Finding | undefined {
  return findings.find((finding) => finding.rule === rule);
}

function mean({ hang }: PlannedBerth): number {
  return (hang.head.angle + hang.foot.angle) / 2;
}

function most({ hang }: PlannedBerth): number {
  return Math.max(hang.head.pullN, hang.foot.pullN);
}

describe("what a cap on strap height costs", () => {
  it("is told as the angle and the pull beside those of the same hang without it", () => {
    const [capped, free] = [hung(5, { strapHeightMaxM: house(1.7) }), hung(5, {})];
    const [angle, pull] = [of("cap.angle", capped), of("cap.pull", capped)];
    const told = { verdict: "clear", about: ["strap-height-cap"], subject: "berth/1" };
    expect(angle).toMatchObject({ ...told, unit: "rad" });
    expect(pull).toMatchObject({ ...told, unit: "N" });
    expect(angle?.demand).toBeCloseTo(mean(capped), 9);
    expect(angle?.limit).toBeCloseTo(mean(free), 6);
    expect(pull?.demand).toBeCloseTo(most(capped), 9);
    expect((pull?.limit ?? 0) / most(free)).toBeCloseTo(1, 6);
    expect(mean(free) - mean(capped)).toBeGreaterThan(degrees(1));
    expect(most(capped) / most(free)).toBeCloseTo(1.07, 2);
    expect(Math.max(capped.hang.head.strapHeightM, capped.hang.foot.strapHeightM)).toBeCloseTo(1.7, 6);
  });

  it("is more, the lower the cap: flatter straps, harder pulls", () => {
    const berths = [1.77, 1.73, 1.7].map((cap) => hung(5, { strapHeightMaxM: house(cap) }));
    const ratios = berths.map((berth) => {
      const pull = of("cap.pull", berth);
      return (pull?.demand ?? NaN) / (pull?.limit ?? NaN);
    });
    expect(ratios).toEqual([...ratios].sort((a, b) => a - b));
    expect(ratios[0]).toBeGreaterThan(1);
  });

  it("is nothing where the cap is in nobody's way, or there is none", () => {
    for (const rules of [{ strapHeightMaxM: house(2) }, {}]) {
      const berth = hung(3.6, rules);
      expect([of("cap.angle", berth), of("cap.pull", berth), of("cap.seat", berth)]).toEqual([
        undefined,
        undefined,
        undefined,
      ]);
    }
  });
});

describe("what a cap on the low point costs", () => {
  it("is told as the seat it brings down", () => {
    const [capped, free] = [hung(4.2, { lowPointMaxM: house(0.4) }), hung(4.2, {})];
    const seat = of("cap.seat", capped);
    expect(seat).toMatchObject({ about: ["low-point-cap"], unit: "m", verdict: "clear" });
    expect(seat?.demand).toBeCloseTo(capped.hang.seatHeightM, 9);
    expect(seat?.limit).toBeCloseTo(free.hang.seatHeightM, 6);
    expect(capped.hang.seatHeightM).toBeLessThan(free.hang.seatHeightM);
  });
});
