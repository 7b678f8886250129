import type { Refusal } from "@nightspan/core";
import type { z } from "./fields.ts";
import { fieldPath, valueAt } from "./raw.ts";

/** The schema's issues as refusals: field path, what stands there, what is needed. */
export function schemaRefusals(issues: readonly z.core.$ZodIssue[], document: unknown): readonly Refusal[] {
  const told = new Set<string>();
  return issues.flatMap((issue) => {
    const field = fieldPath(issue.path) || "file";
    const key = `${field}\n${issue.message}`;
    if (told.has(key)) return [];
    told.add(key);
    return [{ field, got: valueAt(document, issue.path), need: issue.message }];
  });
}
