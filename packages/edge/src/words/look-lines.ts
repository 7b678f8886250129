import type { Finding, Plan } from "@nightspan/core";
import type { Names } from "./names.ts";
import { sayFinding } from "./say-finding.ts";

/** What a person must look at or measure before anybody lies down, each named once. */
export function lookLines(plan: Plan, names: Names): readonly string[] {
  const open = everyFinding(plan).filter(({ verdict }) => verdict === "look-again");
  const unseen = open.filter(({ rule }) => rule === "tree.looked-at" || rule === "tree.above-looked-at");
  const trees = [...new Set(unseen.map(({ subject }) => subject.slice("tree/".length)))];
  const others = open.filter((finding) => !unseen.includes(finding) && !ELSEWHERE.has(finding.rule));
  return [...unseenLines(trees, plan, names), ...grouped(others, plan, names)];
}

/** Trees nobody has looked at, and those whose look does not count on this day. */
function unseenLines(trees: readonly string[], plan: Plan, names: Names): readonly string[] {
  const before = trees.filter((id) => names.seenOn?.(id) !== undefined);
  const never = trees.filter((id) => !before.includes(id));
  return [
    ...inParts("Nobody has looked at", never, plan, names),
    ...inParts("Look again on the day, for an earlier look does not count:", before, plan, names),
  ];
}

/** One line where the tags are few; else a line for every ten berths, which lie near one another. */
function inParts(lead: string, trees: readonly string[], { berths }: Plan, names: Names): readonly string[] {
  if (trees.length === 0) return [];
  const told = (ids: readonly string[]): string => ids.map((id) => names.tree(id)).join(", ");
  const what = "trunk, roots and what is above.";
  if (trees.length <= MOST_TAGS) {
    return [lead.endsWith(":") ? `${lead} ${told(trees)}.` : `${lead} ${told(trees)}: ${what}`];
  }
  const parts = Array.from({ length: Math.ceil(berths.length / TEN) }, (_, part) => {
    const some = berths.slice(part * TEN, part * TEN + TEN);
    const theirs = new Set(some.flatMap(({ headTree, footTree }) => [headTree, footTree]));
    return { some, ids: trees.filter((id) => theirs.has(id)) };
  });
  const rest = trees.filter((id) => !parts.some(({ ids }) => ids.includes(id)));
  return [
    `${lead.replace(/:$/, "")} ${trees.length} trees: ${what}`,
    ...parts.flatMap(({ some, ids }) =>
      ids.length === 0 ? [] : [`  ${berthNumbers(some.map(({ id }) => id))}: ${told(ids)}.`],
    ),
    ...(rest.length === 0 ? [] : [`  Others: ${told(rest)}.`]),
  ];
}

const MOST_TAGS = 24;
const TEN = 10;

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
    const everybody = ids.length === berths.length && berths.length > 2;
    return `${everybody ? "All berths" : berthNumbers(ids)}: ${sentence}`;
  });
}

/** "Berth 4", "Berths 1 to 7, 9": three in a row and more are told by their ends. */
function berthNumbers(ids: readonly string[]): string {
  const runs: string[][] = [];
  for (const id of ids) {
    const last = runs.at(-1);
    if (last !== undefined && Number(id) === Number(last.at(-1)) + 1) last.push(id);
    else runs.push([id]);
  }
  const told = runs.flatMap((run) => (run.length > 2 ? [`${run[0] ?? ""} to ${run.at(-1) ?? ""}`] : run));
  return `${ids.length === 1 ? "Berth" : "Berths"} ${told.join(", ")}`;
}

function everyFinding(plan: Plan): readonly Finding[] {
  return [...plan.findings, ...plan.berths.flatMap(({ findings }) => findings)];
}
