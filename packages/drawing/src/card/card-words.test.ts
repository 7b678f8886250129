import type { Finding } from "@nightspan/core";
import { describe, expect, it } from "vitest";
import { berthFacts } from "../berth/berth-facts.ts";
import { harrowmere } from "../fixture/harrowmere.fixture.ts";
import { planByHand } from "../fixture/plan-by-hand.fixture.ts";
import { withBerth } from "../fixture/variants.fixture.ts";
import { plainLabels } from "../words/plain-labels.ts";
import { lookedAtText, notLookedText, plateText, wakeText } from "./card-words.ts";

const camp = harrowmere();
const plan = planByHand(camp, [
  ["ngozi", "K11", "K12"],
  ["nira", "A8", "A9"],
  ["soren", "B6", "B7"],
]);
const facts = (id: string) => berthFacts(plan, camp, id);

function finding(rule: Finding["rule"], verdict: Finding["verdict"]): Finding {
  const common = { source: "maker-plate", subject: "berth-3", sense: "at-most", unit: "N" } as const;
  return { ...common, rule, demand: 800, limit: 1000, margin: 0.25, verdict };
}

function plate(...findings: Finding[]): string {
  return plainLabels(plateText(berthFacts(withBerth(plan, "3", { findings }), camp, "3")));
}

describe("what a card says", () => {
  it("names the tree nobody has looked at, and counts those somebody has", () => {
    const unseen = notLookedText(facts("1"));
    expect(unseen === undefined ? "" : plainLabels(unseen)).toBe("nobody has looked at K12");
    expect(plainLabels(lookedAtText(facts("1"), plan, camp))).toBe("Trees looked at: 1 of 2, Ngozi, 14 May");
    expect(notLookedText(facts("3"))).toBeUndefined();
  });

  it("sends everybody to a leader, and a leader to another", () => {
    expect(plainLabels(wakeText(facts("3"), plan, camp))).toContain("wake नीरा, berth 2");
    expect(plainLabels(wakeText(facts("2"), plan, camp))).toContain("wake Ngozi, berth 1");
  });

  it("says pulls are within the plate only where they were compared with one", () => {
    expect(plate()).toContain("not checked");
    expect(plate(finding("part.working-load", "clear"))).toContain("within");
    expect(
      plate(finding("part.working-load", "clear"), finding("part.strength-unknown", "look-again")),
    ).toContain("not checked");
    expect(plate(finding("part.breaking-load", "do-not-hang"))).toContain("over");
  });
});
