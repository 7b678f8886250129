import type { CampDocument, GroundDocument, TreeDocument } from "../format/camp-document.ts";
import { trunkFaults } from "../format/ground-checks.ts";
import { treeSchema } from "../format/ground-schema.ts";
import { schemaRefusals } from "../format/schema-refusals.ts";
import { judged, twiceFaults, type BadRow, type RawRow } from "./raw-row.ts";

/** Trees read from a list: those that can be used, and every row that cannot, with its place. */
export interface TreeList {
  readonly rows: readonly TreeDocument[];
  readonly bad: readonly BadRow[];
  /** Columns or properties that mean nothing here and were left out. */
  readonly leftOut: readonly string[];
  /** Where the list holds places on the globe: the point that local metres count from. */
  readonly origin?: NonNullable<GroundDocument["origin"]>;
}

/** Judges raw rows by the camp file's own schema; an id may come once. */
export function judgeRows(raw: readonly RawRow[]): Pick<TreeList, "rows" | "bad"> {
  const seen = new Map<string, string>();
  return judged(raw, ({ cells, place }) => {
    const parsed = treeSchema.safeParse(cells);
    const bySchema = parsed.error === undefined ? [] : schemaRefusals(parsed.error.issues, cells);
    const byTrunk = trunkFaults(cells, "").map((fault) => ({ ...fault, field: fault.field.slice(1) }));
    const refusals = [...bySchema, ...byTrunk, ...twiceFaults("id", cells["id"], place, seen)];
    return parsed.success ? { value: parsed.data, refusals } : { refusals };
  });
}

/** The camp with these trees in place of those that it had. All else stays as it is. */
export function importTrees(document: CampDocument, list: Pick<TreeList, "rows" | "origin">): CampDocument {
  const { rows, origin } = list;
  const onGlobe = origin === undefined ? {} : { origin, source: "gps" as const };
  return { ...document, ground: { ...document.ground, trees: [...rows], ...onGlobe } };
}
