import { describe, expect, it } from "vitest";
import { degrees, radians } from "../../quantity/angle.ts";
import { webbingOf } from "../../statics/strap-parts.ts";
import { at, camp } from "../testing/camp.fixture.ts";
import { onlyBerth, planned } from "../testing/planned.fixture.ts";
import type { HangState } from "./adjust-types.ts";
import { hungModel, type HungModel } from "./hung-model.ts";
import { keepsAll, leadsNotPast, overLimits } from "./over-limits.ts";

const { request, planned: plan } = model();

function model(): HungModel {
  const berth = onlyBerth(planned(camp().trees(at(0, 0), at(4.2, 0)).sleepers(1).build()));
  if (berth.request === undefined) throw new Error("a planned berth says what it was asked for");
  const built = hungModel(berth.request);
  if (!built.ok) throw new Error(JSON.stringify(built.refusals));
  return built.value;
}

function headAt(angle: number): HangState {
  const { head } = plan.state;
  return { ...plan.state, head: { ...head, angle: radians(angle) } };
}

describe("overLimits", () => {
  it("finds nothing over in a plan", () => {
    expect(keepsAll(overLimits(plan.state, request))).toBe(true);
    expect(keepsAll(overLimits(plan.state, request, plan.state))).toBe(true);
  });

  it("ends the length of a strap where the webbing ends that there is", () => {
    const { head, foot } = plan.state;
    const short = Math.min(
      webbingOf(request, request.head, head.strapLengthM),
      webbingOf(request, request.foot, foot.strapLengthM),
    );
    const owning = (ownedM: number) => ({ ...request, suspension: { ...request.suspension, ownedM } });
    expect(overLimits(plan.state, owning(short + 1)).walls.every((wall) => wall === 0)).toBe(true);
    expect(overLimits(plan.state, owning(short - 0.1)).walls.some((wall) => wall > 4.9)).toBe(true);
  });

  it("counts an angle at its limit as kept, and as too near where instructions aim", () => {
    const edge = headAt(request.limits.angleMin);
    expect(keepsAll(overLimits(edge, request))).toBe(true);
    const wished = overLimits(edge, request, plan.state);
    expect(Math.max(...wished.hard)).toBeCloseTo(1, 6);
  });

  it("aims no further inside than the plan itself hangs", () => {
    const edge = headAt(request.limits.angleMin);
    expect(keepsAll(overLimits(edge, request, edge))).toBe(true);
  });

  it("lets limits that are broken be traded, never one that is kept", () => {
    const none = { walls: [0, 0], hard: [0, 0], soft: [] };
    const broken = { walls: [0, 0], hard: [3, 1], soft: [] };
    expect(leadsNotPast(broken, { ...none, hard: [2, 1.5] })).toBe(true);
    expect(leadsNotPast(broken, { ...none, hard: [3, 2] })).toBe(false);
    expect(leadsNotPast({ ...none, hard: [3, 0] }, { ...none, hard: [1, 0.1] })).toBe(false);
    expect(leadsNotPast(none, { ...none, walls: [0.1, 0] })).toBe(false);
    expect(leadsNotPast(none, none)).toBe(true);
  });

  it("counts one tolerance for each degree past a limit", () => {
    const over = overLimits(headAt(request.limits.angleMax + degrees(2)), request);
    expect(Math.max(...over.hard)).toBeCloseTo(2, 6);
  });
});
