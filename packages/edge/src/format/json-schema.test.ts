import { describe, expect, it } from "vitest";
import { exampleCamp } from "../examples.fixture.ts";
import { jsonSchemas } from "./json-schema.ts";

type Schema = Readonly<Record<string, unknown>>;

describe("the JSON Schemas", () => {
  it("are of the 2020-12 draft and name what is needed", () => {
    const { camp, plan } = jsonSchemas();
    for (const schema of [camp, plan]) {
      expect(schema).toMatchObject({
        $schema: "https://json-schema.org/draft/2020-12/schema",
        type: "object",
      });
    }
    expect(camp).toMatchObject({ required: ["format", "name", "sleepers"] });
  });

  it("let unknown fields stand, since they are kept", () => {
    expect(JSON.stringify(jsonSchemas().camp)).not.toContain("additionalProperties");
  });

  it("know every field that the examples use", () => {
    const known = fieldNames(jsonSchemas().camp);
    for (const name of ["demo", "pairs"]) {
      const used = keysOf(exampleCamp(name).document);
      expect(used.filter((key) => !known.has(key))).toEqual([]);
    }
  });
});

function fieldNames(schema: unknown): ReadonlySet<string> {
  const names = new Set<string>();
  walk(schema, (node) => {
    const properties = node["properties"];
    if (typeof properties === "object" && properties !== null)
      Object.keys(properties).forEach((key) => names.add(key));
  });
  return names;
}

function keysOf(document: unknown): readonly string[] {
  const keys = new Set<string>();
  walk(document, (node) => {
    Object.keys(node).forEach((key) => keys.add(key));
  });
  return [...keys];
}

function walk(value: unknown, visit: (node: Schema) => void): void {
  if (typeof value !== "object" || value === null) return;
  if (!Array.isArray(value)) visit({ ...value });
  Object.values(value).forEach((inner) => {
    walk(inner, visit);
  });
}
