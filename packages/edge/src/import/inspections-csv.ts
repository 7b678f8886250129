import { succeed, type Outcome, type Refusal } from "@nightspan/core";
import type { CampDocument, KitDocument } from "../format/camp-document.ts";
import { inspectionSchema } from "../format/kit-schema.ts";
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

/** The history of inspections from a CSV text: `item`, `on`, `by`, `action`, `finding`, and `number` of a single piece. */
export function readInspectionsCsv(text: string, { kit = [] }: CampDocument): Outcome<InspectionList> {
  const needs = [["item"], ["on"], ["by"], ["action"], ["finding"]] as const;
  const table = readCsvTable(text, INSPECTION_COLUMNS, needs, "inspection");
  if (!table.ok) return table;
  const known = new Set(kit.map(({ id }) => id));
  const { rows, leftOut } = table.value;
  return succeed({ ...judged(rows, (row) => judgeInspection(row, known)), leftOut });
}

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

/** The camp with these histories in place of those of the lines that they name; other lines keep theirs. */
export function importInspections(
  document: CampDocument,
  { rows }: Pick<InspectionList, "rows">,
): CampDocument {
  const byItem = new Map<string, InspectionDocument[]>();
  for (const { item, inspection } of rows) byItem.set(item, [...(byItem.get(item) ?? []), inspection]);
  const kit = (document.kit ?? []).map((item) => {
    const inspections = byItem.get(item.id);
    return inspections === undefined ? item : { ...item, inspections };
  });
  return { ...document, kit };
}

/** The history of all lines as a CSV text that reads back as it was. */
export function writeInspectionsCsv({ kit = [] }: CampDocument): string {
  const rows = kit.flatMap(({ id, inspections = [] }) =>
    inspections.map((inspection) => ({ item: id, ...inspection })),
  );
  return writeCsv(INSPECTION_COLUMNS, rows);
}
