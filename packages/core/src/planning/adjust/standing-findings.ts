import { LOOK_AGAIN_MARGIN, worstVerdict, type Verdict } from "../../outcome/finding.ts";
import type { HangState } from "./adjust-types.ts";

/** What is read of a planned finding; those of a saved plan serve as well. */
export interface PlannedFinding {
  readonly rule: string;
  readonly subject: string;
  readonly sense: "at-most" | "at-least";
  readonly demand: number;
  readonly limit: number;
  readonly unit: string;
  readonly verdict: Verdict;
}

export interface Standing<F extends PlannedFinding> {
  readonly finding: F;
  /** As it is now: never better than planned. */
  readonly verdict: Verdict;
}

/** The pulls of the planned hang. */
export interface PlannedPulls {
  readonly head: { readonly pullN: number };
  readonly foot: { readonly pullN: number };
}

/**
 * The findings of a planned berth that still hold where it hangs: trees, surroundings, strength. Those of the hang's own
 * heights, lengths and angles are left out, since what was found on the spot stands in their place. Whatever compares
 * a pull is compared again with the pull as it is now; that can only make a verdict worse.
 *
 * Shapes   findings, the worst first → the same or fewer, in order
 * Error    a demand in newtons or pascals is taken to grow as the pull does
 */
export function standingFindings<F extends PlannedFinding>(
  findings: readonly F[],
  planned: PlannedPulls,
  state: HangState,
): readonly Standing<F>[] {
  const grown = {
    head: state.head.pullN / planned.head.pullN,
    foot: state.foot.pullN / planned.foot.pullN,
  };
  return findings
    .filter(({ rule }) => !OF_THE_HANG.some((start) => rule.startsWith(start)))
    .map((finding) => ({
      finding,
      verdict: finding.rule === "strap.slip" ? slipNow(finding, state) : verdictNow(finding, grown),
    }));
}

const OF_THE_HANG = [
  "strap.reach",
  "strap.height",
  "strap.angle",
  "sling.",
  "webbing.",
  "seat.",
  "low-point.",
  "foot.",
  "cap.",
  "hang.",
];

/** A steeper strap presses inward less: down over inward is tan θ of the hang as it is now. */
function slipNow({ subject, limit, verdict }: PlannedFinding, { head, foot }: HangState): Verdict {
  const { angle } = subject.endsWith("/head-strap") ? head : foot;
  return worstVerdict([verdict, Math.tan(angle) > limit ? "look-again" : "clear"]);
}

function verdictNow(finding: PlannedFinding, grown: Readonly<Record<"head" | "foot", number>>): Verdict {
  const { subject, sense, demand, limit, unit, verdict } = finding;
  if (sense !== "at-most" || !(unit === "N" || unit === "Pa")) return verdict;
  const ratio = subject.endsWith("/head-strap")
    ? grown.head
    : subject.endsWith("/foot-strap")
      ? grown.foot
      : Math.max(grown.head, grown.foot);
  const margin = limit / (demand * Math.max(1, ratio)) - 1;
  if (margin < 0) return worstVerdict([verdict, isKit(finding) ? "do-not-hang" : "look-again"]);
  return worstVerdict([verdict, margin <= LOOK_AGAIN_MARGIN && isKit(finding) ? "look-again" : "clear"]);
}

/** Kit has plates; what is known of a trunk only ever asks for another look. */
function isKit({ rule }: PlannedFinding): boolean {
  return rule.startsWith("part.");
}
