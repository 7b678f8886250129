import type * as z from "zod/mini";
import type { forecastHourSchema } from "../format/night-schema.ts";

/** An hour of a forecast with its instant, "2027-05-14T21:00Z". */
export type ForecastHour = z.infer<typeof forecastHourSchema>;

/**
 * What the hours say of the night as a whole: the lowest and highest air, the strongest mean wind, gust and rain, the
 * bearing of the strongest wind, the mean of humidity and of cloud, the worst of thunder. What no hour says is left out.
 */
export function wholeNight(hours: readonly ForecastHour[]): Readonly<Record<string, unknown>> {
  if (hours.length === 0) return {};
  const of = (field: "air_c" | "wind_m_s" | "gust_m_s" | "rain_mm_h" | "humidity" | "cloud") =>
    hours.flatMap((hour) => hour[field] ?? []);
  const air = of("air_c");
  return withoutBlanks({
    low_c: Math.min(...air),
    high_c: Math.max(...air),
    wind_m_s: most(of("wind_m_s")),
    gust_m_s: most(of("gust_m_s")),
    wind_from_deg: strongest(hours)?.wind_from_deg,
    rain_mm_h: most(of("rain_mm_h")),
    humidity: mean(of("humidity")),
    cloud: mean(of("cloud")),
    thunder: worst(hours),
    hours: hours.map(({ at, air_c, wind_m_s, gust_m_s, rain_mm_h }) =>
      withoutBlanks({ at, air_c, wind_m_s, gust_m_s, rain_mm_h }),
    ),
  });
}

function withoutBlanks(fields: object): Readonly<Record<string, unknown>> {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));
}

function most(values: readonly number[]): number | undefined {
  return values.length === 0 ? undefined : Math.max(...values);
}

function mean(values: readonly number[]): number | undefined {
  if (values.length === 0) return undefined;
  const sum = values.reduce((total, value) => total + value, 0);
  return Math.round((sum / values.length) * 100) / 100;
}

function strongest(hours: readonly ForecastHour[]): ForecastHour | undefined {
  const known = hours.filter(({ wind_from_deg }) => wind_from_deg !== undefined);
  const force = ({ gust_m_s, wind_m_s }: ForecastHour) => gust_m_s ?? wind_m_s ?? 0;
  return known.reduce<ForecastHour | undefined>(
    (best, hour) => (best === undefined || force(hour) > force(best) ? hour : best),
    undefined,
  );
}

const THUNDER = ["none", "possible", "likely"] as const;

function worst(hours: readonly ForecastHour[]): (typeof THUNDER)[number] | undefined {
  return THUNDER[
    Math.max(...hours.map(({ thunder }) => (thunder === undefined ? -1 : THUNDER.indexOf(thunder))))
  ];
}
