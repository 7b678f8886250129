import type { FailedPair, Finding, RefusedPin, Unplaced } from "@nightspan/core";
import type { Names } from "./names.ts";
import { sayFinding } from "./say-finding.ts";
import { capital } from "./summary-line.ts";
import { farthestOverCap, findLimit, overCap, sayLimit } from "./say-limit.ts";

/** For one without a berth each pair that nearly serves and why it does not, the nearest first; then how many more there are. */
export function sayFailedPairs({ pairs = [], pairsLeft = 0 }: Unplaced, names: Names): readonly string[] {
  const told = pairs.map(({ trees: [a, b], because }: FailedPair) => {
    return `${names.tree(a)} to ${names.tree(b)}: ${reasons(because, names)}`;
  });
  return pairsLeft === 0 ? told : [...told, leftOff(pairsLeft)];
}

/** How many pairs fail that are not told one by one. */
function leftOff(count: number): string {
  return `${count} more ${count === 1 ? "pair does" : "pairs do"} not serve either.`;
}

/** A pin that was not kept, and why. */
export function sayRefusedPin({ sleeper, trees: [a, b], because }: RefusedPin, names: Names): string {
  const where = b === "" ? a : `${names.tree(a)} to ${names.tree(b)}`;
  const why = because.length === 0 ? "Nobody says how far apart these trees stand." : reasons(because, names);
  const kit = because.some(isOfTheHang) ? ", in the kit dealt" : "";
  return `${names.sleeper(sleeper)}, ${where}${kit}: ${why}`;
}

/** Another hammock or suspension may serve where this one does not. */
function isOfTheHang({ rule, about }: Finding): boolean {
  return rule !== "site.capacity" && findLimit(about?.[2] ?? "") !== undefined;
}

function reasons(because: readonly Finding[], names: Names): string {
  return [...new Set(farthestOverCap(because).map((finding) => reason(finding, names)))].join(" ");
}

/** Where a limit of the hang is named, that limit alone; of a tree that is full, that; else the whole finding. */
function reason(finding: Finding, names: Names): string {
  if (finding.rule === "site.capacity") {
    return `${names.tree(finding.subject.slice("tree/".length))} carries as many hammocks as it may.`;
  }
  const limit = findLimit(finding.about?.[2] ?? "");
  if (limit === undefined) return sayFinding(finding, names);
  return `${capital(sayLimit(limit))}${overCap(limit, finding.demand, finding.limit)}.`;
}
