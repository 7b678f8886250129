import * as z from "zod/mini";
import { list, number, record, text } from "./fields.ts";

const air = () => number(-60, 50, "°C");
const wind = () => number(0, 80, "m/s");
const rain = () => number(0, 200, "mm/h");

const hourSchema = record("one hour of the forecast", {
  at: text("a time of day or instant", 40),
  air_c: air(),
  wind_m_s: z.optional(wind()),
  gust_m_s: z.optional(wind()),
  rain_mm_h: z.optional(rain()),
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
  stop_gust_m_s: z.optional(wind()),
  hours: z.optional(list(hourSchema, "hours", 0, 240)),
});
