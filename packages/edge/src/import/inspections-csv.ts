import { succeed, type Outcome, type Refusal } from "@nightspan/core";
import type { CampDocument, KitDocument } from "../format/camp-document.ts";
import { inspectionSchema } from "../format/kit-schema.ts";
import { lastLineState } from "../format/line-state.ts";
import { schemaRefusals } from "../format/schema-refusals.ts";
import { readCsvTable } from "./csv-table.ts";
import { INSPECTION_COLUMNS } from "./kit-columns.ts";
import { judged, type BadRow, type RawRow } from "./raw-row.ts";
import { writeCsv } from "./write-csv.ts";

type InspectionDocument = NonNullable<KitDocument["inspections"]>[number];

/** Inspections from a list, each with the line of the store that it is of. */
export interface InspectionList {
  readonly rows: readonly { readonly item: string; readonly inspection: InspectionDocument }[];
  readonly bad: readonly BadRow[];
  readonly leftOut: readonly string[];
}

/**
 * Inspections from a CSV text: `item`, `on`, `by`, `action`, `finding`, and `number` of a single piece. A row that only names
 * its piece, as a list of returns has them, was not looked at and is passed over.
 */
export function readInspectionsCsv(text: string, { kit = [] }: CampDocument): Outcome<InspectionList> {
  const needs = [["item"], ["on"], ["by"], ["action"], ["finding"]] as const;
  const table = readCsvTable(text, INSPECTION_COLUMNS, needs, "inspection");
  if (!table.ok) return table;
  const known = new Set(kit.map(({ id }) => id));
  const { rows, leftOut } = table.value;
  const looked = rows.filter(({ cells, faults }) => faults.length > 0 || LOOK.some((name) => name in cells));
  return succeed({ ...judged(looked, (row) => judgeInspection(row, known)), leftOut });
}

const LOOK = ["on", "by", "action", "finding"];

function judgeInspection({ cells }: RawRow, known: ReadonlySet<string>) {
  const { item, ...inspection } = cells;
  const parsed = inspectionSchema.safeParse(inspection);
  const refusals: Refusal[] =
    parsed.error === undefined ? [] : [...schemaRefusals(parsed.error.issues, inspection)];
  if (typeof item !== "string" || !known.has(item)) {
    refusals.push({ field: "item", got: item, need: "the id of a line in kit" });
    return { refusals };
  }
  return parsed.success ? { value: { item, inspection: parsed.data }, refusals } : { refusals };
}

/**
 * The camp with these looks added to the logs of their lines, each log the oldest first. Nothing of a log is changed or lost; a
 * look that stands there already is not added again. One at a whole line sets its state where one is stated.
 */
export function importInspections(
  document: CampDocument,
  { rows }: Pick<InspectionList, "rows">,
): CampDocument {
  const kit = (document.kit ?? []).map((item) => {
    const log = item.inspections ?? [];
    const looks = newLooks(
      log,
      rows.flatMap((row) => (row.item === item.id ? [row.inspection] : [])),
    );
    if (looks.length === 0) return item;
    const inspections = [...log, ...looks].sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0));
    const state = item.state === undefined ? undefined : lastLineState(inspections);
    return { ...item, inspections, ...(state === undefined ? {} : { state }) };
  });
  return { ...document, kit };
}

/** Of a list, what the log does not have, entry for entry. */
function newLooks(
  log: readonly InspectionDocument[],
  list: readonly InspectionDocument[],
): readonly InspectionDocument[] {
  const known = log.map(lookKey);
  return list.filter((look) => {
    const at = known.indexOf(lookKey(look));
    if (at !== -1) known.splice(at, 1);
    return at === -1;
  });
}

function lookKey({ number, on, by, action, finding }: InspectionDocument): string {
  return JSON.stringify([number ?? null, on, by, action, finding]);
}

/** The history of all lines as a CSV text that reads back as it was. */
export function writeInspectionsCsv({ kit = [] }: CampDocument): string {
  const rows = kit.flatMap(({ id, inspections = [] }) =>
    inspections.map((inspection) => ({ item: id, ...inspection })),
  );
  return writeCsv(INSPECTION_COLUMNS, rows);
}
