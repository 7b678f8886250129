import * as z from "zod/mini";
import { choice } from "./fields.ts";
import { amount, count, findingSchema, name } from "./plan-parts-schema.ts";
import { dealtKind } from "./store-schema.ts";

const span = () => z.tuple([amount(), amount()]);

const choiceSchema = z.object({
  item: name(),
  number: z.optional(name()),
  reasons: z.array(findingSchema),
  margin_k: z.optional(amount()),
});

const partSchema = z.object({
  kind: dealtKind(),
  choices: z.array(choiceSchema),
  overkill: z.array(
    z.object({
      item: name(),
      in: choice("load", "cloth", "reach", "warmth", "cover"),
      needed: amount(),
      has: amount(),
      unit: choice("kg", "m", "K"),
    }),
  ),
  lacking: z.array(findingSchema),
});

const slipSchema = z.object({
  sleeper: name(),
  items: z.array(
    z.object({
      kind: name(),
      count: count(),
      item: z.optional(name()),
      number: z.optional(name()),
      last_inspected: z.optional(z.object({ by: name(), on: name() })),
    }),
  ),
  out_on: z.optional(name()),
  back_on: z.optional(name()),
});

/** People fitted out from the store where there is no ground. */
export const fitSchema = z.object({
  low_c: z.optional(amount()),
  air_c: z.optional(amount()),
  spans_m: span(),
  girths_m: span(),
  people: z.array(
    z.object({
      sleeper: name(),
      parts: z.array(partSchema),
      small: z.array(z.object({ what: name(), count: count(), item: z.optional(name()) })),
      slip: slipSchema,
    }),
  ),
});
