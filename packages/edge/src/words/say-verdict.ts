import type { PlanPart, TreesLookedAt, Verdict } from "@nightspan/core";
import { ENGLISH } from "@nightspan/drawing";
import { day } from "./quantities.ts";

/** The word of a verdict, which stands wherever its plate stands. */
export function sayVerdict(verdict: Verdict): string {
  return ENGLISH[`verdict.${verdict}`];
}

/** What stands beside every verdict: "trees looked at: 13 of 14, Maren Ødegård, 14 May". */
export function sayLookedAt({ done, of, by, on }: TreesLookedAt): string {
  if (of === 0) return "trees looked at: none counted, as nobody has a berth";
  const who = by.length > 0 ? `, ${by.join(" and ")}` : "";
  const when = on === undefined ? "" : `, ${day(on)}`;
  return `trees looked at: ${done} of ${of}${who}${when}`;
}

/** "not checked: tarp, warmth"; nothing where all was. */
export function sayNotChecked(parts: readonly PlanPart[]): string | undefined {
  return parts.length === 0
    ? undefined
    : `not checked: ${parts.map((part) => ENGLISH[`part.${part}`]).join(", ")}`;
}
