import * as z from "zod/mini";
import { choice } from "./fields.ts";

/** What several parts of the plan file are made of. */
export const amount = () => z.number({ error: "a finite number" });
export const count = () => z.number({ error: "a whole number, 0 or more" }).check(z.int(), z.gte(0));
export const name = () => z.string({ error: "text" });
export const verdict = () => choice("clear", "look-again", "do-not-hang");

export const findingSchema = z.object({
  rule: name(),
  source: name(),
  subject: name(),
  sense: choice("at-most", "at-least"),
  demand: amount(),
  limit: amount(),
  unit: choice("N", "kg", "m", "rad", "Pa", "m/s", "K", "1"),
  margin: z.optional(amount()),
  verdict: verdict(),
  about: z.optional(z.array(name())),
  depth: z.optional(choice("why")),
});
