import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { degrees, inDegrees } from "../../quantity/angle.ts";
import { ERROR_NAMES, type HangDeviation } from "../../statics/hang-band.ts";
import type { HangInput } from "../../statics/hang-types.ts";
import { at, camp, hammock, webbing } from "../testing/camp.fixture.ts";
import { onlyBerth, planned } from "../testing/planned.fixture.ts";
import { adjust } from "./adjust.ts";
import type { Adjustment, AsHung, Instruction } from "./adjust-types.ts";
import { findBerthRequest } from "./berth-request.ts";
import { AS_PLANNED, hungModel, moveOf, plus, type HungModel } from "./hung-model.ts";

/** The one berth of a camp: 4.2 m, the foot tree 20 cm higher. */
function request(ridgelineM?: number): HangInput {
  const wood = camp()
    .trees(at(0, 0, { elevationM: 0 }), at(4.2, 0, { elevationM: 0.2 }))
    .sleepers(1)
    .kit(hammock("h", ridgelineM === undefined ? {} : { ridgelineM }), webbing("w"))
    .build();
  const found = findBerthRequest(wood, onlyBerth(planned(wood)));
  if (found === undefined) throw new Error("the berth is of this camp");
  return found;
}

function modelOf(input: HangInput): HungModel {
  const model = hungModel(input);
  if (!model.ok) throw new Error(JSON.stringify(model.refusals));
  return model.value;
}

function adjusted(input: HangInput, measured: AsHung, followed: readonly Instruction[] = []): Adjustment {
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
    expect(found?.spanM).toBe(berth.spanM);
    const { state } = modelOf(found ?? plain).planned;
    expect(state.head.strapHeightM).toBeCloseTo(berth.hang.head.strapHeightM, 9);
    expect(findBerthRequest(wood, { ...berth, headTree: "elsewhere" })).toBeUndefined();
  });

  it("changes nothing where nothing was measured, or all is as planned", () => {
    const { seatHeightM, footRaiseM, head } = plan.state;
    for (const measured of [{}, { seatHeightM, footRaiseM, head: { angle: head.angle } }]) {
      const found = adjusted(plain, measured);
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

  it("finds the true state when everything was measured", () => {
    fc.assert(
      fc.property(deviation(0.7), (off) => {
        const { state } = modelOf(plain).come(plus(AS_PLANNED, off));
        const found = adjusted(plain, measuredOf(state)).state;
        expect(Math.abs(found.seatHeightM - state.seatHeightM)).toBeLessThan(0.02);
        expect(Math.abs(found.footRaiseM - state.footRaiseM)).toBeLessThan(0.03);
        expect(Math.abs(found.spanM - state.spanM)).toBeLessThan(0.03);
        expect(Math.abs(inDegrees(found.head.angle) - inDegrees(state.head.angle))).toBeLessThan(2.5);
      }),
      { seed: 1, numRuns: 30 },
    );
  });

  it("brings a hang right by one instruction after the other, whatever was off", () => {
    fc.assert(
      fc.property(deviation(1.2), fc.constantFrom(undefined, 2.75), (off, ridgelineM) => {
        const input = request(ridgelineM);
        const model = modelOf(input);
        const followed: Instruction[] = [];
        let now = plus(AS_PLANNED, off);
        for (let round = 0; round < 6; round++) {
          const { instruction } = adjusted(input, measuredOf(model.come(now).state), followed);
          if (instruction === undefined) break;
          followed.push(instruction);
          now = plus(now, moveOf(instruction));
        }
        const { state } = model.come(now);
        expect(followed.length).toBeLessThan(6);
        expect(Math.abs(state.seatHeightM - model.planned.state.seatHeightM)).toBeLessThan(0.08);
        expect(Math.abs(state.footRaiseM - model.planned.state.footRaiseM)).toBeLessThan(0.08);
      }),
      { seed: 1, numRuns: 30 },
    );
  });
});

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

function measuredOf({ spanM, head, foot, seatHeightM, footRaiseM }: Adjustment["state"]): AsHung {
  const of = ({ strapHeightM, angle }: typeof head) => ({ strapHeightM, angle });
  return { spanM, head: of(head), foot: of(foot), seatHeightM, footRaiseM };
}
