import { describe, expect, it } from "vitest";
import type { Hammock, Suspension } from "../../plan/kit.ts";
import { degrees } from "../../quantity/angle.ts";
import type { HangInput } from "../../statics/hang-types.ts";
import type { AsHung } from "../adjust/adjust-types.ts";
import { at, camp, hammock, webbing } from "../testing/camp.fixture.ts";
import { onlyBerth, planned } from "../testing/planned.fixture.ts";
import { symptom } from "./symptom.ts";
import { SYMPTOMS, type Symptom, type SymptomAnswer, type SymptomFigureKey } from "./symptom-types.ts";

function request(cloth: Partial<Hammock> = {}, straps: Partial<Suspension> = {}): HangInput {
  const wood = camp().trees(at(0, 0), at(4.2, 0)).sleepers(1).kit(hammock("h", cloth), webbing("w", straps));
  const found = onlyBerth(planned(wood.build())).request;
  if (found === undefined) throw new Error("a planned berth says what it was asked for");
  return found;
}

function told(name: Symptom, of: HangInput, measured: AsHung = {}): SymptomAnswer {
  const answer = symptom({ request: of, symptom: name, measured });
  if (!answer.ok) throw new Error(JSON.stringify(answer.refusals));
  return answer.value;
}

function figure(key: SymptomFigureKey, { figures }: SymptomAnswer): number {
  const found = figures.find((one) => one.figure === key);
  if (found === undefined) throw new Error(`no figure ${key}`);
  return found.value;
}

const FREE = request();
const RIDGED = request({ ridgelineM: 2.75 });
const SLING: Partial<Suspension> = { type: "whoopie-sling", minM: 0.3, maxM: 1.5 };

describe("symptom", () => {
  it("answers every symptom with figures and advice, each figure once", () => {
    for (const of of [FREE, RIDGED]) {
      for (const name of SYMPTOMS) {
        const { figures, advice, symptom: said } = told(name, of);
        expect(said).toBe(name);
        expect(advice.length).toBeGreaterThan(0);
        expect(new Set(figures.map((one) => one.figure)).size).toBe(figures.length);
        for (const { value } of figures) expect(Number.isFinite(value)).toBe(true);
      }
    }
  });

  it("is refused as the hang and the measurements would be", () => {
    const bad = symptom({ request: { ...FREE, spanM: 40 }, symptom: "calf-ridge" });
    expect(bad.ok ? [] : bad.refusals.map(({ field }) => field)).toEqual(["spanM"]);
    const misread = symptom({ request: FREE, symptom: "calf-ridge", measured: { footRaiseM: 5 } });
    expect(misread.ok ? [] : misread.refusals.map(({ field }) => field)).toEqual(["measured.footRaiseM"]);
  });
});

describe("slides to the foot end", () => {
  it("tells raise and slope, and brings the foot end up against the head end", () => {
    const answer = told("slides-to-foot", RIDGED);
    const { state, predicted, next } = answer.adjustment;
    const slope = Math.asin(state.footRaiseM / 2.75);
    expect(figure("foot-slope", answer)).toBeCloseTo(slope, 9);
    expect(slope).toBeLessThan(degrees(4));
    expect(next).toBe("change");
    expect(predicted.footRaiseM).toBeGreaterThan(state.footRaiseM + 0.02);
  });

  it("believes a tape more than a feeling", () => {
    const raised = told("slides-to-foot", RIDGED, { footRaiseM: 0.22, seatHeightM: 0.45 });
    expect(figure("foot-raise", raised)).toBeGreaterThan(0.17);
    expect(raised.adjustment.next).toBe("leave-it");
    expect(raised.advice).toContain("lie-diagonally");
  });
});

describe("calf ridge", () => {
  it("asks for a longer hammock where the cloth is short for the sleeper", () => {
    expect(told("calf-ridge", request({ lengthM: 2.8 })).advice[0]).toBe("longer-hammock");
    expect(told("calf-ridge", FREE).advice).not.toContain("longer-hammock");
  });

  it("lets the ridgeline out where that unfolds the body, and the straps be behind it", () => {
    const answer = told("calf-ridge", RIDGED);
    expect(answer.advice).toContain("ridgeline-longer");
    expect(figure("bend-ridgeline-longer", answer)).toBeLessThan(figure("bend", answer));
    expect(answer.advice).not.toContain("straps-flatter");
    expect(figure("bend-flatter", answer)).toBeCloseTo(figure("bend", answer), 2);
  });

  it("takes droopy straps up where there is no ridgeline", () => {
    const answer = told("calf-ridge", FREE);
    expect(answer.advice).toContain("straps-flatter");
    expect(answer.adjustment.instruction?.action).toBe("take-in");
  });
});

describe("shoulder squeeze", () => {
  it("is the other way about: shorter ridgeline, steeper straps", () => {
    const ridged = told("shoulder-squeeze", RIDGED);
    expect(ridged.advice[0]).toBe("ridgeline-shorter");
    expect(figure("cloth-pull-ridgeline-shorter", ridged)).toBeLessThan(figure("cloth-pull", ridged));
    const free = told("shoulder-squeeze", FREE);
    expect(free.advice[0]).toBe("straps-steeper");
    expect(free.adjustment.instruction?.action).toBe("let-out");
  });

  it("tells a cloth pull that without a ridgeline is the sideways pull", () => {
    const answer = told("shoulder-squeeze", FREE);
    const { pullN, angle } = answer.adjustment.state.head;
    const weightN = (FREE.sleeper.massKg + FREE.hammock.massKg) * 9.80665;
    expect(figure("cloth-pull", answer)).toBeCloseTo((pullN * Math.cos(angle)) / weightN, 6);
  });
});

describe("bottoms out overnight", () => {
  it("settles by about the creep of each side over the sine of the angle", () => {
    for (const of of [FREE, RIDGED, request({}, SLING)]) {
      const answer = told("bottoms-out", of);
      const expected = figure("creep", answer) / Math.sin(degrees(30));
      expect(figure("settle", answer) / expected).toBeGreaterThan(0.85);
      expect(figure("settle", answer) / expected).toBeLessThan(1.15);
      const drop = figure("low-point-evening", answer) - figure("low-point-morning", answer);
      expect(drop).toBeCloseTo(figure("settle", answer), 12);
      const [first, later] = [figure("settle-ten-minutes", answer), figure("settle-overnight", answer)];
      expect(first + later).toBeCloseTo(figure("settle", answer), 12);
      expect(Math.min(first, later)).toBeGreaterThan(0);
    }
  });

  it("creeps less on slings than on webbing", () => {
    const [webbed, slung] = [told("bottoms-out", FREE), told("bottoms-out", request({}, SLING))];
    expect(figure("creep", slung)).toBeLessThan(figure("creep", webbed) / 2);
  });

  it("looks at knots and trees where it came down by more than creep", () => {
    const { seatHeightM } = told("bottoms-out", FREE).adjustment.state;
    const far = told("bottoms-out", FREE, { seatHeightM: seatHeightM - 0.25 });
    expect(far.advice[0]).toBe("look-at-knots-and-trees");
    expect(far.adjustment.instruction?.action).toBe("take-in");
    const little = told("bottoms-out", FREE, { seatHeightM: seatHeightM - 0.02 });
    expect(little.advice).not.toContain("look-at-knots-and-trees");
  });
});

describe("a strap slips", () => {
  it("presses inward less, the steeper it is: tan 30° is 0.58, tan 40° 0.84", () => {
    const at30 = told("strap-slips", FREE, { head: { angle: degrees(30) }, foot: { angle: degrees(30) } });
    const at40 = told("strap-slips", FREE, { head: { angle: degrees(40) }, foot: { angle: degrees(40) } });
    expect(figure("down-over-inward", at30)).toBeGreaterThan(0.53);
    expect(figure("down-over-inward", at40)).toBeGreaterThan(figure("down-over-inward", at30) + 0.1);
    expect(at40.adjustment.next).toBe("change");
  });

  it("asks for so many turns more that the last of them grips", () => {
    const slung = told("strap-slips", request({}, SLING));
    expect(slung.advice[0]).toBe("turns-more");
    expect(figure("turns-more", slung)).toBe(2);
    expect(figure("grip-one-turn-more", slung)).toBeLessThan(figure("down-over-inward", slung));
  });

  it("takes it for evidence that it slipped: a turn more, also where the figures would grip", () => {
    const free = told("strap-slips", FREE);
    expect(figure("grip", free)).toBeGreaterThan(figure("down-over-inward", free));
    expect(figure("turns-more", free)).toBe(1);
    expect(free.advice[0]).toBe("turns-more");
  });
});

describe("tips on entry", () => {
  it("lowers a seat that is high for the legs", () => {
    const { seatHeightM } = told("bottoms-out", FREE).adjustment.state;
    const high = told("tips-on-entry", FREE, { seatHeightM: seatHeightM + 0.12 });
    expect(figure("seat-over-knee", high)).toBeGreaterThan(1);
    expect(high.adjustment.instruction?.action).toBe("let-out");
    expect(high.adjustment.predicted.seatHeightM).toBeLessThan(high.adjustment.state.seatHeightM - 0.05);
  });

  it("leaves a seat that is right, and says how to sit down", () => {
    const right = told("tips-on-entry", FREE, { seatHeightM: 0.45 });
    expect(figure("seat-over-knee", right)).toBeCloseTo(0.45 / (0.285 * 1.75), 1);
    expect(right.adjustment.next).toBe("leave-it");
    expect(right.advice).toEqual(["sit-in-the-middle", "spread-the-cloth"]);
  });
});
