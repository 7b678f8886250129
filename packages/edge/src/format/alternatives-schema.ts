import * as z from "zod/mini";
import { choice } from "./fields.ts";
import { amount, findingSchema, name } from "./plan-parts-schema.ts";

const trees = () => z.tuple([name(), name()]);

/** What else could be done where straps came out too long or too short for two trees. Metres, degrees. */
export const alternativesSchema = z.object({
  sleeper: name(),
  trees: trees(),
  span_m: amount(),
  binds: name(),
  tries: z.array(
    z.object({
      kind: choice("connector-left-out", "strap-alone", "other-hammock", "other-suspension", "other-pair"),
      item: z.optional(name()),
      trees: z.optional(trees()),
      span_m: z.optional(amount()),
      hung: z.optional(
        z.object({
          angle_deg: amount(),
          head_strap_length_m: amount(),
          foot_strap_length_m: amount(),
          seat_height_m: amount(),
          webbing_m: amount(),
        }),
      ),
      because: z.array(findingSchema),
    }),
  ),
});
