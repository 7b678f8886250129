import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byRule, compare, kept, worstFirst, worstVerdict } from "./finding.ts";
import type { Comparison, Verdict } from "./finding.ts";

const pull: Comparison = {
  rule: "part.working-load",
  source: "maker-plate",
  subject: "berth/2/head-strap",
  sense: "at-most",
  demand: 800,
  limit: 1000,
  unit: "N",
};

const trunk: Comparison = {
  rule: "tree.trunk-least",
  source: "house-rules",
  subject: "tree/K12",
  sense: "at-least",
  demand: 0.24,
  limit: 0.2,
  unit: "m",
};

describe("a comparison", () => {
  it("takes limit over demand for at-most", () => {
    expect(compare(pull)).toMatchObject({ margin: 0.25, verdict: "clear" });
  });

  it("takes demand over limit for at-least", () => {
    expect(compare(trunk).margin).toBeCloseTo(0.2, 12);
  });

  it("asks for a second look up to a tenth", () => {
    expect(compare({ ...pull, demand: 950 }).verdict).toBe("look-again");
    expect(compare({ ...pull, demand: 1000 }).verdict).toBe("look-again");
  });

  it("says do not hang as soon as the limit is passed", () => {
    expect(compare({ ...pull, demand: 1001 }).verdict).toBe("do-not-hang");
  });

  it("has no margin where the denominator is zero", () => {
    expect(compare({ ...pull, demand: 0 }).margin).toBeNull();
  });

  it("never calls a demand that is not a number clear", () => {
    expect(compare({ ...pull, demand: Number.NaN }).verdict).toBe("do-not-hang");
    expect(kept({ ...pull, demand: Number.NaN }, "look-again").verdict).toBe("look-again");
  });

  it("has no second-look zone where a limit is met by intention", () => {
    expect(kept({ ...pull, demand: 1000 }, "do-not-hang").verdict).toBe("clear");
    expect(kept({ ...trunk, demand: 0.19 }, "do-not-hang").verdict).toBe("do-not-hang");
  });

  it("lets a rule set the verdict", () => {
    expect(byRule(trunk, "look-again").verdict).toBe("look-again");
  });
});

describe("the worst of a list", () => {
  const verdict = fc.constantFrom<Verdict>("clear", "look-again", "do-not-hang");

  it("is the one that a sort by worst puts first", () => {
    fc.assert(
      fc.property(fc.array(verdict, { minLength: 1 }), (verdicts) => {
        const sorted = verdicts.map((each) => byRule(pull, each)).sort(worstFirst);
        expect(worstVerdict(verdicts)).toBe(sorted[0]?.verdict);
      }),
      { seed: 1 },
    );
  });

  it("is clear for an empty list", () => {
    expect(worstVerdict([])).toBe("clear");
  });
});

describe("a wider limit", () => {
  it("never makes a verdict worse", () => {
    const positive = fc.double({ min: 1e-3, max: 1e6, noNaN: true });
    const rank: Verdict[] = ["clear", "look-again", "do-not-hang"];
    fc.assert(
      fc.property(positive, positive, positive, (demand, limit, more) => {
        const before = compare({ ...pull, demand, limit }).verdict;
        const after = compare({ ...pull, demand, limit: limit + more }).verdict;
        expect(rank.indexOf(after)).toBeLessThanOrEqual(rank.indexOf(before));
      }),
      { seed: 2 },
    );
  });
});
