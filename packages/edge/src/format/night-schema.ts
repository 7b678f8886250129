import * as z from "zod/mini";
import { choice, list, number, record, whole } from "./fields.ts";
import { AT_NEED, isTime } from "./instant.ts";

const air = () => number(-60, 50, "°C");
const wind = () => number(0, 80, "m/s");
const rain = () => number(0, 200, "mm/h");

const hourSchema = record("one hour of the forecast", {
  at: z.string({ error: AT_NEED }).check(z.refine(isTime, AT_NEED), z.describe(AT_NEED)),
  air_c: air(),
  wind_m_s: z.optional(wind()),
  gust_m_s: z.optional(wind()),
  rain_mm_h: z.optional(rain()),
});

/** One hour as a list of a forecast may tell it; what a camp file's hour does not hold goes into the whole night. */
export const forecastHourSchema = z.extend(hourSchema, {
  wind_from_deg: z.optional(number(0, 360, "degrees")),
  humidity: z.optional(number(0, 1)),
  cloud: z.optional(number(0, 1)),
  thunder: z.optional(choice("none", "possible", "likely")),
});

export const nightSchema = record("the night", {
  low_c: air(),
  high_c: z.optional(air()),
  wind_m_s: wind(),
  gust_m_s: z.optional(wind()),
  wind_height_m: z.optional(number(0.5, 200, "m")),
  wind_from_deg: z.optional(number(0, 360, "degrees")),
  rain_mm_h: z.optional(rain()),
  humidity: z.optional(number(0, 1)),
  cloud: z.optional(number(0, 1)),
  station_elevation_m: z.optional(number(-500, 9_000, "m")),
  thunder: z.optional(choice("none", "possible", "likely")),
  hours: z.optional(list(hourSchema, "hours", 0, 240)),
  stop_gust_m_s: z.optional(wind()),
  thunder_rule: z.optional(
    record("flash_to_bang_s and wait_min", {
      flash_to_bang_s: number(1, 120, "s"),
      wait_min: number(1, 240, "min"),
    }),
  ),
});

const minutes = () => z.optional(number(0, 600, "min"));

/** How long setting up takes, and who can. */
export const setUpSchema = record("time and hands for setting up", {
  per_berth_min: minutes(),
  helpers: z.optional(whole(1, 1_000)),
  tree_check_min: minutes(),
  margin_min: minutes(),
});
