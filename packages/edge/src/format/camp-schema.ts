import * as z from "zod/mini";
import { day, list, number, record, text } from "./fields.ts";
import { groundSchema, groupSchema } from "./ground-schema.ts";
import { kitSchema } from "./kit-schema.ts";
import { nightSchema, setUpSchema } from "./night-schema.ts";
import { pinSchema } from "./pins-schema.ts";
import { sleeperSchema } from "./people-schema.ts";
import { rulesSchema } from "./rules-schema.ts";

/** The format this version writes. Older ones come in through `migrations.ts`. */
export const CAMP_FORMAT = "nightspan-camp/1" as const;

const placeSchema = record("the place", {
  lat_deg: number(-90, 90, "degrees"),
  lon_deg: number(-180, 180, "degrees"),
  elevation_m: z.optional(number(-500, 9_000, "m")),
  timezone: z.optional(text("a time zone such as Europe/Oslo", 60)),
});

/** The camp file as people and spreadsheets write it. Its rules between fields are in `cross-checks.ts`. */
export const campSchema = record("a camp", {
  format: z.literal(CAMP_FORMAT, { error: `"${CAMP_FORMAT}"` }),
  name: text("the camp's name"),
  date: z.optional(day()),
  place: z.optional(placeSchema),
  ground: z.optional(groundSchema),
  rules: z.optional(rulesSchema),
  sleepers: list(sleeperSchema, "sleepers", 1, 1_000),
  groups: z.optional(list(groupSchema, "groups", 0, 1_000)),
  kit: z.optional(list(kitSchema, "kit items")),
  pins: z.optional(list(pinSchema, "pins", 0, 1_000)),
  night: z.optional(nightSchema),
  set_up: z.optional(setUpSchema),
});
