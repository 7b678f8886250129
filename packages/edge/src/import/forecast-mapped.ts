import { refuse, succeed, type Outcome, type Refusal } from "@nightspan/core";
import * as z from "zod/mini";
import { choice, text } from "../format/fields.ts";
import { valueAt } from "../format/raw.ts";
import { schemaRefusals } from "../format/schema-refusals.ts";
import { FORECAST_COLUMNS, type RawForecast } from "./forecast.ts";
import { rounded } from "./forecast-coverage.ts";
import { findUnit, unitsOf } from "./forecast-units.ts";
import type { RawRow } from "./raw-row.ts";

/** The format of a file that says where in somebody else's JSON a forecast stands. */
export const MAPPING_FORMAT = "nightspan-mapping/1";

const path = () => text('a path such as "hourly.temperature" or "series[0].air"', 500);
const figure = () =>
  z.optional(
    z.strictObject({ path: path(), unit: text("a unit", 20) }, { error: 'an object: {"path", "unit"}' }),
  );

const mappingSchema = z.strictObject(
  {
    format: z.literal(MAPPING_FORMAT, { error: `"${MAPPING_FORMAT}"` }),
    hours: z.optional(path()),
    at: z.strictObject(
      { path: path(), unit: z.optional(choice("iso", "unix-s", "unix-ms")) },
      { error: 'an object: {"path"}' },
    ),
    air_c: z.strictObject(
      { path: path(), unit: text("a unit", 20) },
      { error: 'an object: {"path", "unit"}' },
    ),
    wind_m_s: figure(),
    gust_m_s: figure(),
    rain_mm_h: figure(),
    wind_from_deg: figure(),
    humidity: figure(),
    cloud: figure(),
  },
  { error: "an object: the mapping" },
);

export type ForecastMapping = z.infer<typeof mappingSchema>;

/**
 * A mapping, or every reason why it cannot be used. With `hours`, a path to a list with an object an hour, all other
 * paths start from such an object; without it each leads to a list, all of one length.
 */
export function readMapping(document: unknown): Outcome<ForecastMapping> {
  const parsed = mappingSchema.safeParse(document);
  const unit = FIGURES.flatMap((name): readonly Refusal[] => {
    const written = valueAt(document, [name, "unit"]);
    if (typeof written !== "string" || findUnit(name, written) !== undefined) return [];
    return [{ field: `${name}.unit`, got: written, need: `one of ${unitsOf(name).join(", ")}` }];
  });
  const refusals = [
    ...(parsed.error === undefined ? [] : schemaRefusals(parsed.error.issues, document)),
    ...unit,
  ];
  return parsed.success && refusals.length === 0 ? succeed(parsed.data) : { ok: false, refusals };
}

const FIGURES = (
  ["air_c", "wind_m_s", "gust_m_s", "rain_mm_h", "wind_from_deg", "humidity", "cloud"] as const
).filter((name) => Object.hasOwn(FORECAST_COLUMNS, name));

/** A forecast out of any JSON, by a mapping. */
export function readForecastMapped(document: unknown, mapping: ForecastMapping): Outcome<RawForecast> {
  const { hours } = mapping;
  if (hours === undefined) return fromColumns(document, mapping);
  const list = valueAt(document, stepsOf(hours));
  if (!Array.isArray(list)) return refuse(hours, list, "a list with an object an hour");
  const rows = list.map((hour: unknown, index) =>
    rowOf(`${hours}[${index}]`, mapping, (where) => valueAt(hour, stepsOf(where))),
  );
  return succeed({ rows, leftOut: [] });
}

function fromColumns(document: unknown, mapping: ForecastMapping): Outcome<RawForecast> {
  const column = (where: string): readonly unknown[] => {
    const list = valueAt(document, stepsOf(where));
    return Array.isArray(list) ? list : [];
  };
  const count = column(mapping.at.path).length;
  if (count === 0)
    return refuse(mapping.at.path, valueAt(document, stepsOf(mapping.at.path)), "a list of times");
  const refusals = FIGURES.flatMap((name): readonly Refusal[] => {
    const where = mapping[name]?.path;
    if (where === undefined || column(where).length === count) return [];
    return [{ field: where, got: `${column(where).length} values`, need: `${count}, one for each time` }];
  });
  if (refusals.length > 0) return { ok: false, refusals };
  const rows = Array.from({ length: count }, (_, index) =>
    rowOf(`${mapping.at.path}[${index}]`, mapping, (where) => column(where)[index]),
  );
  return succeed({ rows, leftOut: [] });
}

/** "series[0].air.value" → ["series", 0, "air", "value"]. */
function stepsOf(written: string): readonly PropertyKey[] {
  return [...written.matchAll(/\[(\d+)\]|([^.[\]]+)/g)].map(({ 1: index, 2: name = "" }) =>
    index === undefined ? name : Number(index),
  );
}

function rowOf(place: string, mapping: ForecastMapping, read: (where: string) => unknown): RawRow {
  const faults: Refusal[] = [];
  const cells: Record<string, unknown> = { at: timeOf(read(mapping.at.path), mapping.at.unit) };
  for (const name of FIGURES) {
    const told = mapping[name];
    const value = told === undefined ? undefined : read(told.path);
    if (told === undefined || value === undefined || value === null) continue;
    const change = findUnit(name, told.unit);
    if (typeof value === "number" && change !== undefined) cells[name] = rounded(change(value));
    else faults.push({ field: told.path, got: value, need: `a number, in ${told.unit}` });
  }
  return { place, cells, faults };
}

function timeOf(value: unknown, unit: ForecastMapping["at"]["unit"]): unknown {
  if (unit === undefined || unit === "iso" || typeof value !== "number") return value;
  const instant = new Date(unit === "unix-s" ? value * 1000 : value);
  return Number.isNaN(instant.getTime()) ? value : instant.toISOString();
}
