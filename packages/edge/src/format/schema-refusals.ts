import type { Refusal } from "@nightspan/core";
import type * as z from "zod/mini";
import { fieldPath, valueAt } from "./raw.ts";
import "./schema-words.ts";

/** The schema's issues as refusals: field path, what stands there, what is needed. */
export function schemaRefusals(issues: readonly z.core.$ZodIssue[], document: unknown): readonly Refusal[] {
  const told = new Set<string>();
  return issues.flatMap(faultsOf).flatMap(({ path, need }) => {
    const field = fieldPath(path) || "file";
    const key = `${field}\n${need}`;
    if (told.has(key)) return [];
    told.add(key);
    return [{ field, got: valueAt(document, path), need }];
  });
}

interface Fault {
  readonly path: readonly PropertyKey[];
  readonly need: string;
}

function faultsOf(issue: z.core.$ZodIssue): readonly Fault[] {
  if (issue.code !== "unrecognized_keys") return [{ path: issue.path, need: issue.message }];
  return issue.keys.map((key) => ({ path: [...issue.path, key], need: "nothing: there is no such field" }));
}
