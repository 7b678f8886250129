import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { presetRules } from "../plan/rule-defaults.ts";
import { hang } from "../statics/hang.ts";
import type { HangInput } from "../statics/hang-types.ts";
import { hangKit, hangLimits } from "./hang-request.ts";
import { spanWindow, type SpanExtras } from "./span-window.ts";
import { camp, hammock, sleeper, webbing } from "./testing/camp.fixture.ts";

const WIDE = { spanMinM: { value: 0, source: "test" }, spanMaxM: { value: 99, source: "test" } };

function request(
  but: Partial<Pick<HangInput, "suspension">> = {},
  statureM = 1.75,
  capM?: number,
): HangInput {
  const one = sleeper("a", { statureM });
  const strapHeightMaxM = capM === undefined ? {} : { strapHeightMaxM: { value: capM, source: "test" } };
  const wood = camp().sleepers(one).rules("usual", strapHeightMaxM).build();
  const kit = { sleeper: one, hammock: hammock("h"), suspension: webbing("w"), assumed: [] };
  const ground = { dbhM: 0.3, elevationM: 0 };
  return { ...hangKit(kit, hangLimits(wood, statureM)), spanM: 4.2, head: ground, foot: ground, ...but };
}

function windowOf(input: HangInput, rules = WIDE, extras: SpanExtras = {}) {
  const found = spanWindow(input, rules, extras);
  if (!found.ok) throw new Error(JSON.stringify(found.refusals));
  return found.value;
}

describe("spanWindow", () => {
  it("ends at the room between the trees and at reach, where the house does not end it sooner", () => {
    const free = windowOf(request());
    expect(free.bindsLow).toBe("trees-too-close");
    expect(free.bindsHigh).toBe("strap-reach");
    const house = windowOf(request(), presetRules("usual"));
    expect(house).toMatchObject({ high: 5, bindsHigh: "span-most" });
  });

  it("ends sooner under a cap on strap height, and says so", () => {
    const capped = windowOf(request({}, 1.75, 1.6));
    expect(capped.bindsHigh).toBe("strap-height-cap");
    expect(capped.high).toBeLessThan(windowOf(request()).high);
  });

  it("ends at a sling's shortest and longest length", () => {
    const sling = { type: "whoopie-sling", minM: 0.5, maxM: 0.9 } as const;
    expect(windowOf(request({ suspension: sling }))).toMatchObject({
      bindsLow: "sling-shortest",
      bindsHigh: "sling-longest",
    });
  });

  it("ends at the tarp's ridge where it would not fit between the trunks", () => {
    const tarped = windowOf(request(), WIDE, { tarpRidgeM: 3.6 });
    expect(tarped).toMatchObject({ low: 3.6 + 2 * 0.1 + 0.3, bindsLow: "tarp-ridge" });
    const small = windowOf(request(), WIDE, { tarpRidgeM: 2 });
    const bare = windowOf(request());
    expect(small).toMatchObject({ bindsLow: bare.bindsLow, bindsHigh: bare.bindsHigh });
    expect(small.low).toBeCloseTo(bare.low, 2);
  });

  it("ends where a trunk would be bent too far, at the tree that is bent", () => {
    const input = request();
    const wide = windowOf(input);
    const found = hang({ ...input, spanM: 4.5 });
    if (!found.ok) throw new Error(JSON.stringify(found.refusals));
    const { strapHeightM, sidewaysN } = found.value.foot;
    const bent = windowOf(input, WIDE, { bendMaxNM: { foot: strapHeightM * sidewaysN } });
    expect(bent.bindsHigh).toBe("trunk-bend");
    expect(bent.high).toBeCloseTo(4.5, 2);
    expect(bent.high).toBeLessThan(wide.high);
    expect(bent.low).toBe(wide.low);
  });

  it("is refused where house, kit and tarp leave no span in common", () => {
    const house = { spanMinM: { value: 3, source: "test" }, spanMaxM: { value: 3.4, source: "test" } };
    const tarp = spanWindow(request(), house, { tarpRidgeM: 3.5 });
    expect(tarp).toMatchObject({ ok: false, refusals: [{ field: "spanM", binds: "tarp-ridge" }] });
    const sling = request({ suspension: { type: "whoopie-sling", minM: 0.9, maxM: 2 } });
    const near = spanWindow(sling, house);
    expect(near.ok).toBe(false);
    if (!near.ok) expect(near.refusals.map(({ binds }) => binds)).toContain("sling-shortest");
  });

  it("has no gap: every span inside serves", () => {
    let windows = 0;
    fc.assert(
      fc.property(
        fc.integer({ min: 130, max: 200 }),
        fc.constantFrom(0, 0.3, 0.6),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (cm, minM, share) => {
          const input = request({ suspension: { type: "whoopie-sling", minM, maxM: 1.2 } }, cm / 100, 1.83);
          const found = spanWindow(input, WIDE);
          if (!found.ok) return;
          windows += 1;
          const { low, high } = found.value;
          expect(hang({ ...input, spanM: low + share * (high - low) }).ok).toBe(true);
        },
      ),
      { seed: 1, numRuns: 60 },
    );
    expect(windows).toBeGreaterThan(40);
  });

  it("finds the window from a span outside it", () => {
    const far = windowOf({ ...request(), spanM: 7 });
    const near = windowOf(request());
    expect(far.low).toBeCloseTo(near.low, 3);
    expect(far.high).toBeCloseTo(near.high, 3);
  });

  it("serves inside and is refused just outside, for people of all sizes", () => {
    fc.assert(
      fc.property(fc.integer({ min: 130, max: 200 }), fc.constantFrom(0, 0.3, 0.6), (cm, minM) => {
        const input = request({ suspension: { type: "whoopie-sling", minM, maxM: 3 } }, cm / 100);
        const { low, high } = windowOf(input);
        expect(hang({ ...input, spanM: low }).ok).toBe(true);
        expect(hang({ ...input, spanM: high }).ok).toBe(true);
        expect(hang({ ...input, spanM: low - 0.001 }).ok).toBe(false);
        expect(hang({ ...input, spanM: high + 0.001 }).ok).toBe(false);
      }),
      { seed: 1, numRuns: 20 },
    );
  });

  it("is refused with the hang's own reasons where no span serves", () => {
    const input = request({ suspension: { type: "whoopie-sling", minM: 4, maxM: 4.1 } });
    const found = spanWindow(input, WIDE);
    expect(found.ok).toBe(false);
    if (!found.ok) expect(found.refusals.map(({ binds }) => binds)).toContain("sling-shortest");
  });
});
