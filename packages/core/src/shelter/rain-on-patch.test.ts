import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dripping, fallingRain, STEPS } from "./falling-rain.ts";
import { fallSpeedMS } from "./drop-speed.ts";
import { rainOnPatch, UPWARDS } from "./rain-on-patch.ts";

const RAIN = fallingRain(3);
const wind = fc.double({ min: 0.01, max: 15, noNaN: true });

describe("rain on a patch", () => {
  it("is all of it on a level square metre in the open, whatever the wind", () => {
    fc.assert(
      fc.property(wind, fc.double({ min: 0, max: 6.28, noNaN: true }), (windMS, from) => {
        expect(rainOnPatch(UPWARDS, Math.cos(from), Math.sin(from), windMS, RAIN, [])).toBeCloseTo(1, 9);
      }),
      { seed: 1, numRuns: 100 },
    );
  });

  it("is the driving rain on an upright one that faces the wind, nothing on its back", () => {
    const slowness = RAIN.slowness[STEPS] ?? Number.NaN;
    expect(rainOnPatch([1, 0, 0], 1, 0, 6, RAIN, [])).toBeCloseTo(6 * slowness, 9);
    expect(rainOnPatch([-1, 0, 0], 1, 0, 6, RAIN, [])).toBe(0);
    expect(rainOnPatch([0, 0, -1], 1, 0, 6, RAIN, [])).toBe(0);
  });

  it("falls straight without wind: on what faces up and is not covered from above", () => {
    expect(rainOnPatch([0.3, 0, 0.7], 1, 0, 0, RAIN, [])).toBe(0.7);
    expect(rainOnPatch(UPWARDS, 1, 0, 0, RAIN, [0, 0.2])).toBe(0);
    expect(rainOnPatch(UPWARDS, 1, 0, 0, RAIN, [0.1, 0.2])).toBe(1);
  });

  it("splits without loss where a range of slopes is covered", () => {
    const slope = fc.double({ min: 0, max: 3, noNaN: true });
    fc.assert(
      fc.property(wind, slope, slope, (windMS, a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        const outside = rainOnPatch([0.4, 0, 0.9], 1, 0, windMS, RAIN, [low, high]);
        const others = low > 0 ? [0, low, high, 1e9] : [high, 1e9];
        const within = rainOnPatch([0.4, 0, 0.9], 1, 0, windMS, RAIN, others);
        const whole = rainOnPatch([0.4, 0, 0.9], 1, 0, windMS, RAIN, []);
        expect(outside + within).toBeCloseTo(whole, 6);
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  it("takes one drop size by its one slope", () => {
    const drops = dripping(1, 2);
    const slope = 4 / fallSpeedMS(2);
    expect(rainOnPatch(UPWARDS, 1, 0, 4, drops, [slope * 0.97, slope * 1.03])).toBeCloseTo(0, 9);
    expect(rainOnPatch(UPWARDS, 1, 0, 4, drops, [slope * 1.03, 9])).toBeCloseTo(1, 9);
  });
});
