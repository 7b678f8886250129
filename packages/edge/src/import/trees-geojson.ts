import { refuse, succeed, type Outcome } from "@nightspan/core";
import { parseJson } from "../format/json-text.ts";
import { field, listAt, textAt } from "../format/raw.ts";
import { findGlobePlace, onPlane, type GlobePlace } from "./globe-place.ts";
import type { RawRow } from "./raw-row.ts";
import { gathered, TREE_FIELDS } from "./tree-columns.ts";
import { judgeRows, type TreeList } from "./tree-list.ts";

/**
 * Trees from GeoJSON points (longitude, latitude) with the camp file's field names as properties; the id may also
 * be the feature's own. They become metres on the plane that touches the globe at the first point.
 */
export function readTreesGeoJson(text: string): Outcome<TreeList> {
  const parsed = parseJson(text);
  if (!parsed.ok) return parsed;
  const features = listAt(parsed.value, "features");
  if (textAt(parsed.value, "type") !== "FeatureCollection" || features.length === 0) {
    return refuse(
      "type",
      field(parsed.value, "type"),
      'a GeoJSON "FeatureCollection" with at least one point',
    );
  }
  const places = features.map(placeOf);
  const origin = places.find((place) => place !== undefined);
  if (origin === undefined) return refuse("features", "no point", "points of longitude and latitude");
  const raw = features.map((feature, index) => rawRow(feature, index, places[index], origin));
  return succeed({ ...judgeRows(raw), leftOut: leftOut(features), origin });
}

function placeOf(feature: unknown): GlobePlace | undefined {
  const geometry = field(feature, "geometry");
  if (textAt(geometry, "type") !== "Point") return undefined;
  const [lon, lat] = listAt(geometry, "coordinates");
  return findGlobePlace(lat, lon);
}

function rawRow(feature: unknown, index: number, place: GlobePlace | undefined, origin: GlobePlace): RawRow {
  const properties = field(feature, "properties");
  const cells: Record<string, unknown> = {};
  for (const name of TREE_FIELDS) {
    const value = field(properties, name);
    if (value !== undefined && value !== null) cells[name] = value;
  }
  const id = cells["id"] ?? field(feature, "id");
  if (id !== undefined) cells["id"] = typeof id === "number" ? String(id) : id;
  const name = `feature ${index + 1}`;
  if (place === undefined) {
    const got = textAt(field(feature, "geometry"), "type");
    return {
      place: name,
      cells,
      unreadable: true,
      faults: [{ field: "geometry", got, need: "a point of longitude and latitude" }],
    };
  }
  const [x, y] = onPlane(place, origin);
  return { place: name, cells: gathered({ ...cells, x_m: x, y_m: y }), faults: [] };
}

function leftOut(features: readonly unknown[]): readonly string[] {
  const names = features.flatMap((feature) => {
    const properties = field(feature, "properties");
    return typeof properties === "object" && properties !== null ? Object.keys(properties) : [];
  });
  return [...new Set(names)].filter((name) => !TREE_FIELDS.includes(name));
}
