import type { Refusal } from "@nightspan/core";
import type { NightDocument } from "../format/camp-document.ts";
import type { BadRow, RawRow } from "./raw-row.ts";

/** What a forecast may say of an hour, by the camp file's names. The last four serve the night as a whole. */
export const FORECAST_COLUMNS = {
  at: "text",
  air_c: "number",
  wind_m_s: "number",
  gust_m_s: "number",
  rain_mm_h: "number",
  wind_from_deg: "number",
  humidity: "number",
  cloud: "number",
  thunder: "word",
} as const;

/** A forecast before it is judged. */
export interface RawForecast {
  readonly rows: readonly RawRow[];
  readonly leftOut: readonly string[];
  /** What the forecast says of the whole night itself, by the camp file's names. */
  readonly night?: Readonly<Record<string, unknown>>;
}

/** A forecast for one night: the night as the camp file writes it, and every row that cannot be used. */
export interface Forecast {
  /** Absent where the rows that can be used make none. */
  readonly night?: NightDocument;
  readonly bad: readonly BadRow[];
  readonly leftOut: readonly string[];
  /** How many hours of the list are of another night. */
  readonly otherNights: number;
  /** What is wrong with the night as a whole; nothing can be imported then. */
  readonly faults: readonly Refusal[];
}

/** The lines of a night that are not the forecast's: the leader's own, those of the station, and unknown ones. */
export function ownLines(night: NightDocument | undefined): Readonly<Record<string, unknown>> {
  return Object.fromEntries(Object.entries(night ?? {}).filter(([key]) => !OF_A_FORECAST.has(key)));
}

const OF_A_FORECAST: ReadonlySet<string> = new Set([
  "low_c",
  "high_c",
  "wind_m_s",
  "gust_m_s",
  "wind_from_deg",
  "rain_mm_h",
  "humidity",
  "cloud",
  "thunder",
  "hours",
]);
