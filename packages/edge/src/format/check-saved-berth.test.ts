import { describe, expect, it } from "vitest";
import { exampleCamp, planOf } from "../examples.fixture.ts";
import { adjustFile } from "./adjust-file.ts";
import { checkSavedBerth, type SavedCheck } from "./check-saved-berth.ts";
import { planFile, writePlan } from "./plan-file.ts";
import type { PlanFile } from "./plan-schema.ts";
import { readPlan } from "./read-plan.ts";

function savedPlan(): PlanFile {
  const read = readPlan(writePlan(planFile(planOf(exampleCamp("demo").camp))));
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  return read.value;
}

const plan = savedPlan();

function checked(id: string, found: Parameters<typeof checkSavedBerth>[2]): SavedCheck {
  const check = checkSavedBerth(plan, id, found);
  if (!check.ok) throw new Error(JSON.stringify(check.refusals));
  return check.value;
}

describe("checkSavedBerth", () => {
  it("finds every berth of a saved plan as planned where nothing was measured", () => {
    for (const { id, hang } of plan.berths) {
      const { adjustment } = checked(id, { measured: {} }).check;
      expect(adjustment.next).toBe("leave-it");
      expect(adjustment.off).toEqual([]);
      expect(adjustment.state.seatHeightM).toBeCloseTo(hang.seat_height_m, 6);
      expect(adjustment.state.head.strapHeightM).toBeCloseTo(hang.head.strap_height_m, 6);
      expect(adjustment.state.foot.strapLengthM).toBeCloseTo(hang.foot.strap_length_m, 6);
      expect(adjustment.state.head.pullN / hang.head.pull_n).toBeCloseTo(1, 6);
    }
  });

  it("refuses a berth that is not there, and a plan that does not say what was asked for", () => {
    const absent = checkSavedBerth(plan, "99", { measured: {} });
    expect(absent).toMatchObject({ ok: false, refusals: [{ field: "--berth", got: "99" }] });
    const [first, ...others] = plan.berths;
    if (first === undefined) throw new Error("the example has berths");
    const { request, ...older } = first;
    expect(request).toBeDefined();
    const old = checkSavedBerth({ ...plan, berths: [older, ...others] }, first.id, { measured: {} });
    expect(old).toMatchObject({ ok: false, refusals: [{ field: "berths[0].request" }] });
  });
});

describe("adjustFile", () => {
  it("has state, off, instruction, predicted and verdict, in metres, degrees and newtons", () => {
    const { berth, check } = checked("3", { measured: { seatHeightM: 0.36, slides: "to-foot" } });
    const file = adjustFile(berth.id, check);
    const { adjustment } = check;
    expect(file.instruction).toEqual(adjustment.instruction);
    expect(file.state.seat_height_m).toBeCloseTo(adjustment.state.seatHeightM, 9);
    expect(file.state.head.angle_deg).toBeCloseTo((adjustment.state.head.angle * 180) / Math.PI, 9);
    expect(file.predicted.seat_height_m).toBeGreaterThan(file.state.seat_height_m);
    expect(file.off.map(({ quantity }) => quantity)).toContain("seat_height_m");
    expect(Object.keys(file.band)).toEqual([
      "head.angle_deg",
      "foot.angle_deg",
      "seat_height_m",
      "foot_raise_m",
    ]);
    expect(file.verdict).toBe(check.verdict);
    expect(file).not.toHaveProperty("symptom");
  });

  it("leaves the instruction out where there is nothing to change", () => {
    const { berth, check } = checked("3", { measured: {} });
    expect(adjustFile(berth.id, check)).not.toHaveProperty("instruction");
  });

  it("tells a symptom's figures in degrees and metres, and its advice by key", () => {
    const { berth, check } = checked("3", { measured: {}, symptom: "slides-to-foot" });
    const { symptom } = adjustFile(berth.id, check);
    const slope = symptom?.figures.find(({ figure }) => figure === "foot-slope");
    expect(slope).toMatchObject({ unit: "deg", low: 3, high: 5 });
    expect(symptom?.advice).toEqual(["lie-diagonally"]);
    expect(JSON.parse(JSON.stringify(symptom))).toEqual(symptom);
  });
});
