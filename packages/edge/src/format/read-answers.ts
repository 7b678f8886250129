import { succeed, type Outcome } from "@nightspan/core";
import * as z from "zod/mini";
import { list } from "./fields.ts";
import { felt, loggedSleeperSchema } from "./log-schema.ts";
import type { MorningAnswer } from "./night-of-plan.ts";
import { present } from "./optional.ts";
import { schemaRefusals } from "./schema-refusals.ts";

const answersSchema = list(
  z.extend(loggedSleeperSchema, { under: z.optional(felt()), over: z.optional(felt()) }),
  "answers",
  1,
  1000,
);

/** What people told the morning after: a list, one answer a sleeper, each half in one word. */
export function readAnswers(given: unknown): Outcome<readonly MorningAnswer[]> {
  const checked = answersSchema.safeParse(given);
  return checked.success
    ? succeed(checked.data.map((answer) => present(answer)))
    : { ok: false, refusals: schemaRefusals(checked.error.issues, given) };
}
