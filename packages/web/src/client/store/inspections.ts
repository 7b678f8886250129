import type { Inspection, Refusal } from "@nightspan/core";
import type { KitDocument } from "@nightspan/edge";
import { editCamp } from "../state/camp-store.ts";
import { writeAt } from "../state/document-path.ts";

/** The log of a line, oldest first. */
export function inspectionsOf(item: KitDocument): readonly Inspection[] {
  return (item.inspections ?? []).map(({ number, ...entry }) =>
    number === undefined ? entry : { ...entry, number },
  );
}

export function lastInspection(item: KitDocument): Inspection | undefined {
  return inspectionsOf(item).at(-1);
}

const STATE_AFTER = { pass: "in-use", quarantine: "quarantined", retire: "retired" } as const;

/**
 * Writes one look into the log. One that is about the whole line sets its state too. What cannot be entered is refused: a day
 * before the log's last, a thing that is retired.
 */
export function inspect(index: number, item: KitDocument, entry: Inspection): readonly Refusal[] {
  return editCamp("", (document) => {
    const logged = writeAt(document, ["kit", index, "inspections"], [...inspectionsOf(item), entry]);
    if (entry.number !== undefined) return logged;
    return writeAt(logged, ["kit", index, "state"], STATE_AFTER[entry.action]);
  });
}
