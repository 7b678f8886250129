import type { Refusal } from "@nightspan/core";
import type { CampDocument } from "../format/camp-document.ts";
import { findInstant } from "../format/instant.ts";
import { AT_FAULT } from "../format/night-checks.ts";
import { forecastHourSchema, nightSchema } from "../format/night-schema.ts";
import { schemaRefusals } from "../format/schema-refusals.ts";
import { ownLines, type Forecast, type RawForecast } from "./forecast.ts";
import { wholeNight, type ForecastHour } from "./forecast-night.ts";
import { judged, type RawRow } from "./raw-row.ts";

/**
 * A forecast judged for the night of a camp: hours from noon of its day to noon of the next, in order of time, and the
 * night made from them. Without a day in the camp every hour counts.
 */
export function judgeForecast(raw: RawForecast, camp: CampDocument): Forecast {
  const clock = { date: camp.date, timezone: camp.place?.timezone };
  const seen = new Map<string, string>();
  const { rows, bad } = judged(raw.rows, (row) => judgeHour(row, clock, seen));
  const tonight = rows.filter(({ at }) => isOfNight(at, camp));
  const hours = [...tonight].sort((one, other) => (one.at < other.at ? -1 : 1));
  const derived = { ...ownLines(camp.night), ...wholeNight(hours), ...raw.night };
  const parsed = nightSchema.safeParse(derived);
  const faults: Refusal[] =
    parsed.error === undefined ? [] : [...schemaRefusals(parsed.error.issues, derived)];
  if (rows.length > 0 && tonight.length === 0) faults.unshift(noneTonight(camp, rows));
  return {
    ...(parsed.success && faults.length === 0 ? { night: parsed.data } : {}),
    bad,
    leftOut: raw.leftOut,
    otherNights: rows.length - tonight.length,
    faults,
  };
}

type Clock = Parameters<typeof findInstant>[1];

function judgeHour({ cells, place }: RawRow, clock: Clock, seen: Map<string, string>) {
  const parsed = forecastHourSchema.safeParse(cells);
  if (!parsed.success) return { refusals: schemaRefusals(parsed.error.issues, cells) };
  const { at } = parsed.data;
  const instant = findInstant(at, clock);
  if (instant === undefined) return { refusals: [{ field: "at", got: at, need: AT_FAULT }] };
  const before = seen.get(instant);
  if (before !== undefined) {
    return { refusals: [{ field: "at", got: at, need: `a time of its own; ${before} has this one` }] };
  }
  seen.set(instant, place);
  const hour: ForecastHour = { ...parsed.data, at: instant };
  return { value: hour, refusals: gustFaults(hour) };
}

function gustFaults({ wind_m_s: wind, gust_m_s: gust }: ForecastHour): readonly Refusal[] {
  if (wind === undefined || gust === undefined || wind <= gust) return [];
  return [{ field: "wind_m_s", got: wind, need: `at most gust_m_s, which is ${gust}` }];
}

/** Noon by the clocks of the camp; where it has no time zone, by the sun; where no place either, in UTC. */
function noonOf(date: string, place: CampDocument["place"], days: number): number {
  const day = new Date(Date.parse(`${date}T00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);
  const byClock = findInstant(`${day}T12:00`, { timezone: place?.timezone });
  if (byClock !== undefined) return Date.parse(byClock);
  return Date.parse(`${day}T12:00Z`) - ((place?.lon_deg ?? 0) / 15) * 3_600_000;
}

function isOfNight(at: string, { date, place }: CampDocument): boolean {
  if (date === undefined) return true;
  const instant = Date.parse(at);
  return instant >= noonOf(date, place, 0) && instant <= noonOf(date, place, 1);
}

function noneTonight({ date = "" }: CampDocument, rows: readonly ForecastHour[]): Refusal {
  const times = rows.map(({ at }) => at).sort();
  return {
    field: "at",
    got: `${times[0] ?? ""} to ${times.at(-1) ?? ""}`,
    need: `hours from noon of ${date} to noon of the day after`,
  };
}
