import { hang, type Hang } from "@nightspan/core";
import { describe, expect, it } from "vitest";
import { exampleCamp, planOf } from "../examples.fixture.ts";
import { planFile, writePlan } from "./plan-file.ts";
import { readPlan } from "./read-plan.ts";
import { readRequest, requestFile } from "./request-file.ts";

const plan = planOf(exampleCamp("demo").camp);

function figures({ head, foot, seatHeightM, lowPointM, footRaiseM }: Hang): readonly number[] {
  const of = ({ strapHeightM, strapLengthM, angle, pullN }: Hang["head"]) => [
    strapHeightM,
    strapLengthM,
    angle,
    pullN,
  ];
  return [...of(head), ...of(foot), seatHeightM, lowPointM, footRaiseM];
}

describe("the request of a berth in the plan file", () => {
  const saved = readPlan(writePlan(planFile(plan)));
  const berths = saved.ok ? saved.value.berths : [];

  it("stands in every berth", () => {
    expect(berths.length).toBe(plan.berths.length);
    expect(berths.every(({ request }) => request !== undefined)).toBe(true);
  });

  it("asks for the same hang when it is read back, without the camp", () => {
    for (const [index, { request, span_m }] of berths.entries()) {
      const planned = plan.berths[index];
      if (request === undefined || planned === undefined) throw new Error("a berth is missing");
      const again = hang(readRequest(request, span_m));
      if (!again.ok) throw new Error(JSON.stringify(again.refusals));
      const [was, is] = [figures(planned.hang), figures(again.value)];
      was.forEach((value, at) => expect((is[at] ?? NaN) / value).toBeCloseTo(1, 8));
    }
  });

  it("reads back as it was written", () => {
    for (const { request, spanM } of plan.berths) {
      if (request === undefined) throw new Error("a berth is missing");
      const file = requestFile(request);
      expect(requestFile(readRequest(file, spanM))).toEqual(file);
    }
  });

  it("tells the window of spans and what ends it, around the berth's own span unless the tarp is too long", () => {
    const ends = berths.flatMap(({ span_m, span_window }) => {
      if (span_window === undefined) throw new Error("a window is missing");
      const { low, high, binds_low, binds_high } = span_window;
      expect(high).toBeGreaterThanOrEqual(span_m);
      if (binds_low !== "tarp-ridge") expect(low).toBeLessThanOrEqual(span_m);
      return [binds_low, binds_high];
    });
    expect(ends).toContain("span-most");
    expect(ends.some((limit) => limit !== "span-most" && limit !== "span-least")).toBe(true);
  });
});
