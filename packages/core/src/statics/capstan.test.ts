import { checks } from "@nightspan/checks";
import { describe, expect, it } from "vitest";
import rows from "./capstan.checks.json" with { type: "json" };
import { capstan } from "./capstan.ts";

function ratioOf(friction: number, turns: number): number {
  const outcome = capstan({ pullN: 800, friction, turns });
  return outcome.ok ? outcome.value.ratio : NaN;
}

checks(rows, ({ friction, turns }) => ({ ratio: ratioOf(friction, turns) }));

describe("capstan", () => {
  it("multiplies: two turns hold the square of one, none hold nothing", () => {
    expect(ratioOf(0.3, 2)).toBeCloseTo(ratioOf(0.3, 1) ** 2, 9);
    expect(ratioOf(0.3, 0)).toBe(1);
    expect(ratioOf(0, 5)).toBe(1);
  });

  it("tells what the tail must hold", () => {
    const outcome = capstan({ pullN: 800, friction: 0.25, turns: 1 });
    expect(outcome.ok ? outcome.value.tailN * outcome.value.ratio : NaN).toBeCloseTo(800, 9);
  });

  it("refuses by field", () => {
    const outcome = capstan({ pullN: Number.NaN, friction: -0.1, turns: 11 });
    expect(outcome.ok ? [] : outcome.refusals.map(({ field }) => field)).toEqual([
      "pullN",
      "turns",
      "friction",
    ]);
  });
});
