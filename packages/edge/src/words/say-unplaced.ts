import type { Camp, Finding, Unplaced } from "@nightspan/core";
import type { Names } from "./names.ts";
import { sayFirstThatServes } from "./say-alternatives.ts";
import { sayFinding } from "./say-finding.ts";
import { length } from "./quantities.ts";
import { capital } from "./summary-line.ts";
import { farthestOverCap, findLimit, overCap, sayLimit } from "./say-limit.ts";

/** Why somebody has no berth: one sentence a reason, with the pairs of trees it holds for. */
export function sayUnplaced({ because, alternatives = [] }: Unplaced, names: Names): readonly string[] {
  const pairsOf = new Map<string, string[]>();
  const others: string[] = [];
  for (const finding of farthestOverCap(because)) {
    const refused = refusedPair(finding, names);
    if (refused === undefined) others.push(sayFinding(finding, names));
    else pairsOf.set(refused.why, [...(pairsOf.get(refused.why) ?? []), refused.pair]);
  }
  const refusals = [...pairsOf].map(([why, pairs]) => `${why}: ${[...new Set(pairs)].join("; ")}.`);
  const instead = sayFirstThatServes(alternatives, names);
  return [...new Set([...others, ...refusals]), ...(instead === undefined ? [] : [instead])];
}

/** Where a finding is about the hang of a sleeper at one pair: which pair, and what stood in the way. */
function refusedPair(
  { subject, about, demand, limit: most }: Finding,
  names: Names,
): { why: string; pair: string } | undefined {
  const [one, other, limit] = about ?? [];
  if (!subject.startsWith("sleeper/") || one === undefined || other === undefined || limit === undefined) {
    return undefined;
  }
  const known = findLimit(limit);
  const why = known === undefined ? `It cannot be hung (${limit})` : capital(sayLimit(known));
  const pair = `${names.tree(one)} to ${names.tree(other)}`;
  return { why, pair: known === undefined ? pair : `${pair}${overCap(known, demand, most)}` };
}

/** Stated pairs whose span lies outside the house rules, each with the rule that keeps it out. */
export function sayPairsOut({ ground, rules }: Camp): readonly string[] {
  const { spanMinM: least, spanMaxM: most } = rules;
  return (ground?.pairs ?? []).flatMap(({ trees, spanM }) => {
    const stand = `${trees.join(" and ")} stand ${length(spanM)} apart`;
    if (spanM < least.value)
      return [capital(`${stand}: less than the ${length(least.value)} asked for (${least.source}).`)];
    if (spanM > most.value)
      return [capital(`${stand}: more than the ${length(most.value)} allowed (${most.source}).`)];
    return [];
  });
}
