import { refuse, succeed, type Outcome } from "@nightspan/core";
import type { CampDocument, NightDocument } from "../format/camp-document.ts";
import { parseJson } from "../format/json-text.ts";
import { ownLines, type Forecast, type RawForecast } from "./forecast.ts";
import { isCoverage, readForecastCoverage } from "./forecast-coverage.ts";
import { readForecastCsv } from "./forecast-csv.ts";
import { FORECAST_FORMAT, readForecastJson } from "./forecast-json.ts";
import { readForecastMapped, type ForecastMapping } from "./forecast-mapped.ts";
import { judgeForecast } from "./judge-forecast.ts";
import { field } from "../format/raw.ts";

/** A forecast for a camp's night from a text: CSV, our own JSON, CoverageJSON, or by a mapping any other JSON. */
export function readForecast(text: string, camp: CampDocument, mapping?: ForecastMapping): Outcome<Forecast> {
  const raw = rawOf(text, mapping);
  if (!raw.ok) return raw;
  const forecast = judgeForecast(raw.value, camp);
  const { bad, faults } = forecast;
  return bad.length === 0 && faults.length > 0 ? { ok: false, refusals: faults } : succeed(forecast);
}

function rawOf(text: string, mapping: ForecastMapping | undefined): Outcome<RawForecast> {
  if (mapping === undefined && !/^\uFEFF?\s*[{[]/.test(text)) return readForecastCsv(text);
  const parsed = parseJson(text);
  if (!parsed.ok) return parsed;
  const document = parsed.value;
  if (mapping !== undefined) return readForecastMapped(document, mapping);
  if (isCoverage(document)) return readForecastCoverage(document);
  if (field(document, "format") === FORECAST_FORMAT) return readForecastJson(document);
  return refuse(
    "file",
    "JSON of another form",
    `"format": "${FORECAST_FORMAT}", CoverageJSON, or --mapping with a file that says where its figures stand`,
  );
}

/** The camp with this forecast in place of the one it had; the leader's own stop lines stay. */
export function importForecast(document: CampDocument, night: NightDocument): CampDocument {
  return { ...document, night: { ...ownLines(document.night), ...night } };
}
