import { refuse, succeed, type Outcome } from "@nightspan/core";
import type { CampDocument } from "../format/camp-document.ts";
import { parseJson } from "../format/json-text.ts";
import { textAt } from "../format/raw.ts";
import { csvHeadings } from "./csv-table.ts";
import type { ForecastMapping } from "./forecast-mapped.ts";
import { importInspections, readInspectionsCsv } from "./inspections-csv.ts";
import { importKit, readKitCsv } from "./kit-csv.ts";
import type { BadRow } from "./raw-row.ts";
import { importForecast, readForecast } from "./read-forecast.ts";
import { importTrees, type TreeList } from "./tree-list.ts";
import { readTreesCsv } from "./trees-csv.ts";
import { readTreesGeoJson } from "./trees-geojson.ts";
import { readTreesGpx } from "./trees-gpx.ts";

export type ListKind = "trees" | "forecast" | "kit" | "inspections";

/** A list read for a camp: what it would make of the camp, and what stands in the way. */
export interface ReadList {
  readonly kind: ListKind;
  /** Rows that can be used, and how many the camp has of them now. */
  readonly rows: number;
  readonly before: number;
  readonly bad: readonly BadRow[];
  readonly leftOut: readonly string[];
  /** Hours of a forecast that are of another night. */
  readonly otherNights: number;
  /** The camp with the usable rows in place of what it had; absent where they make nothing. */
  readonly camp?: CampDocument;
}

/**
 * Any list that can be put into a camp, told by its own look: GPX and GeoJSON are trees; JSON of another form is a
 * forecast; CSV is what its headings say. With a mapping it is a forecast.
 */
export function readList(text: string, camp: CampDocument, mapping?: ForecastMapping): Outcome<ReadList> {
  if (mapping !== undefined) return forecastList(text, camp, mapping);
  if (/^\uFEFF?\s*</.test(text)) return treeList(readTreesGpx(text), camp);
  if (/^\uFEFF?\s*[{[]/.test(text)) return jsonList(text, camp);
  const headings = csvHeadings(text);
  const has = (...names: readonly string[]) => names.some((name) => headings.includes(name));
  if (has("item") && has("action", "finding", "by")) return inspectionList(text, camp);
  if (has("at", "air_c")) return forecastList(text, camp);
  if (has("kind")) return kitList(text, camp);
  if (has("x_m", "y_m", "dbh_cm", "girth_cm", "id")) return treeList(readTreesCsv(text), camp);
  return refuse("line 1", headings.join(", "), HEADINGS);
}

const HEADINGS =
  "headings of trees (id, x_m, y_m, dbh_cm), of a forecast (at, air_c), of kit (id, kind) or of inspections (item, on, by, action, finding)";

function jsonList(text: string, camp: CampDocument): Outcome<ReadList> {
  const parsed = parseJson(text);
  if (!parsed.ok) return parsed;
  const isGeo = textAt(parsed.value, "type") === "FeatureCollection";
  return isGeo ? treeList(readTreesGeoJson(text), camp) : forecastList(text, camp);
}

function treeList(list: Outcome<TreeList>, camp: CampDocument): Outcome<ReadList> {
  if (!list.ok) return list;
  const { rows, bad, leftOut } = list.value;
  const before = camp.ground?.trees?.length ?? 0;
  return succeed({
    kind: "trees",
    rows: rows.length,
    before,
    bad,
    leftOut,
    otherNights: 0,
    ...(rows.length === 0 ? {} : { camp: importTrees(camp, list.value) }),
  });
}

function forecastList(text: string, camp: CampDocument, mapping?: ForecastMapping): Outcome<ReadList> {
  const list = readForecast(text, camp, mapping);
  if (!list.ok) return list;
  const { night, bad, leftOut, otherNights } = list.value;
  return succeed({
    kind: "forecast",
    rows: night?.hours?.length ?? 0,
    before: camp.night?.hours?.length ?? 0,
    bad,
    leftOut,
    otherNights,
    ...(night === undefined ? {} : { camp: importForecast(camp, night) }),
  });
}

function kitList(text: string, camp: CampDocument): Outcome<ReadList> {
  const list = readKitCsv(text);
  if (!list.ok) return list;
  const { rows, bad, leftOut } = list.value;
  return succeed({
    kind: "kit",
    rows: rows.length,
    before: camp.kit?.length ?? 0,
    bad,
    leftOut,
    otherNights: 0,
    ...(rows.length === 0 ? {} : { camp: importKit(camp, list.value) }),
  });
}

function inspectionList(text: string, camp: CampDocument): Outcome<ReadList> {
  const list = readInspectionsCsv(text, camp);
  if (!list.ok) return list;
  const { rows, bad, leftOut } = list.value;
  const before = (camp.kit ?? []).reduce((sum, { inspections = [] }) => sum + inspections.length, 0);
  return succeed({
    kind: "inspections",
    rows: rows.length,
    before,
    bad,
    leftOut,
    otherNights: 0,
    ...(rows.length === 0 ? {} : { camp: importInspections(camp, list.value) }),
  });
}
