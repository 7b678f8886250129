import * as z from "zod/mini";
import { choice } from "./fields.ts";
import { amount, count, name } from "./plan-parts-schema.ts";

const half = () => choice("under", "over");

const common = () => {
  const halfSchema = z.object({
    enough: choice("enough", "borderline", "not-enough"),
    item: z.optional(name()),
    margin_k: z.optional(amount()),
  });
  return {
    under: halfSchema,
    over: halfSchema,
    weaker: half(),
    helps: z.optional(z.object({ change: name(), half: half(), gain_k: z.optional(amount()) })),
    notes: z.array(name()),
  };
};

const learntSchema = z.object({ nights: count(), offset_k: amount(), band_k: amount() });

const halfHourSchema = z.object({ need_m2k_w: amount(), have_m2k_w: amount(), loss_w_m2: amount() });

const hourSchema = z.object({
  at: name(),
  air_c: amount(),
  wind_m_s: amount(),
  under: halfHourSchema,
  over: halfHourSchema,
  coldest: z.boolean(),
});

/** How warm a berth is tonight: by a balance of heat, or under 16 by a rule about the kit, without any temperature. */
export const warmthSchema = z.discriminatedUnion("by", [
  z.object({
    by: z.literal("balance"),
    ...common(),
    comfort_c: amount(),
    limit_c: amount(),
    band_k: amount(),
    learnt: z.optional(z.object({ by: z.literal("nights"), under: learntSchema, over: learntSchema })),
    top_w_m2: amount(),
    bottom_w_m2: amount(),
    total_m2k_w: amount(),
    hours: z.array(hourSchema),
  }),
  z.object({
    by: z.literal("youth-rule"),
    ...common(),
    spare: z.optional(name()),
    checked_by: z.optional(name()),
    check_at: name(),
  }),
]);
