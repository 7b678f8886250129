import { campSchema } from "./camp-schema.ts";
import * as z from "zod/mini";
import { pairSchema, treeSchema } from "./ground-schema.ts";
import { logSchema } from "./log-schema.ts";
import { planSchema } from "./plan-schema.ts";

/** The JSON Schemas (2020-12) of the three files, made from the schemas that read them. */
export function jsonSchemas(): Readonly<Record<"camp" | "plan" | "log", object>> {
  return {
    camp: named("Nightspan camp file", campSchema),
    plan: named("Nightspan plan file", planSchema),
    log: named("Nightspan log file", logSchema),
  };
}

function named(title: string, schema: z.core.$ZodType): object {
  const { $schema, ...rest } = z.toJSONSchema(schema, {
    io: "input",
    override: ({ zodSchema, jsonSchema }) => {
      const either = EITHER.get(zodSchema);
      if (either !== undefined) jsonSchema.anyOf = either.map((field) => ({ required: [field] }));
    },
  });
  return { $schema, title, ...rest };
}

/** Where one of two fields is needed; the cross-checks tell the same. */
const EITHER = new Map<z.core.$ZodType, readonly string[]>([
  [treeSchema, ["dbh_cm", "girth_cm"]],
  [pairSchema, ["span_m", "steps"]],
]);
