import { asHungCheck, degrees, SYMPTOMS, type FoundOnTheSpot } from "@nightspan/core";
import { describe, expect, it } from "vitest";
import { exampleCamp, planOf } from "../examples.fixture.ts";
import { checkSavedBerth } from "../format/check-saved-berth.ts";
import { planFile } from "../format/plan-file.ts";
import { adjustLines } from "./adjust-lines.ts";
import { sayDoubts, sayInstruction, sayNext, sayOff, sayState } from "./say-adjust.ts";
import { sayAdvice, sayFigure, saySymptom } from "./say-symptom.ts";
import { saySpanWindow } from "./say-span-window.ts";

const plan = planOf(exampleCamp("demo").camp);

function check(found: FoundOnTheSpot) {
  const berth = plan.berths[2];
  if (berth?.request === undefined) throw new Error("the example has a third berth");
  const { request, hang, findings } = berth;
  const answer = asHungCheck({ request, hang, findings }, found);
  if (!answer.ok) throw new Error(JSON.stringify(answer.refusals));
  return { ...answer.value, request };
}

function told(found: FoundOnTheSpot): readonly string[] {
  const answer = checkSavedBerth(planFile(plan), "3", found);
  if (!answer.ok) throw new Error(JSON.stringify(answer.refusals));
  return adjustLines(answer.value).map(({ text }) => text.replaceAll("\u00a0", " "));
}

describe("the one thing to change in words", () => {
  it("names the adjuster, the end, which way and how far", () => {
    const say = (...of: Parameters<typeof sayInstruction>) => sayInstruction(...of).replaceAll("\u00a0", " ");
    expect(say({ end: "head", action: "let-out", cm: 8 }, "whoopie-sling")).toBe(
      "Let out the head sling by 8 cm.",
    );
    expect(say({ end: "foot", action: "take-in", cm: 12 }, "tied-webbing")).toBe(
      "Take in the foot strap by 12 cm.",
    );
    expect(say({ end: "foot", action: "raise", cm: 3 }, "whoopie-sling")).toBe(
      "Move the foot strap 3 cm up its trunk.",
    );
    expect(say({ end: "head", action: "lower", cm: 3 }, "tied-webbing")).toBe(
      "Move the head strap 3 cm down its trunk.",
    );
  });

  it("says to leave it, or to hang it anew, where there is none", () => {
    const { adjustment } = check({ measured: {} });
    expect(sayNext(adjustment, "tied-webbing")).toBe("Leave it as it is.");
    expect(sayNext({ ...adjustment, next: "hang-anew" }, "tied-webbing")).toContain("hang it anew");
  });
});

describe("the as-hung check in words", () => {
  it("tells the verdict, trees looked at, one change, and how it hangs", () => {
    const lines = told({ measured: { seatHeightM: 0.36, slides: "to-foot" } });
    expect(lines[1]).toMatch(/^Trees looked at: \d of 2\.$/);
    const at = lines.indexOf("One thing to change");
    expect(lines[at + 1]).toMatch(/^(?:Let out|Take in|Move) .* by \d+ cm\.$/);
    expect(lines).toContain("As it most likely hangs");
    expect(lines.some((line) => line.startsWith("The seat comes above the ground by 36 cm, planned"))).toBe(
      true,
    );
    expect(lines).toContain("Cautions");
  });

  it("never tells a weight or a pull", () => {
    for (const symptom of [undefined, ...SYMPTOMS]) {
      const lines = told({ measured: { seatHeightM: 0.3 }, ...(symptom === undefined ? {} : { symptom }) });
      expect(lines.filter((line) => /\d\s?(?:kg|N|kN)\b/.test(line))).toEqual([]);
      expect(lines.filter((line) => /\b(?:safe|passes|OK)\b/.test(line))).toEqual([]);
    }
  });

  it("asks for what is not known, the angle first, then seat and foot end", () => {
    const unmeasured = check({ measured: { seatHeightM: 0.49 } });
    expect(sayDoubts(unmeasured.adjustment, unmeasured.request)[0]).toContain(
      "Measure the angle of both straps",
    );
    const angles = check({ measured: { head: { angle: degrees(29) }, foot: { angle: degrees(31) } } });
    const lie = sayDoubts(angles.adjustment, angles.request).map((line) => line.replaceAll("\u00a0", " "));
    expect(lie.some((line) => /^Measure the seat above the ground: .* cm is allowed\.$/.test(line))).toBe(
      true,
    );
    expect(lie.some((line) => line.startsWith("Measure how far the foot end is above"))).toBe(true);
    const measured = check({
      measured: {
        head: { angle: degrees(29) },
        foot: { angle: degrees(31) },
        seatHeightM: 0.49,
        footRaiseM: 0.2,
      },
    });
    expect(sayDoubts(measured.adjustment, measured.request)).toEqual([]);
  });

  it("gives no instruction where measurements contradict one another, or the trees stand elsewhere", () => {
    const absurd = told({ measured: { seatHeightM: 1.2, head: { angle: degrees(45), strapHeightM: 1 } } });
    expect(absurd[absurd.indexOf("Measure again") + 1]).toMatch(/^These measurements do not fit together/);
    const far = told({ measured: { spanM: 7 } });
    expect(far[far.indexOf("Plan again") + 1]).toContain("plan again with what you measured");
    for (const line of [...absurd, ...far]) expect(line).not.toMatch(/^(?:Take in|Let out|Move) /);
  });

  it("says a state and what is off in the words of the sit", () => {
    const { adjustment } = check({ measured: {} });
    expect(sayState(adjustment.state)).toMatch(
      /^Seat \d+.cm above the ground, foot end \d+.cm above head end/,
    );
    const low = sayState({ ...adjustment.state, footRaiseM: -0.04 }).replaceAll("\u00a0", " ");
    expect(low).toContain("foot end 4 cm below head end");
    const off = sayOff({ quantity: "spanM", planned: 4, found: 4.25 }).replaceAll("\u00a0", " ");
    expect(off).toBe("The trees stand apart by 4.25 m, planned 4.00 m.");
  });

  it("has words for every symptom, figure and advice", () => {
    for (const symptom of SYMPTOMS) {
      const answer = check({ measured: { seatHeightM: 0.2 }, symptom });
      expect(saySymptom(symptom)).toMatch(/^[A-Z]/);
      const said = [
        ...(answer.symptom?.figures ?? []).map(sayFigure),
        ...(answer.symptom?.advice ?? []).map(sayAdvice),
      ];
      expect(said.length).toBeGreaterThan(1);
      for (const sentence of said) expect(sentence).toMatch(/^[A-Z].*\.$/);
    }
    expect(sayFigure({ figure: "turns-more", value: 5, unit: "1" })).toContain("No number of turns");
  });
});

describe("the window of spans in words", () => {
  it("rounds inwards, and says what ends it at either side", () => {
    const ends = { bindsLow: "sling-shortest", bindsHigh: "strap-reach" } as const;
    const say = (low: number, high: number) =>
      saySpanWindow({ low, high, ...ends }).replaceAll("\u00a0", " ");
    expect(say(3.36, 4.99)).toBe(
      "3.4 to 4.9 m apart: nearer, the strap or sling is too long even at its shortest; farther, a strap would come beyond reach.",
    );
    expect(say(4.01, 4.08)).toMatch(/^about 4\.0 m apart/);
    expect(say(3, 5)).toMatch(/^3\.0 to 5\.0 m apart/);
  });
});
