import { checks } from "@nightspan/checks";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import rows from "./drop-speed.checks.json" with { type: "json" };
import { dropSpeed, fallSpeedMS } from "./drop-speed.ts";

function speed(diameterM: number): number {
  const outcome = dropSpeed({ diameterM });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.refusals));
  return outcome.value.speedMS;
}

checks(rows, ({ diameter_mm }) => ({ speed_m_s: speed(diameter_mm / 1000) }));

describe("the speed of a drop", () => {
  it("is greater for a larger drop", () => {
    const size = fc.double({ min: 0.01, max: 6.4, noNaN: true });
    fc.assert(
      fc.property(size, fc.double({ min: 1e-6, max: 0.5, noNaN: true }), (mm, more) => {
        expect(fallSpeedMS(mm + more)).toBeGreaterThanOrEqual(fallSpeedMS(mm));
      }),
      { seed: 1, numRuns: 300 },
    );
  });

  it("comes to rest with the drop's size, and keeps to the largest drop's above the range", () => {
    expect(fallSpeedMS(0)).toBe(0);
    expect(fallSpeedMS(0.05)).toBeCloseTo(0.27 / 4, 12);
    expect(fallSpeedMS(9)).toBe(9.18);
  });

  it.each([0, -1, 0.00009, 0.0066, Number.NaN, Infinity])("refuses %s m", (diameterM) => {
    const outcome = dropSpeed({ diameterM });
    expect(outcome.ok ? [] : outcome.refusals.map(({ field }) => field)).toEqual(["diameterM"]);
  });
});
