import { succeed, type Outcome } from "@nightspan/core";
import type { CampDocument, OpenedCamp } from "./camp-document.ts";
import { campSchema } from "./camp-schema.ts";
import { crossChecks } from "./cross-checks.ts";
import { parseJson } from "./json-text.ts";
import { migrate, MIGRATIONS, type Migration } from "./migrations.ts";
import { schemaRefusals } from "./schema-refusals.ts";
import { toCamp } from "./to-camp.ts";
import { unknownFields } from "./unknown-fields.ts";

/** A camp from the text of its file, or every reason why it cannot be used. */
export function readCamp(text: string): Outcome<OpenedCamp> {
  const parsed = parseJson(text);
  return parsed.ok ? openCamp(parsed.value) : parsed;
}

/** A camp from its document in file form, or every reason why it cannot be used, by field path. */
export function openCamp(
  given: unknown,
  migrations: Readonly<Record<string, Migration>> = MIGRATIONS,
): Outcome<OpenedCamp> {
  const migrated = migrate(given, migrations);
  if (!migrated.ok) return migrated;
  const document = migrated.value;
  const parsed = campSchema.safeParse(document);
  const single = parsed.error === undefined ? [] : schemaRefusals(parsed.error.issues, document);
  const told = new Set(single.map(({ field }) => field));
  const refusals = [...single, ...crossChecks(document).filter(({ field }) => !told.has(field))];
  if (refusals.length > 0 || !fits(document, parsed)) return { ok: false, refusals };
  return succeed({ camp: toCamp(document), document, unknownFields: unknownFields(document, parsed.data) });
}

/** The document itself is used on, not the schema's copy, which has no unknown fields. */
function fits(document: unknown, parsed: { readonly success: boolean }): document is CampDocument {
  return document !== undefined && parsed.success;
}
