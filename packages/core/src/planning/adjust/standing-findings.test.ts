import { describe, expect, it } from "vitest";
import { degrees } from "../../quantity/angle.ts";
import { at, camp, hammock, webbing } from "../testing/camp.fixture.ts";
import { onlyBerth, planned } from "../testing/planned.fixture.ts";
import type { HangState } from "./adjust-types.ts";
import { adjust } from "./adjust.ts";
import { standingFindings } from "./standing-findings.ts";

function berthWith(ratedLoadN: number) {
  const wood = camp()
    .trees(at(0, 0, { condition: "not-looked-at" }), at(4.2, 0))
    .sleepers(1)
    .kit(hammock("h"), webbing("w", { ratedLoadN }))
    .build();
  const berth = onlyBerth(planned(wood));
  if (berth.request === undefined) throw new Error("a planned berth says what it was asked for");
  return { berth, request: berth.request };
}

function pulledBy(ratio: number): { verdicts: Record<string, string>; rules: string[] } {
  const { berth, request } = berthWith(1000);
  const found = adjust({ request, measured: {} });
  if (!found.ok) throw new Error(JSON.stringify(found.refusals));
  const { state } = found.value;
  const head = { ...state.head, pullN: berth.hang.head.pullN * ratio };
  const now: HangState = { ...state, head };
  const standing = standingFindings(berth.findings, berth.hang, now);
  return {
    rules: standing.map(({ finding }) => finding.rule),
    verdicts: Object.fromEntries(
      standing.map(({ finding, verdict }) => [`${finding.rule} ${finding.subject}`, verdict]),
    ),
  };
}

describe("standingFindings", () => {
  it("keeps trees and kit, and leaves out what was found anew", () => {
    const { rules } = pulledBy(1);
    expect(rules).toEqual(
      expect.arrayContaining(["tree.looked-at", "tree.trunk-least", "part.working-load"]),
    );
    expect(rules.filter((rule) => /^(?:seat|foot|low-point|strap\.angle)/.test(rule))).toEqual([]);
  });

  it("compares a rated load with the pull as it is now, at that end", () => {
    const key = (end: string): string => `part.working-load berth/1/${end}-strap`;
    expect(pulledBy(1).verdicts[key("head")]).toBe("clear");
    expect(pulledBy(1.2).verdicts[key("head")]).toBe("look-again");
    expect(pulledBy(1.4).verdicts[key("head")]).toBe("do-not-hang");
    expect(pulledBy(1.4).verdicts[key("foot")]).toBe("clear");
  });

  it("looks anew whether a strap slips that hangs steeper than planned", () => {
    const { berth, request } = berthWith(1000);
    const found = adjust({ request, measured: {} });
    if (!found.ok) throw new Error(JSON.stringify(found.refusals));
    const { state } = found.value;
    const slip = {
      rule: "strap.slip",
      sense: "at-most",
      demand: 0.55,
      limit: 0.86,
      unit: "1",
      verdict: "clear",
    } as const;
    const both = ["head", "foot"].map((end) => ({ ...slip, subject: `berth/1/${end}-strap` }));
    const steep = { ...state, head: { ...state.head, angle: degrees(42) } };
    const verdicts = (now: HangState) =>
      standingFindings(both, berth.hang, now).map(({ verdict }) => verdict);
    expect(verdicts(steep)).toEqual(["look-again", "clear"]);
    expect(verdicts(state)).toEqual(["clear", "clear"]);
  });

  it("never makes a verdict better", () => {
    const { berth, request } = berthWith(750);
    const found = adjust({ request, measured: {} });
    if (!found.ok) throw new Error(JSON.stringify(found.refusals));
    const { state } = found.value;
    const eased = { ...state, head: { ...state.head, pullN: 1 }, foot: { ...state.foot, pullN: 1 } };
    const standing = standingFindings(berth.findings, berth.hang, eased);
    const loads = standing.filter(({ finding }) => finding.rule === "part.working-load");
    expect(loads.map(({ verdict }) => verdict)).toEqual(["do-not-hang", "do-not-hang"]);
  });
});
