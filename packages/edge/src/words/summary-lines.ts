import { worstFirst, type Camp, type Finding, type Plan } from "@nightspan/core";
import { berthTable } from "./berth-table.ts";
import { CAUTIONS, DEFERS_TO } from "./cautions.ts";
import { namesOf, type Names } from "./names.ts";
import { plainText } from "./plain-text.ts";
import { speed } from "./quantities.ts";
import { sayAssumptions } from "./say-assumptions.ts";
import { sayFinding } from "./say-finding.ts";
import { sayLookedAt, sayNotChecked, sayVerdict } from "./say-verdict.ts";
import { whyLines } from "./why-lines.ts";

/** One line of the summary, and what it is, so that a terminal can set it off. */
export interface SummaryLine {
  readonly kind: "verdict" | "beside" | "heading" | "item" | "row" | "blank";
  readonly text: string;
}

export interface SummaryOptions {
  /** Tell also the proof, every assumption and every finding that is not clear. */
  readonly why: boolean;
}

/**
 * The plan in words, in the order of doing: verdict, what to look at on the ground, one line a berth, stop lines,
 * assumptions that would change the answer, cautions. Nobody's weight and no pull is told.
 */
export function summaryLines(plan: Plan, camp: Camp, { why }: SummaryOptions): readonly SummaryLine[] {
  const names = namesOf(camp);
  const lines = [
    ...verdictLines(plan),
    ...section("Look on the ground", lookLines(plan, names)),
    ...section("Do not hang", refusedLines(plan, names)),
    ...section("Berths", berthTable(plan, camp), "row"),
    ...section("Without a berth", unplacedLines(plan, names)),
    ...section("Arrive and stop", stopLines(camp)),
    ...section("Assumed", sayAssumptions(plan.defaultsUsed, why)),
    ...(why ? section("Why", whyLines(plan, names)) : []),
    ...section("Cautions", [...CAUTIONS.map(({ text }) => text), DEFERS_TO]),
  ];
  return lines.map(({ kind, text }) => ({ kind, text: plainText(text) }));
}

function section(
  title: string,
  texts: readonly string[],
  kind: "item" | "row" = "item",
): readonly SummaryLine[] {
  if (texts.length === 0) return [];
  return [
    { kind: "blank", text: "" },
    { kind: "heading", text: title },
    ...texts.map((text) => ({ kind, text })),
  ];
}

function verdictLines(plan: Plan): readonly SummaryLine[] {
  const word = sayVerdict(plan.verdict);
  const berths = `${plan.placed} of ${plan.asked} have a berth`;
  const besides = [sayLookedAt(plan.treesLookedAt), sayNotChecked(plan.notChecked)];
  return [
    { kind: "verdict", text: `${capital(word)}. ${berths}.` },
    ...besides.flatMap((text): SummaryLine[] =>
      text === undefined ? [] : [{ kind: "beside", text: `${capital(text)}.` }],
    ),
  ];
}

/** What a person must look at or measure before anybody lies down, each named once. */
function lookLines(plan: Plan, names: Names): readonly string[] {
  const open = everyFinding(plan).filter(({ verdict }) => verdict === "look-again");
  const unseen = open.filter(({ rule }) => rule === "tree.looked-at" || rule === "tree.above-looked-at");
  const tags = unique(unseen.map(({ subject }) => names.tree(subject.slice("tree/".length))));
  const first =
    tags.length === 0 ? [] : [`Nobody has looked at ${tags.join(", ")}: trunk, roots and what is above.`];
  const others = open.filter((finding) => !unseen.includes(finding) && finding.rule !== "strap.reach");
  return [...first, ...grouped(others, names)];
}

/** Sentences that are said of several berths are told once, with the berths' numbers before them. */
function grouped(findings: readonly Finding[], names: Names): readonly string[] {
  const berthsOf = new Map<string, string[]>();
  for (const finding of findings) {
    const sentence = sayFinding(finding, names);
    const [kind, berth = ""] = finding.subject.split("/");
    const list = berthsOf.get(sentence) ?? [];
    if (kind === "berth" && !list.includes(berth)) list.push(berth);
    berthsOf.set(sentence, list);
  }
  return [...berthsOf].map(([sentence, berths]) => {
    if (berths.length === 0) return sentence;
    return `${berths.length === 1 ? "Berth" : "Berths"} ${berths.join(", ")}: ${sentence}`;
  });
}

function refusedLines(plan: Plan, names: Names): readonly string[] {
  return grouped(
    everyFinding(plan).filter(({ verdict }) => verdict === "do-not-hang"),
    names,
  );
}

function unplacedLines(plan: Plan, names: Names): readonly string[] {
  return plan.unplaced.map(({ sleeper, because }) => {
    const reasons = [...because].sort(worstFirst).map((finding) => sayFinding(finding, names));
    return [`${names.sleeper(sleeper)}: sleep on the ground.`, ...unique(reasons)].join(" ");
  });
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

function everyFinding(plan: Plan): readonly Finding[] {
  return [...plan.findings, ...plan.berths.flatMap(({ findings }) => findings)];
}

function unique(texts: readonly string[]): readonly string[] {
  return [...new Set(texts)];
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
