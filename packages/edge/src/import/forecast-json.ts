import { refuse, succeed, type Outcome } from "@nightspan/core";
import { field, listAt } from "../format/raw.ts";
import { FORECAST_COLUMNS, type RawForecast } from "./forecast.ts";

/** The format of a forecast of our own in JSON. */
export const FORECAST_FORMAT = "nightspan-forecast/1";

const KNOWN: readonly string[] = Object.keys(FORECAST_COLUMNS);

/** A forecast in our own JSON: `hours`, and `night` for what is said of the whole night; either alone will do. */
export function readForecastJson(document: unknown): Outcome<RawForecast> {
  const format = field(document, "format");
  if (format !== FORECAST_FORMAT) return refuse("format", format, `"${FORECAST_FORMAT}"`);
  const [night, hours] = [field(document, "night"), field(document, "hours")];
  if (night === undefined && hours === undefined) return refuse("hours", undefined, "hours, night or both");
  if (hours !== undefined && !Array.isArray(hours)) return refuse("hours", hours, "a list of hours");
  if (night !== undefined && !isObject(night)) return refuse("night", night, "an object: the whole night");
  const rows = listAt(document, "hours").map((hour, index) => ({
    place: `hours[${index}]`,
    cells: isObject(hour) ? hour : {},
    faults: isObject(hour) ? [] : [{ field: "hour", got: hour, need: "an object: one hour of the forecast" }],
    unreadable: !isObject(hour),
  }));
  const names = rows.flatMap(({ cells }) => Object.keys(cells));
  const leftOut = [...new Set(names)].filter((name) => !KNOWN.includes(name));
  return succeed({ rows, leftOut, ...(night === undefined ? {} : { night: { ...night } }) });
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
