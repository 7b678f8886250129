import type { Adjustment, HangInput } from "@nightspan/core";
import type { SavedCheck } from "../format/check-saved-berth.ts";
import { CAUTIONS, DEFERS_TO } from "./cautions.ts";
import type { Names } from "./names.ts";
import { plainText } from "./plain-text.ts";
import { sayDoubts, sayNext, sayOff, sayState } from "./say-adjust.ts";
import { sayFinding, saySavedFinding } from "./say-finding.ts";
import { sayAdvice, sayFigure, saySymptom } from "./say-symptom.ts";
import { sayVerdict } from "./say-verdict.ts";
import { capital, section, type SummaryLine } from "./summary-line.ts";

/** The as-hung check in words: the verdict, one thing to change, how it then hangs, and why. */
export function adjustLines({ berth, request, check }: SavedCheck): readonly SummaryLine[] {
  const { adjustment, symptom, treesLookedAt } = check;
  const { done, of } = treesLookedAt;
  const { head_tree, foot_tree, sleeper } = berth;
  return [
    { kind: "verdict", text: `${capital(sayVerdict(check.verdict))}.` },
    { kind: "beside", text: `Trees looked at: ${done} of ${of}.` },
    {
      kind: "beside",
      text: plainText(`Berth ${berth.id}, ${sleeper}, from ${head_tree} to ${foot_tree}, as it hangs now.`),
    },
    ...section(HEADINGS[adjustment.next] ?? "One thing to change", changeLines(check, request)),
    ...section("As it most likely hangs", [
      sayState(adjustment.state),
      ...adjustment.off.map(sayOff),
      ...sayDoubts(adjustment, request),
    ]),
    ...(symptom === undefined
      ? []
      : [
          ...section(saySymptom(symptom.symptom), symptom.figures.map(sayFigure)),
          ...section("What helps besides", symptom.advice.map(sayAdvice)),
        ]),
    ...section("Do not hang", findingLines(check, "do-not-hang")),
    ...section("Look again", findingLines(check, "look-again")),
    ...section("Cautions", [...CAUTIONS.map(({ text }) => text), DEFERS_TO]),
  ];
}

/** Where there is nothing to change by what was found. */
const HEADINGS: Readonly<Partial<Record<Adjustment["next"], string>>> = {
  "measure-again": "Measure again",
  "plan-again": "Plan again",
  "measure-angles": "Measure first",
};

function changeLines({ adjustment }: SavedCheck["check"], { suspension }: HangInput): readonly string[] {
  const next = sayNext(adjustment, suspension.type);
  if (adjustment.instruction === undefined) return [next];
  return [next, `Then sit again, and measure again. Likely: ${sayState(adjustment.predicted)}`];
}

function findingLines(
  { adjustment, standing }: SavedCheck["check"],
  verdict: "do-not-hang" | "look-again",
): readonly string[] {
  const now = adjustment.findings
    .filter((finding) => finding.verdict === verdict)
    .map((finding) => sayFinding(finding, IDS));
  const stood = standing
    .filter((one) => one.verdict === verdict)
    .flatMap((one) => saySavedFinding({ ...one.finding, verdict }, IDS) ?? []);
  return [...new Set([...now, ...stood])];
}

/** A saved plan knows ids alone. */
const IDS: Names = { tree: plainText, sleeper: plainText };
