import { refuse, succeed, type Outcome } from "@nightspan/core";
import { parseJson } from "../format/json-text.ts";
import { field, listAt, textAt } from "../format/raw.ts";
import { gathered, TREE_FIELDS } from "./cells.ts";
import { judgeRows, type RawRow, type TreeList } from "./tree-list.ts";

/**
 * Trees from GeoJSON points (longitude, latitude) with the camp file's field names as properties; the id may also
 * be the feature's own. They become metres on the plane that touches the globe at the first point.
 *
 *   x = N cos φ₀ (λ − λ₀),  y = M (φ − φ₀)
 *
 * Error: under 0.1 m within 1 km of the first point; a phone's position is off by metres anyway.
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

interface GlobePlace {
  readonly lat_deg: number;
  readonly lon_deg: number;
}

function placeOf(feature: unknown): GlobePlace | undefined {
  const geometry = field(feature, "geometry");
  if (textAt(geometry, "type") !== "Point") return undefined;
  const [lon, lat] = listAt(geometry, "coordinates");
  if (typeof lon !== "number" || typeof lat !== "number") return undefined;
  return Math.abs(lat) <= 89 && Math.abs(lon) <= 180 ? { lat_deg: lat, lon_deg: lon } : undefined;
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

/** WGS 84: half the long axis [m] and the square of the eccentricity. */
const LONG_AXIS_M = 6_378_137;
const ECCENTRICITY_SQUARED = 0.006_694_379_990_14;

/** Metres east and north of the origin, to the centimetre. */
function onPlane(place: GlobePlace, origin: GlobePlace): readonly [number, number] {
  const lat = (origin.lat_deg * Math.PI) / 180;
  const w = 1 - ECCENTRICITY_SQUARED * Math.sin(lat) ** 2;
  const acrossM = (LONG_AXIS_M / Math.sqrt(w)) * Math.cos(lat);
  const alongM = (LONG_AXIS_M * (1 - ECCENTRICITY_SQUARED)) / w ** 1.5;
  const east = ((((place.lon_deg - origin.lon_deg + 540) % 360) - 180) * Math.PI) / 180;
  const north = ((place.lat_deg - origin.lat_deg) * Math.PI) / 180;
  return [centimetres(acrossM * east), centimetres(alongM * north)];
}

function centimetres(valueM: number): number {
  return Math.round(valueM * 100) / 100;
}

function leftOut(features: readonly unknown[]): readonly string[] {
  const known: readonly string[] = TREE_FIELDS;
  const names = features.flatMap((feature) => {
    const properties = field(feature, "properties");
    return typeof properties === "object" && properties !== null ? Object.keys(properties) : [];
  });
  return [...new Set(names)].filter((name) => !known.includes(name));
}
