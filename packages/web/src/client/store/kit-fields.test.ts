import { jsonSchemas } from "@nightspan/edge";
import { describe, expect, it } from "vitest";
import { readAt } from "../state/document-path.ts";
import { KIT_FIELDS } from "./kit-field-table.ts";

/** The schema of one kind of kit, as the camp file's own schema has it. */
function fieldsOf(kind: string): readonly string[] {
  const schemas = JSON.stringify(jsonSchemas()["camp"]);
  const all: unknown = JSON.parse(schemas);
  const found: string[] = [];
  const walk = (value: unknown): void => {
    if (typeof value !== "object" || value === null) return;
    const kinds = readAt(value, ["properties", "kind"]);
    const own =
      readAt(kinds, ["const"]) === kind ||
      JSON.stringify(readAt(kinds, ["enum"]) ?? []).includes(`"${kind}"`);
    if (own && readAt(value, ["properties", "count"]) !== undefined) {
      found.push(...Object.keys(readAt(value, ["properties"]) ?? {}));
    }
    for (const child of Object.values(value)) walk(child);
  };
  walk(all);
  return found;
}

describe("fields of the store", () => {
  it.each(Object.keys(KIT_FIELDS))("of kind %s are all in the camp file's schema", (kind) => {
    const known = fieldsOf(kind);
    expect(known.length).toBeGreaterThan(4);
    const named = Object.entries(KIT_FIELDS).find(([name]) => name === kind)?.[1] ?? [];
    for (const { name } of named) expect(known).toContain(name);
    for (const name of ["count", "mass_kg", "numbers", "state", "inspections"]) expect(known).toContain(name);
  });
});
