import { checks } from "@nightspan/checks";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { degrees } from "../quantity/angle.ts";
import rows from "./two-cable.checks.json" with { type: "json" };
import { twoCable, type TwoCable } from "./two-cable.ts";

function pulls(loadN: number, left: number, right: number): TwoCable {
  const outcome = twoCable({ loadN, left: degrees(left), right: degrees(right) });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.refusals));
  return outcome.value;
}

checks(rows, ({ load_n, left_deg, right_deg }) => {
  const { leftN, rightN } = pulls(load_n, left_deg, right_deg);
  return { left_n: leftN, right_n: rightN };
});

describe("two-cable", () => {
  const angle = fc.double({ min: 0.5, max: 90, noNaN: true });
  const load = fc.double({ min: 1, max: 1e5, noNaN: true });

  it("balances the load: up and sideways", () => {
    fc.assert(
      fc.property(load, angle, angle, (loadN, left, right) => {
        const { leftN, rightN } = pulls(loadN, left, right);
        const size = leftN + rightN;
        const up = leftN * Math.sin(degrees(left)) + rightN * Math.sin(degrees(right));
        const across = leftN * Math.cos(degrees(left)) - rightN * Math.cos(degrees(right));
        expect(Math.abs(up - loadN) / size).toBeLessThan(1e-12);
        expect(Math.abs(across) / size).toBeLessThan(1e-12);
      }),
      { seed: 1, numRuns: 500 },
    );
  });

  it("gives half the load over the sine at equal angles, half each when both are upright", () => {
    for (const at of [0.5, 12, 30, 45, 89.999, 90]) {
      const { leftN, rightN } = pulls(800, at, at);
      expect(leftN).toBeCloseTo(400 / Math.sin(degrees(at)), 8);
      expect(rightN).toBe(leftN);
    }
  });

  it("leaves nothing to a cable beside an upright one", () => {
    const { leftN, rightN } = pulls(800, 90, 30);
    expect(leftN).toBeCloseTo(800, 9);
    expect(rightN).toBe(0);
  });

  it("refuses by field, all at once", () => {
    const outcome = twoCable({ loadN: Number.NaN, left: degrees(0), right: degrees(91) });
    expect(outcome.ok ? [] : outcome.refusals.map(({ field }) => field)).toEqual(["loadN", "left", "right"]);
    expect(twoCable({ loadN: Infinity, left: degrees(30), right: degrees(30) }).ok).toBe(false);
    expect(twoCable({ loadN: -1, left: degrees(30), right: degrees(30) }).ok).toBe(false);
  });
});
