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
  /** Faults found while the cells were read. */
  readonly faults: readonly Refusal[];
}

/** Judges raw rows by the camp file's own schema; an id may come once. */
export function judgeRows(raw: readonly RawRow[]): Pick<TreeList, "rows" | "bad"> {
  const rows: TreeDocument[] = [];
  const bad: BadRow[] = [];
  const seen = new Map<string, string>();
  for (const { place, cells, faults } of raw) {
    const parsed = treeSchema.safeParse(cells);
    const refusals = [
      ...faults,
      ...fresh(faults, parsed.error === undefined ? [] : schemaRefusals(parsed.error.issues, cells)),
      ...fresh(
        faults,
        trunkFaults(cells, "").map((fault) => ({ ...fault, field: fault.field.slice(1) })),
      ),
      ...twiceFault(cells["id"], seen),
    ];
    if (typeof cells["id"] === "string" && !seen.has(cells["id"])) seen.set(cells["id"], place);
    if (refusals.length === 0 && parsed.success) rows.push(parsed.data);
    else bad.push({ place, refusals });
  }
  return { rows, bad };
}

/** One fault a cell is enough. */
function fresh(told: readonly Refusal[], found: readonly Refusal[]): readonly Refusal[] {
  return found.filter(({ field }) => !told.some((fault) => fault.field === field));
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
