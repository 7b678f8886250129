import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chanceFrom } from "../../numeric/seeded.ts";
import { degrees, inDegrees, radians } from "../../quantity/angle.ts";
import { ERROR_NAMES, type HangDeviation } from "../../statics/hang-band.ts";
import type { Suspension } from "../../plan/kit.ts";
import type { HangInput } from "../../statics/hang-types.ts";
import { at, camp, hammock, webbing } from "../testing/camp.fixture.ts";
import { onlyBerth, planned } from "../testing/planned.fixture.ts";
import { adjust } from "./adjust.ts";
import type { Adjustment, AsHung, Followed } from "./adjust-types.ts";
import { findBerthRequest } from "./berth-request.ts";
import { AS_PLANNED, hungModel, moveOf, plus, type Come, type HungModel } from "./hung-model.ts";
import { leadsNotPast, overLimits } from "./over-limits.ts";

/** The one berth of a camp: 4.2 m, the foot tree 20 cm higher. */
function request(ridgelineM?: number, straps: Partial<Suspension> = {}): HangInput {
  const wood = camp()
    .trees(at(0, 0, { elevationM: 0 }), at(4.2, 0, { elevationM: 0.2 }))
    .sleepers(1)
    .kit(hammock("h", ridgelineM === undefined ? {} : { ridgelineM }), webbing("w", straps))
    .build();
  const found = onlyBerth(planned(wood)).request;
  if (found === undefined) throw new Error("a planned berth says what it was asked for");
  return found;
}

function modelOf(input: HangInput): HungModel {
  const model = hungModel(input);
  if (!model.ok) throw new Error(JSON.stringify(model.refusals));
  return model.value;
}

function adjusted(input: HangInput, measured: AsHung, followed: readonly Followed[] = []): Adjustment {
  const outcome = adjust({ request: input, measured, followed });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.refusals));
  return outcome.value;
}

describe("adjust", () => {
  const plain = request();
  const { planned: plan } = modelOf(plain);

  it("asks for the hang of a berth as the plan did", () => {
    const wood = camp().trees(at(0, 0), at(4.2, 0)).sleepers(1).build();
    const berth = onlyBerth(planned(wood));
    const found = findBerthRequest(wood, berth);
    expect(found).toEqual(berth.request);
    expect(found?.spanM).toBe(berth.spanM);
    const { state } = modelOf(found ?? plain).planned;
    expect(state.head.strapHeightM).toBeCloseTo(berth.hang.head.strapHeightM, 9);
    expect(findBerthRequest(wood, { ...berth, headTree: "elsewhere" })).toBeUndefined();
  });

  it("changes nothing where nothing was measured, or all is as planned", () => {
    const { seatHeightM, footRaiseM, head } = plan.state;
    for (const measured of [{}, { seatHeightM, footRaiseM, head: { angle: head.angle } }]) {
      const found = adjusted(plain, measured);
      expect(found.next).toBe("leave-it");
      expect(found.instruction).toBeUndefined();
      expect(found.off).toEqual([]);
      expect(found.verdict).toBe("clear");
      expect(found.predicted).toEqual(found.state);
    }
  });

  it("takes in an adjuster where the seat came out low, lets one out where it came out high", () => {
    const low = adjusted(plain, { seatHeightM: plan.state.seatHeightM - 0.12 });
    expect(low.instruction?.action).toBe("take-in");
    expect(low.off.map(({ quantity }) => quantity)).toContain("seatHeightM");
    expect(low.predicted.seatHeightM).toBeGreaterThan(low.state.seatHeightM + 0.06);
    expect(adjusted(plain, { seatHeightM: plan.state.seatHeightM + 0.12 }).instruction?.action).toBe(
      "let-out",
    );
  });

  it("raises the foot end against the head end for who slides to the foot, and the other way about", () => {
    const { seatHeightM } = plan.state;
    const toFoot = adjusted(plain, { slides: "to-foot", seatHeightM });
    expect(toFoot.state.footRaiseM).toBeLessThan(plan.state.footRaiseM);
    expect(toFoot.predicted.footRaiseM).toBeGreaterThan(toFoot.state.footRaiseM + 0.03);
    const toHead = adjusted(plain, { slides: "to-head", seatHeightM });
    expect(toHead.predicted.footRaiseM).toBeLessThan(toHead.state.footRaiseM - 0.03);
  });

  it("reads strained knees as a droopy hang, and takes in", () => {
    const found = adjusted(request(2.75), { knees: "strained", seatHeightM: plan.state.seatHeightM - 0.1 });
    expect(inDegrees(found.state.head.angle)).toBeGreaterThan(inDegrees(plan.state.head.angle));
    expect(found.instruction?.action).toBe("take-in");
  });

  it("reads the ridgeline's feel as weak evidence of the angle", () => {
    const ridged = request(2.75);
    const meanOf = ({ state: { head, foot } }: Adjustment) => head.angle + foot.angle;
    const feel = (ridgeline: "slack" | "bends" | "tight") => meanOf(adjusted(ridged, { ridgeline }));
    expect(feel("slack")).toBeGreaterThan(feel("bends"));
    expect(feel("bends")).toBeGreaterThan(feel("tight"));
  });

  it("finds the straps too flat from measured angles, and lets out", () => {
    const edge = adjusted(plain, { head: { angle: degrees(24.5) }, foot: { angle: degrees(28.5) } });
    expect(edge.verdict).toBe("look-again");
    const measured = { head: { angle: degrees(19) }, foot: { angle: degrees(22) }, seatHeightM: 0.55 };
    const found = adjusted(plain, measured);
    expect(found.verdict).toBe("do-not-hang");
    expect(found.findings[0]?.rule).toBe("strap.angle-flattest");
    expect(found.instruction?.action).toBe("let-out");
    expect(found.predicted.head.angle).toBeGreaterThan(found.state.head.angle);
  });

  it("says by its misfit that measurements contradict each other", () => {
    const { seatHeightM } = plan.state;
    const agreeing = adjusted(plain, { seatHeightM, footRaiseM: 0.2 });
    const contradicting = adjusted(plain, {
      spanM: 4.2,
      seatHeightM: seatHeightM + 0.5,
      head: { angle: degrees(40), strapHeightM: 1.2 },
      foot: { angle: degrees(40) },
    });
    expect(agreeing.misfit).toBeLessThan(1);
    expect(contradicting.misfit).toBeGreaterThan(5);
  });

  it("tells no change by measurements that contradict each other, unless they are trusted", () => {
    const measured = { seatHeightM: plan.state.seatHeightM + 0.6, head: { angle: degrees(45) } };
    const found = adjusted(plain, measured);
    expect(found.misfit).toBeGreaterThan(5);
    expect(found.next).toBe("measure-again");
    expect(found.instruction).toBeUndefined();
    expect(found.predicted).toEqual(found.state);
    const trusted = adjust({ request: plain, measured, trusted: true });
    expect(trusted.ok && trusted.value.next).toBe("change");
  });

  it("asks for a new plan where the trees alone stand elsewhere, whatever fits with that", () => {
    for (const spanM of [3, 6]) {
      const found = adjusted(plain, { spanM });
      expect(found.next).toBe("plan-again");
      expect(found.instruction).toBeUndefined();
    }
    const { state } = modelOf(plain).come(plus(AS_PLANNED, { spanM: 5.2 - plan.state.spanM }));
    const fitting = adjusted(plain, { spanM: 5.2, head: { angle: state.head.angle } });
    expect(fitting.next).toBe("plan-again");
    const contradicted = adjusted(plain, { spanM: 6, seatHeightM: 0.1, head: { angle: degrees(60) } });
    expect(contradicted.next).toBe("measure-again");
  });

  it("refuses what nobody can have measured, every field at once", () => {
    const outcome = adjust({
      request: plain,
      measured: { seatHeightM: 9, spanM: NaN, head: { angle: degrees(95) } },
    });
    expect(outcome.ok).toBe(false);
    if (outcome.ok) return;
    expect(outcome.refusals.map(({ field }) => field)).toEqual([
      "measured.spanM",
      "measured.head.angle",
      "measured.seatHeightM",
    ]);
  });

  it("refuses steps followed that nobody can have taken, with what was found before them", () => {
    const followed: Followed[] = [{ end: "head", action: "raise", cm: 0, measured: { seatHeightM: -3 } }];
    const outcome = adjust({ request: plain, measured: {}, followed });
    expect(outcome.ok ? [] : outcome.refusals.map(({ field }) => field)).toEqual([
      "followed.0.cm",
      "followed.0.measured.seatHeightM",
    ]);
  });

  it("takes 'too low' and 'too high' for a seat that nobody measured", () => {
    expect(adjusted(plain, { sits: "too-low" }).instruction?.action).toBe("take-in");
    expect(adjusted(plain, { sits: "too-high" }).instruction?.action).toBe("let-out");
    expect(adjusted(plain, { sits: "well" }).next).toBe("leave-it");
  });

  it("does not blame the straps for strained knees behind a taut ridgeline", () => {
    expect(adjusted(request(2.75), { knees: "strained" }).next).toBe("leave-it");
    const free = adjusted(plain, { knees: "strained" });
    expect(inDegrees(free.state.head.angle)).toBeGreaterThan(inDegrees(plan.state.head.angle) + 1);
  });

  it("remembers what was found before an instruction was followed", () => {
    const measured = { seatHeightM: plan.state.seatHeightM - 0.15, head: { angle: degrees(37) } };
    const first = adjusted(plain, measured);
    if (first.instruction === undefined) throw new Error("there is something to change");
    const remembered = adjusted(plain, {}, [{ ...first.instruction, measured }]);
    expect(remembered.state.seatHeightM).toBeCloseTo(first.predicted.seatHeightM, 3);
    expect(remembered.state.head.angle).toBeCloseTo(first.predicted.head.angle, 3);
  });

  it("never asks for a sling shorter than its shortest or longer than its longest", () => {
    const sling = request(2.75, { type: "whoopie-sling", minM: 0.45, maxM: 0.75 });
    const { state } = modelOf(sling).planned;
    const low = adjusted(sling, { seatHeightM: state.seatHeightM - 0.2 });
    const [was, will] = [low.state, low.predicted];
    expect(low.next).toBe("change");
    for (const end of ["head", "foot"] as const) {
      if (was[end].strapLengthM >= 0.45) expect(will[end].strapLengthM).toBeGreaterThanOrEqual(0.45 - 1e-6);
      else expect(will[end].strapLengthM).toBeGreaterThanOrEqual(was[end].strapLengthM - 1e-6);
    }
  });

  it("has the worked figure of the handbook", () => {
    const measured = { seatHeightM: 0.36, slides: "to-foot", head: { angle: degrees(34) } } as const;
    const { state, instruction, predicted, band } = adjusted(request(2.75), measured);
    expect(instruction).toEqual({ end: "foot", action: "take-in", cm: 9 });
    expect(state.footRaiseM).toBeCloseTo(0.13, 2);
    expect(inDegrees(state.foot.angle)).toBeCloseTo(34.9, 0);
    expect(band["head.angle"].map((angle) => Math.round((angle * 180) / Math.PI))).toEqual([31, 37]);
    expect(predicted.seatHeightM).toBeCloseTo(0.45, 2);
    expect(predicted.footRaiseM).toBeCloseTo(0.16, 2);
  });

  it("finds the true state when everything was measured", () => {
    fc.assert(
      fc.property(deviation(0.7), (off) => {
        const { state } = modelOf(plain).come(plus(AS_PLANNED, off));
        const found = adjusted(plain, measuredOf({ state })).state;
        expect(Math.abs(found.seatHeightM - state.seatHeightM)).toBeLessThan(0.02);
        expect(Math.abs(found.footRaiseM - state.footRaiseM)).toBeLessThan(0.03);
        expect(Math.abs(found.spanM - state.spanM)).toBeLessThan(0.03);
        expect(Math.abs(inDegrees(found.head.angle) - inDegrees(state.head.angle))).toBeLessThan(2.5);
      }),
      { seed: 1, numRuns: 30 },
    );
  });

  it("brings a hang right by few instructions, none of which leads past a limit that was kept", () => {
    const ridged = request(2.75);
    const sling = request(2.75, { type: "whoopie-sling", minM: 0.3, maxM: 1.5 });
    fc.assert(
      fc.property(deviation(1.2), fc.constantFrom(plain, ridged, sling), (off, input) => {
        const model = modelOf(input);
        const { followed, now, last } = followedThrough(input, plus(AS_PLANNED, off), measuredOf);
        expect(followed.length).toBeLessThan(7);
        expect(last).toMatchObject({ next: "leave-it", verdict: "clear" });
        const { state } = model.come(now);
        expect(Math.abs(state.seatHeightM - model.planned.state.seatHeightM)).toBeLessThan(0.07);
        expect(Math.abs(state.footRaiseM - model.planned.state.footRaiseM)).toBeLessThan(0.07);
        expect(Math.max(...overLimits(state, input).hard)).toBeLessThan(1);
      }),
      { seed: 1, numRuns: 60 },
    );
  });

  it("brings seat and foot end right for one person alone, with a tape, a hand and a feeling", () => {
    fc.assert(
      fc.property(deviation(1.2), fc.constantFrom(plain, request(2.75)), (off, input) => {
        const model = modelOf(input);
        const { followed, now, last } = followedThrough(input, plus(AS_PLANNED, off), alone(input));
        expect(followed.length).toBeLessThan(7);
        expect(last.next).toBe("leave-it");
        const { state } = model.come(now);
        expect(Math.abs(state.seatHeightM - model.planned.state.seatHeightM)).toBeLessThan(0.07);
        expect(state.footRaiseM).toBeGreaterThan(0.08);
        expect(state.footRaiseM).toBeLessThan(0.32);
      }),
      { seed: 1, numRuns: 40 },
    );
  });

  it("asks for the angles where the seat alone would go on and on, and comes to rest, noisy as the tape may be", () => {
    const { normal } = chanceFrom(3);
    let asked = 0;
    for (const input of [plain, request(2.75)]) {
      for (let run = 0; run < 20; run++) {
        const upTo1 = (): number => Math.max(-1, Math.min(1, normal()));
        const straps = { headStrapM: -0.12 * Math.abs(upTo1()), footStrapM: -0.12 * Math.abs(upTo1()) };
        const heights = { headHeightM: 0.05 * upTo1(), footHeightM: 0.05 * upTo1() };
        const seatAlone = ({ state }: Come): AsHung => ({
          seatHeightM: state.seatHeightM + 0.015 * normal(),
        });
        const start = plus(AS_PLANNED, { ...straps, ...heights });
        const { followed, last } = followedThrough(input, start, seatAlone);
        expect(followed.length).toBeLessThan(9);
        expect(last.next).toBe("leave-it");
        if (followed.some(({ measured }) => measured?.head?.angle !== undefined)) asked += 1;
      }
    }
    expect(asked).toBeGreaterThan(0);
  });

  it("tells a band that covers nine of ten, and is narrowed by what was found", () => {
    const model = modelOf(plain);
    const { normal } = chanceFrom(7);
    const hits = { seatHeightM: 0, footRaiseM: 0, "head.angle": 0, "foot.angle": 0 };
    const runs = 100;
    for (let run = 0; run < runs; run++) {
      const off = { ...AS_PLANNED };
      for (const name of ERROR_NAMES) off[name] = normal() * model.sizes[name];
      const { state } = model.come(off);
      const { band } = adjusted(plain, {
        seatHeightM: state.seatHeightM + 0.015 * normal(),
        head: { angle: radians(state.head.angle + degrees(2) * normal()) },
      });
      const truth = { ...state, "head.angle": state.head.angle, "foot.angle": state.foot.angle };
      for (const quantity of ["seatHeightM", "footRaiseM", "head.angle", "foot.angle"] as const) {
        const [low, high] = band[quantity];
        if (truth[quantity] >= low && truth[quantity] <= high) hits[quantity] += 1;
      }
    }
    for (const count of Object.values(hits)) {
      expect(count / runs).toBeGreaterThan(0.83);
      expect(count / runs).toBeLessThan(0.97);
    }
    const [open, found] = [adjusted(plain, {}), adjusted(plain, { head: { angle: plan.state.head.angle } })];
    const widthOf = ({ band }: Adjustment) => band["head.angle"][1] - band["head.angle"][0];
    expect(widthOf(found)).toBeLessThan(widthOf(open) / 2);
  });
});

/** Follows instructions until there is none; each must keep what limits were kept, as predicted. */
function followedThrough(
  input: HangInput,
  start: HangDeviation,
  measure: (come: Come) => AsHung,
): { readonly followed: readonly Followed[]; readonly now: HangDeviation; readonly last: Adjustment } {
  const model = modelOf(input);
  const followed: Followed[] = [];
  let now = start;
  for (;;) {
    const measured = measure(model.come(now));
    const { head, foot } = model.come(now).state;
    const first = adjusted(input, measured, followed);
    if (first.next === "measure-angles") {
      Object.assign(measured, { head: { angle: head.angle }, foot: { angle: foot.angle } });
    }
    const last = first.next === "measure-angles" ? adjusted(input, measured, followed) : first;
    expect(last.next).not.toBe("measure-angles");
    if (last.instruction === undefined || followed.length > 8) return { followed, now, last };
    const [before, after] = [overLimits(last.state, input), overLimits(last.predicted, input)];
    expect(leadsNotPast(before, after)).toBe(true);
    followed.push({ ...last.instruction, measured });
    now = plus(now, moveOf(last.instruction));
  }
}

/** Everything off at once, each by up to so many of its standard deviations. */
function deviation(most: number): fc.Arbitrary<Partial<HangDeviation>> {
  const { sizes } = modelOf(request());
  const share = fc.double({ min: -most, max: most, noNaN: true });
  return fc
    .array(share, { minLength: ERROR_NAMES.length, maxLength: ERROR_NAMES.length })
    .map((shares) =>
      Object.fromEntries(ERROR_NAMES.map((name, at) => [name, (shares[at] ?? 0) * sizes[name]])),
    );
}

/** All that a tape, a card and a helper can tell. */
function measuredOf({ state }: Pick<Come, "state">): AsHung {
  const { spanM, head, foot, seatHeightM, footRaiseM } = state;
  const of = ({ strapHeightM, angle }: typeof head) => ({ strapHeightM, angle });
  return { spanM, head: of(head), foot: of(foot), seatHeightM, footRaiseM };
}

/** What one person tells alone: the span, the seat, which way one slides, how the ridgeline feels. */
function alone(input: HangInput): (come: Come) => AsHung {
  const { weightN } = modelOf(input);
  return ({ state: { spanM, seatHeightM, footRaiseM }, ridgeN }) => {
    const share = ridgeN / weightN;
    const felt = share > 0.45 ? "tight" : share > 0.05 ? "bends" : "slack";
    return {
      spanM,
      seatHeightM,
      slides: footRaiseM < 0.1 ? "to-foot" : footRaiseM > 0.3 ? "to-head" : "no",
      ...(input.hammock.ridgelineM === undefined ? {} : { ridgeline: felt }),
    };
  };
}
