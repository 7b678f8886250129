import * as z from "zod/mini";
import { amount, findingSchema, name, verdict } from "./plan-parts-schema.ts";

/** A berth kept free for whoever must leave their own. */
export const spareSchema = z.object({
  id: name(),
  head_tree: name(),
  foot_tree: name(),
  span_m: amount(),
  bearing_deg: z.optional(amount()),
  pair: z.optional(name()),
  step_it_out: z.boolean(),
  serves: z.array(name()),
  verdict: verdict(),
  findings: z.array(findingSchema),
});

/** Who looks after whom at night. */
export const buddySchema = z.object({ sleeper: name(), apart_m: amount(), within_call: z.boolean() });
