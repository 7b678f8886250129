import type { Finding } from "@nightspan/core";

/** Rules by the part of the page where their findings stand; all others stand together. */
const SHELTER = ["tarp.", "rain.", "guy.", "peg.", "drip-line.", "strap."] as const;
const WARMTH = ["warmth.", "under.", "over."] as const;

export function isShelter({ rule }: Pick<Finding, "rule">): boolean {
  return SHELTER.some((start) => rule.startsWith(start));
}

export function isWarmth({ rule }: Pick<Finding, "rule">): boolean {
  return WARMTH.some((start) => rule.startsWith(start));
}

/** What stands in no other part of the berth page. */
export function isOther(finding: Pick<Finding, "rule">): boolean {
  return !isShelter(finding) && !isWarmth(finding) && !finding.rule.startsWith("cap.");
}
