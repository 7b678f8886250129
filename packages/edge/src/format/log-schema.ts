import * as z from "zod/mini";
import { choice, day, flag, list, number, record, text } from "./fields.ts";
import { id } from "./ground-schema.ts";

export const LOG_FORMAT = "nightspan-log/1";

export const felt = () => choice("cold", "cool", "right", "warm");

const TIME = "a time of the day, such as 03:30";

const halfSchema = record("how one half was", {
  felt: felt(),
  margin_k: z.optional(number(-60, 60, "K")),
  item: z.optional(id()),
});

export const loggedSleeperSchema = record("how a sleeper's night was", {
  sleeper: id(),
  under: z.optional(halfSchema),
  over: z.optional(halfSchema),
  woke_at: z.optional(
    z.string({ error: TIME }).check(z.regex(/^([01]\d|2[0-3]):[0-5]\d$/, TIME), z.describe(TIME)),
  ),
  trouble: z.optional(
    list(choice("wet", "slid", "noise", "light", "insects", "cramped", "wind", "other"), "troubles", 0, 8),
  ),
  leave_out: z.optional(flag()),
  note: z.optional(text("a note", 2000)),
});

export const loggedNightSchema = record("a night", {
  camp: text("the camp's name"),
  date: day(),
  planned_low_c: z.optional(number(-60, 40, "°C")),
  measured_low_c: z.optional(number(-60, 40, "°C")),
  sleepers: list(loggedSleeperSchema, "sleepers", 1, 1000),
  note: z.optional(text("a note", 2000)),
});

/** How nights were: what people tell the morning after, and what the plan had reckoned. */
export const logSchema = record('a log, with "format" and "nights"', {
  format: z.literal(LOG_FORMAT, { error: `"${LOG_FORMAT}"` }),
  nights: list(loggedNightSchema, "nights"),
});
