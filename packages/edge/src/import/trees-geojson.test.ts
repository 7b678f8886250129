import { describe, expect, it } from "vitest";
import { exampleCamp, faultFields } from "../examples.fixture.ts";
import { openCamp } from "../format/open-camp.ts";
import { importTrees } from "./tree-list.ts";
import { readTreesGeoJson } from "./trees-geojson.ts";

const point = (lon: number, lat: number, properties: object, id?: string | number) => ({
  type: "Feature",
  ...(id === undefined ? {} : { id }),
  geometry: { type: "Point", coordinates: [lon, lat] },
  properties,
});
const collection = (...features: object[]) => JSON.stringify({ type: "FeatureCollection", features });

/** One minute of latitude at 45° on the WGS 84 ellipsoid, from the series of the meridian: 1852.2 m. */
const MINUTE_AT_45_M = 1_852.2;

describe("trees from GeoJSON", () => {
  const text = collection(
    point(7, 45, { id: "A", dbh_cm: 30 }),
    point(7, 45 + 1 / 60, { girth_cm: 90 }, 12),
    point(7 + 1 / 60, 45, { id: "C", dbh_cm: 25, nest: "owl" }),
  );

  it("puts points on the plane at the first one", () => {
    const list = readTreesGeoJson(text);
    const rows = list.ok ? list.value.rows : [];
    expect(rows.map(({ id }) => id)).toEqual(["A", "12", "C"]);
    expect(rows[0]).toMatchObject({ x_m: 0, y_m: 0 });
    expect(rows[1]?.y_m).toBeCloseTo(MINUTE_AT_45_M, 0);
    expect(rows[2]?.x_m).toBeGreaterThan(MINUTE_AT_45_M * Math.SQRT1_2);
    expect(rows[2]?.x_m).toBeLessThan(MINUTE_AT_45_M * Math.SQRT1_2 * 1.01);
    expect(list.ok && list.value.leftOut).toEqual(["nest"]);
  });

  it("makes every pair of them say: step it out", () => {
    const list = readTreesGeoJson(text);
    if (!list.ok) throw new Error("refused");
    const opened = openCamp(importTrees(exampleCamp("demo").document, list.value));
    expect(opened.ok && opened.value.camp.ground?.source).toBe("gps");
    expect(opened.ok && opened.value.document.ground?.origin).toEqual({ lat_deg: 45, lon_deg: 7 });
  });

  it("names features that are no points, and trees without a trunk", () => {
    const mixed = readTreesGeoJson(
      collection(point(7, 45, { id: "A" }), {
        type: "Feature",
        geometry: { type: "LineString", coordinates: [] },
        properties: { id: "B", dbh_cm: 3 },
      }),
    );
    expect(mixed.ok && mixed.value.bad.map(({ place, refusals }) => [place, refusals[0]?.field])).toEqual([
      ["feature 1", "dbh_cm"],
      ["feature 2", "geometry"],
    ]);
    expect(faultFields(readTreesGeoJson("{}"))).toEqual(["type"]);
  });
});
