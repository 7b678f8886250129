import * as z from "zod/mini";
import { choice } from "./fields.ts";
import { amount, count, findingSchema, name } from "./plan-parts-schema.ts";

const instant = () => name();

const sunSchema = z.object({
  kind: choice("night", "no-dusk", "no-night", "no-day"),
  sunset: z.optional(instant()),
  dusk: z.optional(instant()),
  dawn: z.optional(instant()),
  sunrise: z.optional(instant()),
});

const hourSchema = z.object({
  at: instant(),
  air_c: amount(),
  dew_point_c: amount(),
  humidity: amount(),
  condensation: choice("unlikely", "likely", "certain"),
  cloth_c: amount(),
  wind_m_s: amount(),
  gust_m_s: amount(),
  rain_mm_h: amount(),
  sky_c: amount(),
});

const arriveBySchema = z.object({
  at: instant(),
  dark_at: instant(),
  per_berth_min: amount(),
  berths: count(),
  helpers: count(),
  tree_check_min: amount(),
  margin_min: amount(),
});

/** The night of the camp by the clock. Instants in UTC; a time of the sun that does not come is left out. */
export const nightClockSchema = z.object({
  sun: z.optional(sunSchema),
  hours: z.array(hourSchema),
  low_c: amount(),
  lapse_k: amount(),
  cold_pool_k: amount(),
  arrive_by: z.optional(arriveBySchema),
  order: choice("fair", "foul"),
  steps: z.array(name()),
  wind_force: count(),
  gust_force: count(),
  findings: z.array(findingSchema),
});

export const timelineSchema = z.array(z.object({ at: instant(), what: name() }));
