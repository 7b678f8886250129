import { byRule, kept, worstFirst, worstVerdict, type Finding, type PlannedBerth } from "@nightspan/core";
import { describe, expect, it } from "vitest";
import { exampleCamp, planOf } from "../examples.fixture.ts";
import { cardReason } from "./card-reason.ts";
import { namesOf } from "./names.ts";

const { camp } = exampleCamp("demo");
const names = namesOf(camp);

/** A berth of the demo plan with only these findings. */
function berthWith(...findings: readonly Finding[]): PlannedBerth {
  const [berth] = planOf(camp).berths;
  if (berth === undefined) throw new Error("no berth");
  return {
    ...berth,
    findings: [...findings].sort(worstFirst),
    verdict: worstVerdict(findings.map((finding) => finding.verdict)),
  };
}

const about = { subject: "berth/1", source: "house-rules", sense: "at-least", limit: 3, unit: "m" } as const;
const near = (demand: number) => kept({ ...about, rule: "span.least", demand }, "do-not-hang");
const unseen = byRule(
  { ...about, rule: "tree.looked-at", subject: "tree/C5", demand: 0, limit: 1, unit: "1" },
  "look-again",
);
const stepped = byRule({ ...about, rule: "span.stepped", demand: 0.3 }, "look-again");

describe("the reason on a card", () => {
  it("is the first finding that carries the verdict, as the end of a sentence", () => {
    expect(cardReason(berthWith(near(2.5), unseen), names)).toBe(
      "the trees stand 2.50\u00a0m apart: less than the 3.00\u00a0m needed",
    );
    expect(cardReason(berthWith(near(3.5), stepped), names)).toBe(
      "the span is not measured well enough. Step it out before you tie",
    );
  });

  it("is none where the berth is clear, or a tree is unseen: the card says that by itself", () => {
    expect(cardReason(berthWith(near(3.5)), names)).toBeUndefined();
    expect(cardReason(berthWith(near(3.5), stepped, unseen), names)).toBeUndefined();
  });
});
