import type { Camp, Plan, PlanRepair } from "@nightspan/core";
import { berthTable } from "./berth-table.ts";
import { CAUTIONS, DEFERS_TO } from "./cautions.ts";
import { lookLines, refusedLines } from "./look-lines.ts";
import { namesOf, type Names } from "./names.ts";
import { plainText } from "./plain-text.ts";
import { speed } from "./quantities.ts";
import { repairLines } from "./repair-lines.ts";
import { sayAssumptions } from "./say-assumptions.ts";
import { sayBottleneck } from "./say-bottleneck.ts";
import { sayCounterfactuals } from "./say-counterfactual.ts";
import { sayRefusedPin } from "./say-failed-pairs.ts";
import { sayProof } from "./say-proof.ts";
import { sayPairsOut, sayUnplaced } from "./say-unplaced.ts";
import { spareLines } from "./spare-lines.ts";
import { section, verdictLines, type SummaryLine } from "./summary-line.ts";
import { robustLine } from "./say-robust.ts";
import { whyLines } from "./why-lines.ts";

export interface SummaryOptions {
  /** Tell also the proof, every assumption and every finding. */
  readonly why: boolean;
  /** Columns there are for a row; endless where silent. */
  readonly columns?: number;
  /** What the plan mends, where it is a repair. */
  readonly repair?: PlanRepair;
}

/**
 * The plan in words, in the order of doing: verdict, what to look at on the ground, one line a berth, stop lines,
 * assumptions that would change the answer, cautions. Nobody's weight and no pull is told.
 */
export function summaryLines(
  plan: Plan,
  camp: Camp,
  { why, columns, repair }: SummaryOptions,
): readonly SummaryLine[] {
  const names = namesOf(camp);
  const lines = [
    ...verdictLines(plan, headWords(plan)),
    ...(repair === undefined ? [] : section("Repair", repairLines(repair, names))),
    ...section("Look on the ground", lookLines(plan, names)),
    ...section("Do not hang", refusedLines(plan, names)),
    ...section("Berths", berthTable(plan, camp, columns), "row"),
    ...section("Kept free", spareLines(plan, camp, names)),
    ...section("Without a berth", unplacedLines(plan, camp, names)),
    ...section(
      "Pins not kept",
      (plan.pinsRefused ?? []).map((pin) => sayRefusedPin(pin, names)),
    ),
    ...explained(plan, camp),
    ...section("Arrive and stop", stopLines(camp)),
    ...section("Assumed", sayAssumptions(plan.defaultsUsed, names, why ? "all" : "counted")),
    ...(why ? section("Why", whyLines(plan, names), "row") : []),
    ...section("Cautions", [...CAUTIONS.map(({ text }) => text), DEFERS_TO]),
  ];
  return lines.map(({ kind, text }) => ({ kind, text: plainText(text) }));
}

function headWords(plan: Plan): string {
  const have = `${plan.placed} of ${plan.asked} have a berth.`;
  return [have, ...sayProof(plan), ...robustLine(plan)].join(" ");
}

/** What would give more people a berth, and what stands in the way, where that was worked out. */
function explained({ counterfactuals, bottleneck }: Plan, camp: Camp): readonly SummaryLine[] {
  return [
    ...(counterfactuals === undefined
      ? []
      : section("What would change it", sayCounterfactuals(counterfactuals, camp))),
    ...(bottleneck === undefined ? [] : section("What decides it", sayBottleneck(bottleneck, camp))),
  ];
}

function unplacedLines(plan: Plan, camp: Camp, names: Names): readonly string[] {
  if (plan.unplaced.length === 0) return [];
  const people = plan.unplaced.map((unplaced) => {
    const reasons = sayUnplaced(unplaced, names);
    return [`${names.sleeper(unplaced.sleeper)}: sleep on the ground.`, ...reasons].join(" ");
  });
  return [...people, ...sayPairsOut(camp)];
}

function stopLines({ night, ground }: Camp): readonly string[] {
  const stop = night?.stopGustMS;
  const wind =
    stop === undefined
      ? "Stop at gusts of: not set. Agree it before dark."
      : `Stop at gusts of ${speed(stop)}: everybody gets up and goes to the ground fallback.`;
  const muster = ground?.muster?.note;
  const fallback = ground?.fallback?.note;
  return [
    "Arrive by: not checked. Choose trees in daylight.",
    wind,
    ...(muster === undefined ? [] : [`Muster: ${muster}.`]),
    fallback === undefined
      ? "Ground fallback: none named. Agree one first."
      : `Ground fallback: ${fallback}.`,
  ];
}
