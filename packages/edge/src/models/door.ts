import { succeed, type Basis, type LinearSolver, type Outcome, type Refusal } from "@nightspan/core";
import type * as z from "zod/mini";
import { fieldPath } from "../format/raw.ts";
import { schemaRefusals } from "../format/schema-refusals.ts";

/** What a model answers through its door: the value in file form, and what it rests on. */
export interface ModelAnswer {
  readonly value: Readonly<Record<string, unknown>>;
  readonly basis: Basis;
}

export interface ModelTools {
  readonly solver?: LinearSolver;
}

/** One model's door: snake_case with units in, the same out. */
export interface Door {
  readonly about: string;
  readonly run: (input: unknown, tools: ModelTools) => Outcome<ModelAnswer>;
}

/** The input as the schema knows it, or every fault of it at once; a key the model does not know is one. */
export function read<T>(schema: z.ZodMiniType<T>, input: unknown): Outcome<T> {
  const parsed = schema.safeParse(input);
  if (parsed.success) return succeed(parsed.data);
  const refusals = schemaRefusals(parsed.error.issues, input);
  return {
    ok: false,
    refusals: refusals.map((refusal) => ({ ...refusal, field: inputName(refusal.field) })),
  };
}

function inputName(field: string): string {
  return field === "file" ? "input" : field;
}

/** Core's refusals with their fields named as the door names them. */
export function inFileForm(
  refusals: readonly Refusal[],
  names: Readonly<Record<string, string>> = {},
): Refusal[] {
  return refusals.map((refusal) => ({ ...refusal, field: names[refusal.field] ?? fileField(refusal.field) }));
}

/** "trees.3.spanM" → "trees[3].span_m". */
function fileField(field: string): string {
  const steps = field.split(".").map((step) => (/^\d+$/.test(step) ? Number(step) : snake(step)));
  return fieldPath(steps);
}

function snake(name: string): string {
  return name.replaceAll(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);
}
