import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { degrees, inDegrees } from "../quantity/angle.ts";
import { GRAVITY_M_S2 } from "../quantity/constants.ts";
import { hang } from "./hang.ts";
import { hangInput, type HangFixture } from "./hang.fixture.ts";
import { hangRig } from "./hang-rig.ts";
import type { Hang, HangInput, Point2 } from "./hang-types.ts";

const DRAWN = fc.record({
  spanM: fc.double({ min: 3.2, max: 6, noNaN: true }),
  headDbhM: fc.double({ min: 0.15, max: 0.6, noNaN: true }),
  footDbhM: fc.double({ min: 0.15, max: 0.6, noNaN: true }),
  footGroundM: fc.double({ min: -0.8, max: 0.8, noNaN: true }),
  lengthM: fc.double({ min: 2.7, max: 3.4, noNaN: true }),
  ridgeRatio: fc.option(fc.double({ min: 0.78, max: 0.92, noNaN: true }), { nil: undefined }),
  massKg: fc.double({ min: 30, max: 130, noNaN: true }),
  statureM: fc.double({ min: 1.4, max: 2, noNaN: true }),
  angleDeg: fc.double({ min: 20, max: 42, noNaN: true }),
  footRaiseM: fc.double({ min: -0.1, max: 0.35, noNaN: true }),
});

const FREE = {
  angleMin: degrees(8),
  angleMax: degrees(60),
  lowPointMinM: 0,
  seatHeightMinM: 0.1,
  seatHeightMaxM: 1.2,
  footRaiseMinM: -0.2,
  footRaiseMaxM: 0.5,
};

function inputOf(given: typeof DRAWN extends fc.Arbitrary<infer T> ? T : never, stiff = false): HangInput {
  const { lengthM, ridgeRatio, massKg, statureM, angleDeg, footRaiseM, ...pair } = given;
  const ridge = ridgeRatio === undefined ? {} : { ridgelineM: ridgeRatio * lengthM };
  return hangInput({
    ...pair,
    hammock: { lengthM, ...ridge },
    suspension: stiff ? { eaN: 1e9 } : {},
    sleeper: { massKg, statureM },
    targets: { angle: degrees(angleDeg), footRaiseM },
    limits: FREE,
  });
}

/** The hang, or nothing where the pair is too close for it or the ground in the way. */
function hungIf(input: HangInput): Hang | undefined {
  const outcome = hang(input);
  return outcome.ok ? outcome.value : undefined;
}

function apart([ax, az]: Point2, [bx, bz]: Point2): number {
  return Math.hypot(bx - ax, bz - az);
}

function eachHang(law: (told: Hang, input: HangInput) => void): void {
  let tried = 0;
  fc.assert(
    fc.property(DRAWN, (given) => {
      const input = inputOf(given);
      const told = hungIf(input);
      fc.pre(told !== undefined);
      tried++;
      law(told, input);
    }),
    { seed: 1, numRuns: 60 },
  );
  expect(tried).toBeGreaterThanOrEqual(60);
}

describe("every hang", () => {
  it("balances: forces at the trees, and moments about the head tree, to 1e-9", () => {
    eachHang(({ head, foot, shape }, input) => {
      const weightN = (input.sleeper.massKg + input.hammock.massKg) * GRAVITY_M_S2;
      expect(Math.abs(head.downN + foot.downN - weightN)).toBeLessThan(1e-9 * weightN);
      expect(Math.abs(head.sidewaysN - foot.sidewaysN)).toBeLessThan(1e-9 * weightN);
      const [ax, az] = shape.headAnchor;
      const [bx, bz] = shape.footAnchor;
      const weights = hangRig(input).lying.weightN;
      const moment = shape.cloth.reduce((sum, [x], node) => sum + (weights[node + 1] ?? NaN) * (x - ax), 0);
      const turning = foot.downN * (bx - ax) - foot.sidewaysN * (bz - az) - moment;
      expect(Math.abs(turning)).toBeLessThan(1e-9 * weightN * input.spanM);
    });
  });

  it("has each strap along its pull, cloth of its own length, and a ridgeline that never pushes", () => {
    eachHang(({ head, foot, shape, ridgelineM, ridgelinePullN }, input) => {
      const ends = [
        [head, shape.headAnchor, shape.headGather],
        [foot, shape.footAnchor, shape.footGather],
      ] as const;
      for (const [strap, anchor, gather] of ends) {
        expect(apart(anchor, gather)).toBeCloseTo(strap.strapLengthM, 8);
        const slope = (anchor[1] - gather[1]) / Math.abs(anchor[0] - gather[0]);
        expect(slope).toBeCloseTo(strap.downN / strap.sidewaysN, 7);
        expect(strap.pullN ** 2 / (strap.sidewaysN ** 2 + strap.downN ** 2)).toBeCloseTo(1, 12);
      }
      const cloth = shape.cloth
        .slice(1)
        .reduce((sum, at, node) => sum + apart(shape.cloth[node] ?? at, at), 0);
      expect(cloth).toBeCloseTo(input.hammock.lengthM, 8);
      const gathers = apart(shape.headGather, shape.footGather);
      if (ridgelineM === undefined) return;
      expect(ridgelinePullN).toBeGreaterThanOrEqual(0);
      expect(gathers).toBeLessThan(ridgelineM + 1e-8);
      if (shape.ridgelineTaut) expect(gathers).toBeCloseTo(ridgelineM, 8);
    });
  });

  it("is where it was asked to be: angle, raise, middle, seat and heights from each tree's own ground", () => {
    eachHang(({ head, foot, shape, footRaiseM, seatHeightM, levelFootOverHeadM, notes }, input) => {
      const { spanM, targets } = input;
      if (!notes.some(({ key }) => key === "moved-by")) {
        expect((head.angle + foot.angle) / 2).toBeCloseTo(targets.angle, 9);
      }
      expect(footRaiseM).toBeCloseTo(targets.footRaiseM, 8);
      expect(shape.footGather[1] - shape.headGather[1]).toBeCloseTo(footRaiseM, 8);
      const middle = (shape.headGather[0] + shape.footGather[0]) / 2;
      expect(middle).toBeCloseTo((input.head.dbhM / 2 + spanM - input.foot.dbhM / 2) / 2, 8);
      const seat = shape.clothSitting[(shape.clothSitting.length - 1) / 2] ?? [NaN, NaN];
      expect(seat[1] - (shape.groundFootZM * seat[0]) / spanM).toBeCloseTo(seatHeightM, 8);
      expect(shape.headAnchor[1]).toBeCloseTo(head.strapHeightM, 9);
      expect(shape.footAnchor[1] - shape.groundFootZM).toBeCloseTo(foot.strapHeightM, 9);
      expect(levelFootOverHeadM).toBeCloseTo(shape.footAnchor[1] - shape.headAnchor[1], 9);
    });
  });

  it("tells the lowest cloth above the ground on its way", () => {
    eachHang(({ shape, lowPointM }, { spanM }) => {
      const over = shape.cloth.map(([x, z]) => z - (shape.groundFootZM * x) / spanM);
      expect(lowPointM).toBeCloseTo(Math.min(...over), 9);
    });
  });

  it("pulls twice as hard under twice the weight when the straps do not stretch", () => {
    fc.assert(
      fc.property(DRAWN, (given) => {
        const once = inputOf(given, true);
        const [sleeper, hammock] = [once.sleeper, once.hammock];
        const twice = {
          ...once,
          sleeper: { ...sleeper, massKg: 2 * sleeper.massKg },
          hammock: { ...hammock, massKg: 2 * hammock.massKg },
        };
        const [a, b] = [hungIf(once), hungIf(twice)];
        fc.pre(a !== undefined && b !== undefined);
        expect(b.head.pullN / a.head.pullN).toBeCloseTo(2, 5);
        expect(b.foot.pullN / a.foot.pullN).toBeCloseTo(2, 5);
        expect(b.head.strapHeightM).toBeCloseTo(a.head.strapHeightM, 5);
      }),
      { seed: 1, numRuns: 60 },
    );
  });

  it("pulls harder the flatter it hangs", () => {
    const pulls = [20, 25, 30, 35, 40].map((deg) => {
      const told = hungIf(hangInput({ spanM: 4.5, targets: { angle: degrees(deg) }, limits: FREE }));
      return (told?.head.pullN ?? NaN) + (told?.foot.pullN ?? NaN);
    });
    pulls.slice(1).forEach((pull, index) => expect(pull).toBeLessThan(pulls[index] ?? NaN));
  });

  it("does not care from which datum the ground is measured", () => {
    const low = hungIf(hangInput({ footGroundM: 0.3 }));
    const input = hangInput({ footGroundM: 0.3 });
    const high = hungIf({
      ...input,
      head: { ...input.head, elevationM: 412 },
      foot: { ...input.foot, elevationM: 412.3 },
    });
    expect(high?.foot.strapHeightM).toBeCloseTo(low?.foot.strapHeightM ?? NaN, 9);
  });
});

describe("what the trade says (common practice, no source)", () => {
  it.each([undefined, 2.49])(
    "at 30° each strap carries the sleeper's whole weight, ridgeline %s",
    (ridgelineM) => {
      // The saying is about a load in the middle. A body's centre of mass lies a tenth of a metre headwards,
      // so one strap carries about 2 % more than the weight and the other 2 % less: their mean is meant.
      const hammock = ridgelineM === undefined ? {} : { ridgelineM };
      const weightN = 80.6 * GRAVITY_M_S2;
      for (const footRaiseM of [0, 0.2]) {
        const told = hungIf(hangInput({ hammock, targets: { footRaiseM } }));
        const [headN, footN] = [told?.head.pullN ?? NaN, told?.foot.pullN ?? NaN];
        expect(Math.abs((headN + footN) / 2 / weightN - 1)).toBeLessThan(0.02);
        expect(Math.abs(headN - footN) / weightN).toBeLessThan(0.06);
      }
    },
  );

  it("a 1.75 m adult's straps lie between shoulder and reach when the barks stand 3.2 to 5.2 m apart", () => {
    // The cloth the saying is about: 3.35 m on a ridgeline of 0.83; mean of both straps on level ground.
    const means = [3.2, 3.6, 4, 4.5, 5, 5.2].map((clearM) => {
      const fixture: HangFixture = {
        spanM: clearM + 0.3,
        hammock: { lengthM: 3.35, ridgelineM: 0.83 * 3.35 },
      };
      const told = hungIf(hangInput(fixture));
      return ((told?.head.strapHeightM ?? NaN) + (told?.foot.strapHeightM ?? NaN)) / 2;
    });
    for (const mean of means) {
      expect(mean).toBeGreaterThan(0.82 * 1.75);
      expect(mean).toBeLessThan(2.1);
    }
    // About 3 cm of strap height for 10 cm of span.
    const slope = ((means.at(-1) ?? NaN) - (means[0] ?? NaN)) / (5.2 - 3.2);
    expect(slope).toBeCloseTo(0.29, 1);
  });

  it("about 30° and a ridgeline of 0.83 belong together: it is taut, at a tenth to a half of the weight", () => {
    const told = hungIf(hangInput({ hammock: { ridgelineM: 2.49 } }));
    const share = (told?.ridgelinePullN ?? NaN) / (80.6 * GRAVITY_M_S2);
    expect(share).toBeGreaterThan(0.1);
    expect(share).toBeLessThan(0.5);
    expect(inDegrees(told?.head.angle ?? degrees(NaN))).toBeGreaterThan(25);
  });
});
