import { checks, type CheckFile } from "@nightspan/checks";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { degrees, inDegrees } from "../quantity/angle.ts";
import { GRAVITY_M_S2 } from "../quantity/constants.ts";
import { hang } from "./hang.ts";
import rows from "./hang.checks.json" with { type: "json" };
import { hangCore } from "./hang-core.ts";
import { hangInput, type HangFixture } from "./hang.fixture.ts";
import { hangRig } from "./hang-rig.ts";
import type { BorderNote, Hang } from "./hang-types.ts";

function hung(given: HangFixture): Hang {
  const outcome = hang(hangInput(given));
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.refusals));
  return outcome.value;
}

function bindsOf(given: HangFixture): readonly (string | undefined)[] {
  const outcome = hang(hangInput(given));
  return outcome.ok ? [] : outcome.refusals.map(({ binds }) => binds);
}

const ODD = fc.record({
  spanM: fc.double({ min: 0.5, max: 12, noNaN: true }),
  footGroundM: fc.double({ min: -2, max: 2, noNaN: true }),
  headDbhM: fc.double({ min: 0.03, max: 2, noNaN: true }),
  lengthM: fc.double({ min: 1.2, max: 6, noNaN: true }),
  ridgeRatio: fc.option(fc.double({ min: 0.5, max: 0.999, noNaN: true }), { nil: undefined }),
  eaN: fc.constantFrom(2_000, 9_000, 40_000, 1e9),
  minM: fc.double({ min: 0, max: 1, noNaN: true }),
  massKg: fc.double({ min: 5, max: 300, noNaN: true }),
  statureM: fc.double({ min: 0.7, max: 2.3, noNaN: true }),
  angleDeg: fc.double({ min: 5, max: 75, noNaN: true }),
  footRaiseM: fc.double({ min: -1, max: 1, noNaN: true }),
});

interface PlainHang {
  readonly clear: number;
  readonly body: string;
}

const CASES: CheckFile<PlainHang> = rows;

checks(CASES, ({ clear, body }) => {
  const input = hangInput({
    spanM: clear + 0.3,
    hammock: { lengthM: 3.35, ridgelineM: 0.83 * 3.35 },
    suspension: { eaN: 1e8 },
    targets: { seatHeightM: 0.45, footRaiseM: 0 },
  });
  const rig = hangRig(input, { body: body === "vee" ? "vee" : "arc", massRatio: 1, stretchRatio: 1 });
  const core = hangCore(rig, input);
  if (!core.ok) throw new Error(JSON.stringify(core.refusals));
  const { setting, figures } = core.value.trial;
  return {
    strap: (setting.headHeightM + setting.footHeightM) / 2,
    ridge_share: figures.ridgeN / rig.weightN,
  };
});

describe("hang", () => {
  it("meets the targets: mean angle, foot raise, seat height from the stature", () => {
    const { head, foot, footRaiseM, seatHeightM } = hung({});
    expect(inDegrees(head.angle) + inDegrees(foot.angle)).toBeCloseTo(60, 9);
    expect(footRaiseM).toBeCloseTo(0.2, 9);
    expect(seatHeightM).toBeCloseTo(0.453, 3);
  });

  it("splits the weight so that the two downs sum to it and pull² = sideways² + down²", () => {
    const { head, foot } = hung({ hammock: { ridgelineM: 2.49 } });
    expect(head.downN + foot.downN).toBeCloseTo(80.6 * GRAVITY_M_S2, 7);
    for (const { pullN, sidewaysN, downN } of [head, foot]) {
      expect(pullN ** 2).toBeCloseTo(sidewaysN ** 2 + downN ** 2, 5);
    }
  });

  it("refuses trees too close for the cloth, and a sling too long for them", () => {
    expect(bindsOf({ spanM: 2.7 })).toContain("trees-too-close");
    expect(bindsOf({ spanM: 3.4, suspension: { minM: 0.9 } })).toContain("sling-shortest");
    expect(bindsOf({ spanM: 6, suspension: { maxM: 0.9 } })).toContain("sling-longest");
  });

  it("lets the angle fall to keep the reach, says so, and refuses where that does not do", () => {
    const { notes, foot } = hung({ spanM: 5.5, limits: { reachM: 1.9 } });
    expect(notes).toContainEqual({ key: "moved-by", limit: "strap-reach" });
    expect(foot.strapHeightM).toBeCloseTo(1.9, 6);
    expect(bindsOf({ spanM: 7, limits: { reachM: 1.9 } })).toContain("strap-reach");
  });

  it("refuses bad fields by name, all at once", () => {
    const outcome = hang(
      hangInput({
        spanM: Number.NaN,
        sleeper: { massKg: -80 },
        hammock: { ridgelineM: 3.2 },
        targets: { angle: degrees(80) },
      }),
    );
    const fields = outcome.ok ? [] : outcome.refusals.map(({ field }) => field);
    expect(fields).toEqual(["spanM", "hammock.ridgelineM", "sleeper.massKg", "targets.angle"]);
  });

  it("refuses limits of the ok ranges that cannot be used, by their own name", () => {
    const input = hangInput();
    const outcome = hang({ ...input, okLimits: { ...input.limits, seatHeightMinM: Number.NaN } });
    const fields = outcome.ok ? [] : outcome.refusals.map(({ field }) => field);
    expect(fields).toContain("okLimits.seatHeightMinM");
  });

  it("answers anything within its ranges with finite figures or reasons, however odd", () => {
    let served = 0;
    fc.assert(
      fc.property(ODD, ({ ridgeRatio, eaN, ...odd }) => {
        const { lengthM, massKg, statureM, angleDeg, footRaiseM, minM, ...pair } = odd;
        const outcome = hang(
          hangInput({
            ...pair,
            hammock: { lengthM, ...(ridgeRatio === undefined ? {} : { ridgelineM: ridgeRatio * lengthM }) },
            suspension: { minM, eaN },
            sleeper: { massKg, statureM },
            targets: { angle: degrees(angleDeg), footRaiseM },
            limits: { angleMin: degrees(5), angleMax: degrees(75), footRaiseMinM: -1, footRaiseMaxM: 1 },
          }),
        );
        if (!outcome.ok) {
          expect(outcome.refusals.length).toBeGreaterThan(0);
          return;
        }
        served++;
        const { head, foot, ok, band, shape } = outcome.value;
        for (const { parts, ...figures } of [head, foot]) {
          for (const figure of Object.values(figures)) expect(figure).toSatisfy(Number.isFinite);
          for (const lengthM of Object.values(parts ?? {})) expect(lengthM).toBeGreaterThanOrEqual(0);
        }
        for (const { low, high } of Object.values(ok)) expect(low <= high).toBe(true);
        for (const [low, high] of Object.values(band))
          expect(low <= high && Number.isFinite(high)).toBe(true);
        expect(shape.cloth.flat().every(Number.isFinite)).toBe(true);
      }),
      { seed: 1, numRuns: 300 },
    );
    expect(served).toBeGreaterThan(20);
  });

  it("gives the handbook's worked figure", () => {
    const { head, foot, ridgelinePullN, lowPointM } = hung({ spanM: 4.5, hammock: { ridgelineM: 2.49 } });
    expect([head.strapHeightM, foot.strapHeightM].map(round)).toEqual([1.623, 1.912]);
    expect([head.strapLengthM, foot.strapLengthM].map(round)).toEqual([0.971, 1.015]);
    expect([inDegrees(head.angle), inDegrees(foot.angle)].map(round)).toEqual([27.776, 32.224]);
    expect([head.pullN, foot.pullN, ridgelinePullN].map((pull) => Math.round(pull ?? NaN))).toEqual([
      772, 808, 212,
    ]);
    expect(round(lowPointM)).toBe(0.479);
  });

  it("moves steeper where the sling is too long for the angle asked for, and says so", () => {
    const { head, foot, notes } = hung({ spanM: 4.3, suspension: { minM: 0.77 } });
    expect(Math.min(head.strapLengthM, foot.strapLengthM)).toBeCloseTo(0.77, 6);
    expect(inDegrees(head.angle) + inDegrees(foot.angle)).toBeGreaterThan(60);
    expect(notes).toContainEqual({ key: "moved-by", limit: "sling-shortest" });
  });

  it("lowers a seat nobody stated for the cap on the low point, and refuses one that was stated", () => {
    const limits = { lowPointMaxM: 0.45 };
    expect(hung({ limits }).lowPointM).toBeCloseTo(0.45, 9);
    expect(hung({ limits }).seatHeightM).toBeLessThan(0.45);
    expect(bindsOf({ limits, targets: { seatHeightM: 0.5 } })).toEqual(["low-point-cap"]);
  });

  it("raises a seat nobody stated off the ground, and refuses where the seat may not go so high", () => {
    const limits = { lowPointMinM: 0.52 };
    expect(hung({ limits }).lowPointM).toBeCloseTo(0.52, 9);
    expect(bindsOf({ limits: { lowPointMinM: 0.7 } })).toContain("low-point-ground");
  });

  it("tells webbing with wrap, knot and tail; of a sling the strap round the tree", () => {
    const webbing = hung({ headDbhM: 0.4 }).head;
    expect(webbing.webbingM).toBeCloseTo(webbing.strapLengthM + Math.PI * 0.4 + 0.4, 9);
    const sling = hung({ headDbhM: 0.4, suspension: { type: "whoopie-sling" } }).head;
    expect(sling.webbingM).toBeCloseTo(Math.PI * 0.4 + 0.3, 9);
  });

  it("settles overnight by centimetres, webbing more than a sling", () => {
    const webbing = hung({}).settleM ?? NaN;
    const sling = hung({ suspension: { type: "whoopie-sling" } }).settleM ?? NaN;
    expect(webbing).toBeGreaterThan(0.02);
    expect(webbing).toBeLessThan(0.1);
    expect(sling).toBeLessThan(webbing / 2);
  });

  it.each<[BorderNote, HangFixture]>([
    ["short-cloth", { sleeper: { statureM: 2.15 } }],
    ["nearly-straight", { spanM: 6, targets: { angle: degrees(9) }, limits: { angleMin: degrees(5) } }],
    ["short-straps", { spanM: 3.25 }],
    ["ridgeline-barely-taut", { hammock: { ridgelineM: 2.69 } }],
    ["stretchy-straps", { suspension: { eaN: 10_000 } }],
    ["steep-ground", { footGroundM: 1.8, limits: { lowPointMinM: 0 } }],
    ["body-unlike-table", { sleeper: { statureM: 1.2, massKg: 30 } }],
  ])("notes a model near its border: %s, and no ordinary hang", (key, fixture) => {
    expect(hung(fixture).notes).toContainEqual({ key });
    expect(hung({}).notes).toEqual([]);
  });

  it("tells no ok ranges where what was asked for is outside the usual limits, and says which", () => {
    const input = hangInput({ targets: { angle: degrees(40) }, limits: { angleMax: degrees(60) } });
    const outcome = hang({ ...input, okLimits: { ...input.limits, angleMax: degrees(35) } });
    expect(outcome.ok && outcome.value.ok).toEqual({});
    expect(outcome.ok && outcome.value.notes).toEqual([{ key: "outside-usual", limit: "angle-steepest" }]);
    const within = hang({ ...input, okLimits: { ...input.limits, angleMax: degrees(50) } });
    expect(within.ok && Object.keys(within.value.ok)).toHaveLength(5);
  });

  it("refuses a pair whose uphill strap would be in the ground", () => {
    expect(bindsOf({ spanM: 4.5, footGroundM: 2.9, limits: { lowPointMinM: 0.3 } })).toContain(
      "low-point-ground",
    );
  });
});

function round(value: number): number {
  return Math.round(value * 1000) / 1000;
}
