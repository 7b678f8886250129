import { succeed, type Outcome, type Refusal } from "@nightspan/core";
import type { CampDocument, KitDocument } from "../format/camp-document.ts";
import { itemFaults } from "../format/kit-checks.ts";
import { kitSchema } from "../format/kit-schema.ts";
import { textAt } from "../format/raw.ts";
import { schemaRefusals } from "../format/schema-refusals.ts";
import { unknownFields } from "../format/unknown-fields.ts";
import { readCsvTable } from "./csv-table.ts";
import { KIT_COLUMNS } from "./kit-columns.ts";
import { judged, twiceFaults, type BadRow, type RawRow } from "./raw-row.ts";
import { writeCsv } from "./write-csv.ts";

/** Lines of the store from a list: those that can be used, and every row that cannot, with its place. */
export interface KitList {
  readonly rows: readonly KitDocument[];
  readonly bad: readonly BadRow[];
  readonly leftOut: readonly string[];
}

/** The store from a CSV text: a line each, its fields by the camp file's names; `id` and `kind` are needed. */
export function readKitCsv(text: string): Outcome<KitList> {
  const table = readCsvTable(text, KIT_COLUMNS, [["id"], ["kind"]], "line of kit");
  if (!table.ok) return table;
  const seen = new Map<string, string>();
  const { rows, leftOut } = table.value;
  return succeed({ ...judged(rows, (row) => judgeItem(row, seen)), leftOut });
}

function judgeItem({ cells, place }: RawRow, seen: Map<string, string>) {
  const parsed = kitSchema.safeParse(cells);
  const bySchema =
    parsed.error === undefined ? strayCells(cells, parsed.data) : schemaRefusals(parsed.error.issues, cells);
  const between = itemFaults(cells, "").map((fault) => ({ ...fault, field: fault.field.slice(1) }));
  const refusals = [...bySchema, ...between, ...twiceFaults("id", cells["id"], place, seen)];
  return parsed.success ? { value: parsed.data, refusals } : { refusals };
}

/** Cells in columns that are of another kind of kit. */
function strayCells(cells: Readonly<Record<string, unknown>>, known: unknown): readonly Refusal[] {
  return unknownFields(cells, known).map((field) => ({
    field,
    got: cells[field],
    need: `an empty cell: kind "${textAt(cells, "kind") ?? ""}" has no such field`,
  }));
}

/**
 * The camp with this store in place of the one that it had. A line whose id was there keeps its history of
 * inspections and whatever else no list can hold.
 */
export function importKit(document: CampDocument, { rows }: Pick<KitList, "rows">): CampDocument {
  const before = new Map((document.kit ?? []).map((item) => [item.id, item]));
  return { ...document, kit: rows.map((row) => ({ ...keptOf(before.get(row.id)), ...row })) };
}

function keptOf(item: KitDocument | undefined): object {
  if (item === undefined) return {};
  return Object.fromEntries(Object.entries(item).filter(([key]) => !Object.hasOwn(KIT_COLUMNS, key)));
}

/** The store as a CSV text that reads back as it was; without the history of inspections, which is a list of its own. */
export function writeKitCsv({ kit = [] }: CampDocument): string {
  return writeCsv(KIT_COLUMNS, kit);
}
