import type { KitItem } from "../../plan/kit.ts";
import type { InspectionAction } from "../../plan/store-types.ts";

/**
 * How many pieces of a line may be dealt: none where the line is quarantined or retired, else all but those numbered
 * pieces whose own last inspection took them out.
 */
export function piecesInUse(item: KitItem): number {
  if (item.state !== "in-use") return 0;
  const out = [...lastActions(item).values()].filter((action) => action !== "pass").length;
  return Math.max(0, item.count - out);
}

/** Numbers of the pieces that may be dealt, in the order they are listed. */
export function numbersInUse(item: KitItem): string[] {
  if (item.state !== "in-use") return [];
  const last = lastActions(item);
  return (item.numbers ?? []).filter((number) => (last.get(number) ?? "pass") === "pass");
}

/** What was last done about each numbered piece; once retired always retired. */
export function lastActions({
  inspections = [],
}: Pick<KitItem, "inspections">): Map<string, InspectionAction> {
  const last = new Map<string, InspectionAction>();
  for (const { number, action } of inspections) {
    if (number !== undefined && last.get(number) !== "retire") last.set(number, action);
  }
  return last;
}
