import { refuseAll, succeed, type Outcome, type Refusal } from "../../outcome/outcome.ts";
import type { KitItem, KitState } from "../../plan/kit.ts";
import type { Inspection, InspectionAction } from "../../plan/store-types.ts";
import { lastActions } from "./pieces-in-use.ts";

/** One look of a round: which line, and what was found. */
export interface InspectionEntry extends Inspection {
  readonly item: string;
}

/**
 * The store after an inspection round: each look is added to its line's log, and lines or numbered pieces pass, are quarantined
 * or are retired by it.
 *
 * Nothing of a log is ever changed or lost. A quarantined thing passes again; a retired one is looked at no more. A whole line is
 * looked at as one; for a single piece of it give its number.
 *
 * Shapes   lines + looks, in the order they were made → lines, the same and in the same order
 * Holds    lines that are listed, numbers that they list, days not before the log's last of the same thing, somebody's name
 * Error    all looks that cannot be entered are refused at once, and then none is
 * Source   common-practice (handbook/kit.md)
 */
export function inspectionRound(
  kit: readonly KitItem[],
  entries: readonly InspectionEntry[],
): Outcome<readonly KitItem[]> {
  const lines = new Map(kit.map((line) => [line.id, line]));
  const refusals: Refusal[] = [];
  for (const [at, entry] of entries.entries()) {
    const line = lines.get(entry.item);
    const faults = line === undefined ? [unknownItem(entry)] : entryFaults(line, entry);
    refusals.push(...faults.map((fault) => ({ ...fault, field: `inspections.${at}.${fault.field}` })));
    if (line !== undefined && faults.length === 0) lines.set(line.id, looked(line, entry));
  }
  return refuseAll(refusals) ?? succeed(kit.map((line) => lines.get(line.id) ?? line));
}

function unknownItem({ item }: InspectionEntry): Refusal {
  return { field: "item", got: item, need: "a line of the store" };
}

function entryFaults(line: KitItem, { number, by, on }: InspectionEntry): Refusal[] {
  const faults: Refusal[] = [];
  if (by.trim() === "") faults.push({ field: "by", got: by, need: "a name" });
  if (number !== undefined && line.numbers?.includes(number) !== true) {
    faults.push({ field: "number", got: number, need: "a number that the line lists" });
  }
  const isRetired =
    line.state === "retired" || (number !== undefined && lastActions(line).get(number) === "retire");
  if (isRetired) faults.push({ field: "item", got: "retired", need: "a thing that is not retired" });
  const last = line.inspections?.findLast((look) => look.number === number)?.on ?? on;
  if (on < last) faults.push({ field: "on", got: on, need: `${last} or later, as the log goes on` });
  return faults;
}

function looked(line: KitItem, { by, on, finding, action, number }: InspectionEntry): KitItem {
  const look: Inspection = { by, on, finding, action, ...(number === undefined ? {} : { number }) };
  const inspections = [...(line.inspections ?? []), look];
  return look.number === undefined
    ? { ...line, inspections, state: STATE_AFTER[look.action] }
    : { ...line, inspections };
}

const STATE_AFTER: Readonly<Record<InspectionAction, KitState>> = {
  pass: "in-use",
  quarantine: "quarantined",
  retire: "retired",
};
