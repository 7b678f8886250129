import type { HangAlternative, HangAlternatives } from "@nightspan/core";
import type { Names } from "./names.ts";
import { angle, handDifference, length } from "./quantities.ts";
import { sayFinding } from "./say-finding.ts";
import { findLimit, sayLimit } from "./say-limit.ts";
import { capital } from "./summary-line.ts";

/** What stands in the way at two trees, and one line for each thing to do instead, how it would hang or why it fails too. */
export function sayAlternatives(
  { trees: [a, b], spanM, binds, tries }: HangAlternatives,
  names: Names,
): readonly string[] {
  const where = `${names.tree(a)} to ${names.tree(b)}, ${length(spanM)}`;
  return [`${where}: ${sayLimit(binds)}.`, ...tries.map((one) => sayAlternative(one, names))];
}

/** Of all that was tried at any two trees the first that would hang, with where; nothing where none would. */
export function sayFirstThatServes(
  alternatives: readonly HangAlternatives[],
  names: Names,
): string | undefined {
  for (const {
    trees: [a, b],
    tries,
  } of alternatives) {
    const serves = tries.find(({ hung }) => hung !== undefined);
    if (serves === undefined) continue;
    const where = serves.kind === "other-pair" ? "" : `, at ${names.tree(a)} and ${names.tree(b)}`;
    return `What would hang${where}: ${uncapital(sayAlternative(serves, names))}`;
  }
  return undefined;
}

function uncapital(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

function sayAlternative(one: HangAlternative, names: Names): string {
  return `${capital(what(one, names))}: ${one.hung === undefined ? whyNot(one, names) : how(one.hung)}.`;
}

function what({ kind, item = "", trees = ["", ""], spanM = 0 }: HangAlternative, names: Names): string {
  switch (kind) {
    case "connector-left-out":
      return "leave the connector out, hitch the sling onto the tree strap";
    case "strap-alone":
      return "leave the sling out, hitch the hammock onto the tree strap";
    case "other-hammock":
      return `hammock ${item} instead`;
    case "other-suspension":
      return `suspension ${item} instead`;
    case "other-pair":
      return `between ${names.tree(trees[0])} and ${names.tree(trees[1])}, ${length(spanM)} apart`;
  }
}

function how({ angle: mean, seatHeightM, webbingM }: NonNullable<HangAlternative["hung"]>): string {
  const strap = `${length(webbingM)} of strap at each tree`;
  return `straps ${angle(mean)} below level, seat ${handDifference(seatHeightM)}, ${strap}`;
}

function whyNot({ because }: HangAlternative, names: Names): string {
  const [first] = because;
  if (first === undefined) return "it cannot be hung either";
  const limit = findLimit(first.about?.[2] ?? "");
  return limit === undefined ? sayFinding(first, names).replace(/\.$/, "") : `no, ${sayLimit(limit)}`;
}
