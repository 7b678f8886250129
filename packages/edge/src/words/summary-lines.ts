import type { Camp, Plan, PlanRepair } from "@nightspan/core";
import { berthTable } from "./berth-table.ts";
import { CAUTIONS, DEFERS_TO } from "./cautions.ts";
import { lookLines, refusedLines } from "./look-lines.ts";
import { namesOf, type Names } from "./names.ts";
import { fitLines } from "./fit-lines.ts";
import { arriveAndStopLines, timelineLines } from "./night-lines.ts";
import { plainText } from "./plain-text.ts";
import { repairLines } from "./repair-lines.ts";
import { sayAssumptions } from "./say-assumptions.ts";
import { sayBottleneck } from "./say-bottleneck.ts";
import { sayCounterfactuals } from "./say-counterfactual.ts";
import { sayRefusedPin } from "./say-failed-pairs.ts";
import { sayDealtAnew } from "./say-dealt-anew.ts";
import { sayProof } from "./say-proof.ts";
import { sayPairsOut, sayUnplaced } from "./say-unplaced.ts";
import { spareLines } from "./spare-lines.ts";
import { cutLines, shortageLines } from "./store-lines.ts";
import { tarpLines } from "./tarp-lines.ts";
import { section, verdictLines, type SummaryLine } from "./summary-line.ts";
import { robustLine } from "./say-robust.ts";
import { whyLines } from "./why-lines.ts";
import { youthLackLines } from "./youth-lack-lines.ts";

export interface SummaryOptions {
  /** Tell also the proof, every assumption and every finding. */
  readonly why: boolean;
  /** Columns there are for a row; endless where silent. */
  readonly columns?: number;
  /** What the plan mends, where it is a repair. */
  readonly repair?: PlanRepair;
}

/**
 * The plan in words, in the order of doing: verdict, children who lack a warm layer, what to look at on the ground, one line a berth, tarps, what the
 * store lacks, arrive-by and stop lines, the night by the clock, what to cut, assumptions that would change the answer,
 * cautions. Nobody's weight and age and no pull is told; water and degrees only to who asks why.
 */
export function summaryLines(plan: Plan, camp: Camp, options: SummaryOptions): readonly SummaryLine[] {
  const names = namesOf(camp);
  const lines = [
    ...verdictLines(plan, headWords(plan)),
    ...section("Before anybody sets out", youthLackLines(plan, camp)),
    ...(plan.fit === undefined ? berthParts(plan, camp, names, options) : fitParts(plan, names)),
    ...section("Kit short, and kept free", shortageLines(plan, names)),
    ...section("Arrive and stop", arriveAndStopLines(plan, camp)),
    ...section("The night", timelineLines(plan, camp)),
    ...section("To cut", cutLines(plan.cuts)),
    ...section("Assumed", sayAssumptions(plan.defaultsUsed, names, options.why ? "all" : "counted")),
    ...(options.why ? section("Why", whyLines(plan, names), "row") : []),
    ...section("Cautions", [...CAUTIONS.map(({ text }) => text), DEFERS_TO]),
  ];
  return lines.map(({ kind, text }) => ({ kind, text: plainText(text) }));
}

/** Who hangs where, what to look at there, and why anybody does not. */
function berthParts(
  plan: Plan,
  camp: Camp,
  names: Names,
  { columns, repair }: SummaryOptions,
): readonly SummaryLine[] {
  return [
    ...(repair === undefined ? [] : section("Repair", repairLines(repair, names))),
    ...section("Look on the ground", lookLines(plan, names)),
    ...section("Do not hang", refusedLines(plan, names)),
    ...section("Berths", berthTable(plan, camp, columns), "row"),
    ...section("Kept free", spareLines(plan, camp, names)),
    ...section("Dealt anew", sayDealtAnew(plan, names)),
    ...section("Tarps", tarpLines(plan), "row"),
    ...section("Without a berth", unplacedLines(plan, camp, names)),
    ...section(
      "Pins not kept",
      (plan.pinsRefused ?? []).map((pin) => sayRefusedPin(pin, names)),
    ),
    ...explained(plan, camp),
  ];
}

/** Where there is no ground: what each takes out of the store. */
function fitParts(plan: Plan, names: Names): readonly SummaryLine[] {
  return [
    ...section("Look again", lookLines(plan, names)),
    ...section("Do not hang", refusedLines(plan, names)),
    ...section("Out of the store", fitLines(plan.fit, names)),
  ];
}

function headWords(plan: Plan): string {
  if (plan.fit !== undefined) return "No ground is given: people are fitted out from the store.";
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
