import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { degrees } from "../quantity/angle.ts";
import { hang } from "./hang.ts";
import { hangInput } from "./hang.fixture.ts";
import { screenHang } from "./hang-screen.ts";
import type { HangInput } from "./hang-types.ts";

const CASE = fc.record({
  spanM: fc.double({ min: 2.8, max: 6.5, noNaN: true }),
  footGroundM: fc.double({ min: -0.6, max: 0.6, noNaN: true }),
  headDbhM: fc.double({ min: 0.1, max: 0.9, noNaN: true }),
  ridgelineM: fc.option(fc.double({ min: 2.2, max: 2.85, noNaN: true }), { nil: undefined }),
  minM: fc.double({ min: 0, max: 0.6, noNaN: true }),
  roomM: fc.option(fc.double({ min: 0.3, max: 2, noNaN: true }), { nil: undefined }),
  reachM: fc.double({ min: 1.7, max: 2.4, noNaN: true }),
  capM: fc.option(fc.double({ min: 1.4, max: 2.2, noNaN: true }), { nil: undefined, freq: 1 }),
  lowPointMaxM: fc.option(fc.double({ min: 0.4, max: 0.7, noNaN: true }), { nil: undefined }),
  lowPointMinM: fc.double({ min: 0.1, max: 0.5, noNaN: true }),
});

function inputOf(given: typeof CASE extends fc.Arbitrary<infer T> ? T : never): HangInput {
  const { ridgelineM, minM, roomM, capM, lowPointMaxM, reachM, lowPointMinM, ...pair } = given;
  return hangInput({
    ...pair,
    hammock: ridgelineM === undefined ? {} : { ridgelineM },
    suspension: { minM, ...(roomM === undefined ? {} : { maxM: minM + roomM }) },
    limits: {
      reachM,
      lowPointMinM,
      ...(capM === undefined ? {} : { strapHeightMaxM: capM }),
      ...(lowPointMaxM === undefined ? {} : { lowPointMaxM }),
    },
  });
}

describe("the screen of many pairs", () => {
  it("answers as the full hang does: throws out no pair that would serve, passes none that would not", () => {
    const seen = { served: 0, refused: 0 };
    fc.assert(
      fc.property(CASE, (given) => {
        const { spanM, head, foot, ...kit } = inputOf(given);
        const screened = screenHang(kit)({ spanM, head, foot });
        const outcome = hang({ ...kit, spanM, head, foot });
        expect(screened.serves).toBe(outcome.ok);
        seen[outcome.ok ? "served" : "refused"]++;
        if (screened.serves && outcome.ok) {
          const mean = (outcome.value.head.angle + outcome.value.foot.angle) / 2;
          expect(mean - kit.targets.angle).toBeCloseTo(screened.angleOff, 7);
        }
        if (!screened.serves) expect(screened.binds.length).toBeGreaterThan(0);
      }),
      { seed: 1, numRuns: 1000 },
    );
    expect(Math.min(seen.served, seen.refused)).toBeGreaterThan(200);
  });

  it("serves nobody with a kit that cannot be used", () => {
    const { spanM, head, foot, ...kit } = hangInput({ sleeper: { massKg: Number.NaN } });
    expect(screenHang(kit)({ spanM, head, foot })).toEqual({ serves: false, binds: [] });
  });

  it("tells how far the angle has to give way", () => {
    const { spanM, head, foot, ...kit } = hangInput({ spanM: 5.5, limits: { reachM: 1.9 } });
    const screened = screenHang(kit)({ spanM, head, foot });
    expect(screened.serves && screened.angleOff < 0 && screened.angleOff > degrees(-5)).toBe(true);
  });
});
