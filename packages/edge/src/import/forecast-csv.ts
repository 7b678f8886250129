import { succeed, type Outcome } from "@nightspan/core";
import { readCsvTable } from "./csv-table.ts";
import { FORECAST_COLUMNS, type RawForecast } from "./forecast.ts";

/** A forecast from a CSV text: a line an hour, `at` and `air_c` needed, the rest where it is known. */
export function readForecastCsv(text: string): Outcome<RawForecast> {
  const table = readCsvTable(text, FORECAST_COLUMNS, [["at"], ["air_c"]], "hour");
  return table.ok ? succeed({ rows: table.value.rows, leftOut: table.value.leftOut }) : table;
}
