import type { Plan, PlannedBerth, Unplaced } from "@nightspan/core";
import type { Names } from "./names.ts";
import { length } from "./quantities.ts";
import { sayAlternatives } from "./say-alternatives.ts";
import { sayCost } from "./say-cost.ts";
import { sayFailedPairs } from "./say-failed-pairs.ts";
import { sayFinding } from "./say-finding.ts";
import { sayHangNote } from "./say-hang-note.ts";
import { sayProof } from "./say-proof.ts";
import { provenLines } from "./store-lines.ts";
import { sayVerdict } from "./say-verdict.ts";
import { whyFitLines, whyNightLines } from "./why-night-lines.ts";
import { supplySteps, type SupplyStep } from "./supply-steps.ts";

/** How the answer was found, and how sure it is to be the best; then each berth's findings, the worst first. */
export function whyLines(plan: Plan, names: Names): readonly string[] {
  return [
    ...supplySteps(plan).map(stepLine),
    ...(plan.placed === plan.asked ? [] : sayProof(plan)),
    ...(plan.dealing === undefined ? [] : provenLines(plan.dealing)),
    ...plan.unplaced.flatMap((one) => [...pairLines(one, names), ...insteadLines(one, names)]),
    sayCost(plan),
    ...costLines(plan),
    ...whyFitLines(plan.fit),
    ...plan.findings.map((finding) => `${sayVerdict(finding.verdict)}: ${sayFinding(finding, names)}`),
    ...plan.berths.flatMap((berth) => berthLines(berth, names)),
  ];
}

function berthLines(berth: PlannedBerth, names: Names): readonly string[] {
  const { id, spanM, hang, findings, alternatives } = berth;
  const lines = [
    ...hang.notes.map(sayHangNote),
    ...findings.map((finding) => `${sayVerdict(finding.verdict)}: ${sayFinding(finding, names)}`),
    ...whyNightLines(berth),
    ...(alternatives === undefined ? [] : sayAlternatives(alternatives, names)),
  ];
  return [`Berth ${id}, ${length(spanM)}:`, ...lines.map((line) => `  ${line}`)];
}

/** What each term of a layout's cost comes to, a line each. */
export function costLines({ costTerms = [] }: Plan): readonly string[] {
  return costTerms.map(
    ({ name, weight, measure, cost }) => `  ${name}: ${measure.toFixed(4)} × ${weight} = ${cost.toFixed(4)}.`,
  );
}

function stepLine({ text, lost }: SupplyStep): string {
  return lost.length === 0 ? `${text}.` : `${text}; lost: ${lost.map((loss) => loss.text).join(", ")}.`;
}

function pairLines(one: Unplaced, names: Names): readonly string[] {
  const pairs = sayFailedPairs(one, names);
  if (pairs.length === 0) return [];
  return [`Pairs that nearly serve ${names.sleeper(one.sleeper)}:`, ...pairs.map((pair) => `  ${pair}`)];
}

function insteadLines({ sleeper, alternatives = [] }: Unplaced, names: Names): readonly string[] {
  if (alternatives.length === 0) return [];
  const lines = alternatives.flatMap((one) => sayAlternatives(one, names));
  return [`What else could be done for ${names.sleeper(sleeper)}:`, ...lines.map((line) => `  ${line}`)];
}
