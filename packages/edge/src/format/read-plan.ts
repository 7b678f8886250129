import { succeed, type Outcome } from "@nightspan/core";
import { parseJson } from "./json-text.ts";
import { planSchema, type PlanFile } from "./plan-schema.ts";
import { schemaRefusals } from "./schema-refusals.ts";

/** A saved plan, or every reason why it cannot be read. */
export function readPlan(text: string): Outcome<PlanFile> {
  const parsed = parseJson(text);
  if (!parsed.ok) return parsed;
  const checked = planSchema.safeParse(parsed.value);
  return checked.success
    ? succeed(checked.data)
    : { ok: false, refusals: schemaRefusals(checked.error.issues, parsed.value) };
}
