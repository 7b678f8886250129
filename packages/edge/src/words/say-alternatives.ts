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
