import { refuse, succeed, type Outcome, type Refusal } from "@nightspan/core";
import { field, listAt, textAt, textsAt } from "../format/raw.ts";
import { FORECAST_COLUMNS, type RawForecast } from "./forecast.ts";
import { findUnit, unitsOf } from "./forecast-units.ts";
import type { RawRow } from "./raw-row.ts";

/**
 * A forecast from CoverageJSON (OGC 21-069): one coverage at one place, values along the axis `t`. Parameters are known
 * by the last word of what they observe, by the names of the CF conventions, or by our own names; each must say its unit.
 */
export function readForecastCoverage(document: unknown): Outcome<RawForecast> {
  const found = coverageOf(document);
  if (!found.ok) return found;
  const { coverage, parameters } = found.value;
  const axes = field(field(coverage, "domain"), "axes");
  const times = textsAt(field(axes, "t"), "values");
  if (times.length === 0) return refuse("domain.axes.t", field(axes, "t"), 'times in "values"');
  const series = Object.entries(isObject(parameters) ? parameters : {}).map(([key, parameter]) =>
    seriesOf(key, parameter, coverage, times.length),
  );
  const refusals = series.flatMap(({ faults }) => faults);
  if (refusals.length > 0) return { ok: false, refusals };
  if (!series.some((one) => one.name === "air_c")) {
    return refuse(
      "parameters",
      Object.keys(isObject(parameters) ? parameters : {}),
      "one that observes air_temperature",
    );
  }
  const leftOut = series.flatMap(({ key, name }) => (name === undefined ? [key] : []));
  return succeed({ rows: times.map((at, index) => rowAt(at, index, series)), leftOut });
}

/** Whether a document is CoverageJSON at all. */
export function isCoverage(document: unknown): boolean {
  const type = textAt(document, "type");
  return type === "Coverage" || type === "CoverageCollection";
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function coverageOf(
  document: unknown,
): Outcome<{ readonly coverage: unknown; readonly parameters: unknown }> {
  if (textAt(document, "type") === "Coverage") {
    return succeed({ coverage: document, parameters: field(document, "parameters") });
  }
  const coverages = listAt(document, "coverages");
  if (coverages.length !== 1)
    return refuse("coverages", `${coverages.length} coverages`, "one coverage, of the camp's place");
  const [coverage] = coverages;
  return succeed({ coverage, parameters: field(coverage, "parameters") ?? field(document, "parameters") });
}

interface Series {
  readonly key: string;
  readonly name: string | undefined;
  readonly values: readonly (number | undefined)[];
  readonly faults: readonly Refusal[];
}

const CF_NAMES: Readonly<Record<string, string>> = {
  air_temperature: "air_c",
  wind_speed: "wind_m_s",
  wind_speed_of_gust: "gust_m_s",
  wind_from_direction: "wind_from_deg",
  relative_humidity: "humidity",
  cloud_area_fraction: "cloud",
  rainfall_rate: "rain_mm_h",
  rainfall_flux: "rain_mm_h",
  precipitation_flux: "rain_mm_h",
  lwe_precipitation_rate: "rain_mm_h",
  precipitation_amount: "rain_mm_h",
};

function seriesOf(key: string, parameter: unknown, coverage: unknown, count: number): Series {
  const name = nameOf(key, parameter);
  if (name === undefined) return { key, name, values: [], faults: [] };
  const unit = unitOf(parameter);
  const change = findUnit(name, unit ?? "");
  const range = field(field(coverage, "ranges"), key);
  const values = listAt(range, "values");
  const faults: Refusal[] = [];
  if (change === undefined) {
    faults.push({ field: `parameters.${key}.unit`, got: unit, need: `one of ${unitsOf(name).join(", ")}` });
  }
  if (values.length !== count) {
    const got = range === undefined ? undefined : `${values.length} values`;
    faults.push({ field: `ranges.${key}.values`, got, need: `${count} values, one for each time` });
  }
  const read = values.map((value) =>
    typeof value === "number" && change !== undefined ? change(value) : undefined,
  );
  return { key, name, values: read, faults };
}

function nameOf(key: string, parameter: unknown): string | undefined {
  const observed = textAt(field(parameter, "observedProperty"), "id") ?? "";
  const last = observed.split(/[/#:]/).at(-1) ?? "";
  return [last, key].flatMap((word) => {
    if (Object.hasOwn(CF_NAMES, word)) return CF_NAMES[word] ?? [];
    return Object.hasOwn(FORECAST_COLUMNS, word) && word !== "at" && word !== "thunder" ? [word] : [];
  })[0];
}

function unitOf(parameter: unknown): string | undefined {
  const unit = field(parameter, "unit");
  return textAt(unit, "symbol") ?? textAt(field(unit, "symbol"), "value");
}

function rowAt(at: string, index: number, series: readonly Series[]): RawRow {
  const cells = series.flatMap(({ name, values }) => {
    const value = values[index];
    return name === undefined || value === undefined ? [] : [[name, rounded(value)] as const];
  });
  return { place: `time ${index + 1}`, cells: { at, ...Object.fromEntries(cells) }, faults: [] };
}

/** To a thousandth, without the noise of conversions. */
export function rounded(value: number): number {
  return Math.round(value * 1000) / 1000;
}
