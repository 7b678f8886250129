import type { Plan, SpareBerth } from "@nightspan/core";
import { describe, expect, it } from "vitest";
import { exampleCamp } from "../examples.fixture.ts";
import { namesOf } from "./names.ts";
import { spareLines } from "./spare-lines.ts";
import { supplySteps } from "./supply-steps.ts";

const { camp } = exampleCamp("demo");
const ids = camp.sleepers.map(({ id }) => id);

function spare(serves: readonly string[], but: Partial<SpareBerth> = {}): SpareBerth {
  const tags = { headTree: "B5", footTree: "B6", spanM: 4.2, stepItOut: false } as const;
  return { id: "S1", ...tags, serves, verdict: "look-again", findings: [], ...but };
}

function said(one: SpareBerth): string | undefined {
  return spareLines({ spares: [one] }, camp, namesOf(camp))[0];
}

describe("lines of berths kept free", () => {
  it("name the trees, and end with the verdict's own word", () => {
    expect(said(spare(ids))).toMatch(/^S1: .*B5.* to .*B6.*, 4\.20\sm\.\sServes everybody\. Look again\.$/);
    expect(said(spare(ids, { stepItOut: true }))).toContain(", step it out.");
  });

  it("name the fewer of those they serve and those they do not", () => {
    const [one = "", two = ""] = ids;
    const names = namesOf(camp);
    expect(said(spare(ids.slice(1)))).toContain(`Does not serve ${names.sleeper(one)}.`);
    expect(said(spare([one, two]))).toContain(`Serves ${names.sleeper(one)}, ${names.sleeper(two)}.`);
  });

  it("are counted at the end of the funnel", () => {
    const supply: Plan["supply"] = {
      trees: 9,
      usable: 9,
      pairs: 9,
      blockedBy: { stem: 0, "dead-tree": 0, overhead: 0, obstacle: 0, hang: 0 },
      berths: 9,
    };
    const last = (spares: readonly SpareBerth[]) =>
      supplySteps({ supply, placed: 2, asked: 2, spares }).at(-1)?.text;
    expect(last([spare(ids)])).toBe("2 of 2 have a berth, 1 kept free");
    expect(last([])).toBe("2 of 2 have a berth");
  });
});
