import type { Refusal } from "@nightspan/core";
import type { CampDocument, GroundDocument, TreeDocument } from "../format/camp-document.ts";
import { trunkFaults } from "../format/ground-checks.ts";
import { treeSchema } from "../format/ground-schema.ts";
import { schemaRefusals } from "../format/schema-refusals.ts";

/** Trees read from a list: those that can be used, and every row that cannot, with its place. */
export interface TreeList {
  readonly rows: readonly TreeDocument[];
  readonly bad: readonly BadRow[];
  /** Columns or properties that mean nothing here and were left out. */
  readonly leftOut: readonly string[];
  /** Where the list holds places on the globe: the point that local metres count from. */
  readonly origin?: NonNullable<GroundDocument["origin"]>;
}

export interface BadRow {
  /** "line 5", "feature 3". */
  readonly place: string;
  readonly refusals: readonly Refusal[];
}

/** A row before it is judged: cells by the camp file's field names. */
export interface RawRow {
  readonly place: string;
  readonly cells: Readonly<Record<string, unknown>>;
  /** True where the row as a whole cannot be read, so that its cells are not judged. */
  readonly unreadable?: boolean;
  /** Faults found while the row was read. */
  readonly faults: readonly Refusal[];
}

/** Judges raw rows by the camp file's own schema; an id may come once. */
export function judgeRows(raw: readonly RawRow[]): Pick<TreeList, "rows" | "bad"> {
  const rows: TreeDocument[] = [];
  const bad: BadRow[] = [];
  const seen = new Map<string, string>();
  for (const row of raw) {
    const parsed = treeSchema.safeParse(row.cells);
    const { id } = row.cells;
    const judged = row.unreadable === true ? [] : [...cellFaults(row), ...twiceFault(id, seen)];
    const refusals = [...row.faults, ...judged];
    if (typeof id === "string" && !seen.has(id)) seen.set(id, row.place);
    if (refusals.length === 0 && parsed.success) rows.push(parsed.data);
    else bad.push({ place: row.place, refusals });
  }
  return { rows, bad };
}

/** What the camp file's schema says of the cells, apart from those that could not be read: one fault is enough. */
function cellFaults({ cells, faults }: RawRow): readonly Refusal[] {
  const parsed = treeSchema.safeParse(cells);
  const bySchema = parsed.error === undefined ? [] : schemaRefusals(parsed.error.issues, cells);
  const byTrunk = trunkFaults(cells, "").map((fault) => ({ ...fault, field: fault.field.slice(1) }));
  return [...bySchema, ...byTrunk].filter(({ field }) => !faults.some((fault) => fault.field === field));
}

function twiceFault(id: unknown, seen: ReadonlyMap<string, string>): readonly Refusal[] {
  const before = typeof id === "string" ? seen.get(id) : undefined;
  return before === undefined
    ? []
    : [{ field: "id", got: id, need: `an id of its own; ${before} has this one` }];
}

/** The camp with these trees in place of those that it had. All else stays as it is. */
export function importTrees(document: CampDocument, list: Pick<TreeList, "rows" | "origin">): CampDocument {
  const { rows, origin } = list;
  const onGlobe = origin === undefined ? {} : { origin, source: "gps" as const };
  return { ...document, ground: { ...document.ground, trees: [...rows], ...onGlobe } };
}
