import { describe, expect, it } from "vitest";
import { handMarks } from "./hand-marks.ts";
import { handRanges } from "./hand-ranges.ts";
import { hungModel } from "./adjust/hung-model.ts";
import { keepsAll, overLimits } from "./adjust/over-limits.ts";
import { stateBy } from "./marked-state.ts";
import { at, camp, hammock, webbing } from "./testing/camp.fixture.ts";
import { onlyBerth, planned } from "./testing/planned.fixture.ts";

const KEYS = ["headHeightM", "footOverHeadM", "headStrapM", "footStrapM"] as const;

function berth(spanM: number) {
  const kit = [hammock("h", { ridgelineM: 2.75 }), webbing("w")];
  const wood = camp()
    .trees(at(0, 0), at(spanM, 0))
    .sleepers(1)
    .kit(...kit);
  return onlyBerth(planned(wood.build()));
}

describe("handRanges", () => {
  it.each([3.6, 3.8, 4.2, 4.6, 5])(
    "hold the marks, keep every limit, and break one a centimetre on, at %s m",
    (spanM) => {
      const found = berth(spanM);
      const { hang, request } = found;
      if (request === undefined) throw new Error("a planned berth says what it was asked for");
      const [marks, ranges, model] = [handMarks(found), handRanges(found), hungModel(request)];
      if (!model.ok) throw new Error("the hang was served");
      const keeps = (key: (typeof KEYS)[number], value: number): boolean => {
        const state = stateBy(model.value, hang, { ...marks, [key]: value });
        return state !== undefined && keepsAll(overLimits(state, request));
      };
      for (const key of KEYS) {
        const [low, high] = ranges[key] ?? [NaN, NaN];
        expect(low).toBeLessThanOrEqual(marks[key]);
        expect(high).toBeGreaterThanOrEqual(marks[key]);
        for (const value of [low, high]) expect(keeps(key, value)).toBe(true);
        if (marks[key] - low < 0.295) expect(keeps(key, low - 0.01)).toBe(false);
        if (high - marks[key] < 0.295) expect(keeps(key, high + 0.01)).toBe(false);
      }
    },
  );

  it("are the plan's own, cut to whole centimetres, where nobody knows what was asked for", () => {
    const { hang } = berth(4.2);
    const range = hang.ok["head.strapLengthM"];
    if (range === undefined) throw new Error("a range is told");
    const [low = 0, high = 0] = handRanges({ hang: { ...hang } }).headStrapM ?? [];
    expect(low - range.low).toBeGreaterThanOrEqual(-1e-6);
    expect(low - range.low).toBeLessThan(0.01);
    expect(range.high - high).toBeLessThan(0.01);
  });
});
