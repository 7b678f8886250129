import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { PlannedBerth } from "../plan/plan.ts";
import { hang } from "../statics/hang.ts";
import type { HangInput } from "../statics/hang-types.ts";
import { AS_PLANNED, hungModel, plus } from "./adjust/hung-model.ts";
import { overLimits, sumOfSquares } from "./adjust/over-limits.ts";
import { handMarks, type HandMarks } from "./hand-marks.ts";
import { stateBy, type FourMarks } from "./marked-state.ts";
import { at, camp, hammock, webbing } from "./testing/camp.fixture.ts";
import { onlyBerth, planned } from "./testing/planned.fixture.ts";

function berth(spanM = 4.2): PlannedBerth {
  const wood = camp()
    .trees(at(0, 0), at(spanM, 0))
    .sleepers(1)
    .kit(hammock("h", { ridgelineM: 2.75 }), webbing("w"));
  return onlyBerth(planned(wood.build()));
}

/** How it hangs, set by its marks. */
function setBy(request: HangInput, marks: HandMarks) {
  const [model, asked] = [hungModel(request), hang(request)];
  if (!model.ok || !asked.ok) throw new Error("the hang was served");
  const { head, foot, levelFootOverHeadM } = asked.value;
  const headHeightM = marks.headHeightM - head.strapHeightM;
  return model.value.come(
    plus(AS_PLANNED, {
      headHeightM,
      footHeightM: headHeightM + marks.footOverHeadM - levelFootOverHeadM,
      headStrapM: marks.headStrapM - head.strapLengthM,
      footStrapM: marks.footStrapM - foot.strapLengthM,
    }),
  ).state;
}

function inRanges({ ok, foot, levelFootOverHeadM }: PlannedBerth["hang"], marks: FourMarks): boolean {
  const footHeightM = foot.strapHeightM - levelFootOverHeadM + marks.footOverHeadM;
  const figures = [
    [ok["head.strapHeightM"], marks.headHeightM],
    [ok["foot.strapHeightM"], footHeightM],
    [ok["head.strapLengthM"], marks.headStrapM],
    [ok["foot.strapLengthM"], marks.footStrapM],
  ] as const;
  return figures.every(([range, mark]) => range === undefined || (mark >= range.low && mark <= range.high));
}

/** All ways of one step more than the nearest two, either way. */
function neighbours(told: PlannedBerth["hang"]): readonly FourMarks[] {
  const of = (value: number) => [-1, 0, 1, 2].map((step) => 0.05 * (Math.floor(value / 0.05) + step));
  return of(told.head.strapHeightM).flatMap((headHeightM) =>
    of(told.levelFootOverHeadM).flatMap((footOverHeadM) =>
      of(told.head.strapLengthM).flatMap((headStrapM) =>
        of(told.foot.strapLengthM).map((footStrapM) => ({
          headHeightM,
          footOverHeadM,
          headStrapM,
          footStrapM,
        })),
      ),
    ),
  );
}

const SPANS = fc.record({
  spanM: fc.double({ min: 3.6, max: 5.4, noNaN: true }),
  fallM: fc.double({ min: -0.3, max: 0.3, noNaN: true }),
  statureM: fc.double({ min: 1.5, max: 1.9, noNaN: true }),
  massKg: fc.double({ min: 45, max: 105, noNaN: true }),
  dbhM: fc.double({ min: 0.16, max: 0.5, noNaN: true }),
});

type Drawn = Readonly<Record<"spanM" | "fallM" | "statureM" | "massKg" | "dbhM", number>>;

/** The same request for somebody else, between other trees. */
function askedAt(request: HangInput, { spanM, fallM, statureM, massKg, dbhM }: Drawn): HangInput {
  return {
    ...request,
    spanM,
    sleeper: { ...request.sleeper, statureM, massKg },
    head: { ...request.head, dbhM },
    foot: { ...request.foot, dbhM, elevationM: request.head.elevationM + fallM },
  };
}

describe("handMarks", () => {
  it("are whole steps of 5 cm, the nearest where those keep the limits", () => {
    const found = berth();
    const { footHeightM, ...four } = handMarks(found);
    expect(footHeightM).toBeCloseTo(four.headHeightM + four.footOverHeadM, 9);
    for (const mark of Object.values(four)) expect(mark / 0.05).toBeCloseTo(Math.round(mark / 0.05), 9);
    const { hang: told } = found;
    expect(Math.abs(handMarks(found).headHeightM - told.head.strapHeightM)).toBeLessThan(0.05);
  });

  it("are each rounded apart where nobody knows what was asked for", () => {
    const { hang: told } = berth();
    const marks = handMarks({ hang: { ...told } });
    expect(marks.headStrapM).toBeCloseTo(0.05 * Math.round(told.head.strapLengthM / 0.05), 12);
  });

  it("keep angles, reach and ground as told, and seat and foot end nearly always, also where each figure rounded apart would not", () => {
    const { request } = berth();
    if (request === undefined) throw new Error("a planned berth says what it was asked for");
    let [served, kept, moved] = [0, 0, 0];
    fc.assert(
      fc.property(SPANS, (drawn) => {
        const asked = askedAt(request, drawn);
        const outcome = hang(asked);
        if (!outcome.ok || outcome.value.notes.length > 0) return;
        served += 1;
        const marks = handMarks({ hang: outcome.value, request: asked });
        const state = setBy(asked, marks);
        const { walls, hard, soft } = overLimits(state, asked);
        expect(sumOfSquares([...walls, ...hard])).toBe(0);
        if (sumOfSquares(soft) === 0) kept += 1;
        const apart = handMarks({ hang: { ...outcome.value } });
        if (Object.values(apart).join() !== Object.values(marks).join()) moved += 1;
      }),
      { seed: 1, numRuns: 300 },
    );
    expect(served).toBeGreaterThan(100);
    expect(moved).toBeGreaterThan(3);
    // Seat and foot raise give way where straps are 20 to 30 cm: 5 cm is a sixth of them.
    expect(kept / served).toBeGreaterThan(0.99);
  });

  it("are within all limits and ranges wherever one step more or less of each would be, found by trying all", () => {
    const { request } = berth();
    if (request === undefined) throw new Error("a planned berth says what it was asked for");
    let [tried, outside] = [0, 0];
    fc.assert(
      fc.property(SPANS, (drawn) => {
        const asked = askedAt(request, drawn);
        const [outcome, model] = [hang(asked), hungModel(asked)];
        if (!outcome.ok || !model.ok || outcome.value.notes.length > 0) return;
        const told = outcome.value;
        const keeps = (marks: FourMarks): boolean => {
          const state = stateBy(model.value, told, marks);
          if (state === undefined) return false;
          const { walls, hard, soft } = overLimits(state, asked);
          return sumOfSquares([...walls, ...hard, ...soft]) === 0;
        };
        const marks = handMarks({ hang: told, request: asked });
        if (keeps(marks) && inRanges(told, marks)) return;
        outside += 1;
        if (outside > 12) return;
        tried += 1;
        for (const other of neighbours(told)) {
          if (!keeps(other)) continue;
          expect(keeps(marks)).toBe(true);
          expect(inRanges(told, other)).toBe(false);
        }
      }),
      { seed: 4, numRuns: 120 },
    );
    expect(tried).toBeGreaterThan(3);
  });
});
