import type { Finding, Plan } from "@nightspan/core";
import type { Names } from "./names.ts";
import { sayFinding } from "./say-finding.ts";

/** What a person must look at or measure before anybody lies down, each named once. */
export function lookLines(plan: Plan, names: Names): readonly string[] {
  const open = everyFinding(plan).filter(({ verdict }) => verdict === "look-again");
  const unseen = open.filter(({ rule }) => rule === "tree.looked-at" || rule === "tree.above-looked-at");
  const tags = [...new Set(unseen.map(({ subject }) => names.tree(subject.slice("tree/".length))))];
  const first =
    tags.length === 0 ? [] : [`Nobody has looked at ${tags.join(", ")}: trunk, roots and what is above.`];
  const others = open.filter((finding) => !unseen.includes(finding) && !ELSEWHERE.has(finding.rule));
  return [...first, ...grouped(others, plan, names)];
}

/** Told in a place of their own: halves of warmth in the line of their berth. */
const ELSEWHERE: ReadonlySet<string> = new Set([
  "strap.reach",
  "pin.refused",
  "layout.no-berth",
  "under.enough",
  "over.enough",
  "warmth.no-under",
  "warmth.no-over",
]);

/** Every comparison that says: do not hang. */
export function refusedLines(plan: Plan, names: Names): readonly string[] {
  const refused = everyFinding(plan).filter(({ verdict }) => verdict === "do-not-hang");
  return grouped(refused, plan, names);
}

/** A sentence that holds for several berths is told once, with their numbers before it. */
function grouped(findings: readonly Finding[], { berths }: Plan, names: Names): readonly string[] {
  const berthsOf = new Map<string, string[]>();
  for (const finding of findings) {
    const sentence = sayFinding(finding, names);
    const [kind, berth = ""] = finding.subject.split("/");
    const list = berthsOf.get(sentence) ?? [];
    if (kind === "berth" && !list.includes(berth)) list.push(berth);
    berthsOf.set(sentence, list);
  }
  return [...berthsOf].map(([sentence, ids]) => {
    if (ids.length === 0 || berths.length < 2) return sentence;
    return `${ids.length === 1 ? "Berth" : "Berths"} ${ids.join(", ")}: ${sentence}`;
  });
}

function everyFinding(plan: Plan): readonly Finding[] {
  return [...plan.findings, ...plan.berths.flatMap(({ findings }) => findings)];
}
