import { describe, expect, it } from "vitest";
import { exampleCamp, faultFields } from "../examples.fixture.ts";
import { openCamp } from "../format/open-camp.ts";
import { importTrees } from "./tree-list.ts";
import { readTreesGeoJson } from "./trees-geojson.ts";
import { readTreesGpx } from "./trees-gpx.ts";

const gpx = (...waypoints: readonly string[]) =>
  `<?xml version="1.0"?>\n<gpx version="1.1">\n${waypoints.join("\n")}\n<trk><name>walk</name></trk></gpx>\n`;
const wpt = (lat: number, lon: number, inside: string) => `<wpt lat="${lat}" lon="${lon}">${inside}</wpt>`;

const GOOD = gpx(
  wpt(45, 7, "<ele>800</ele><name>A</name><cmt>oak, dbh 32 cm</cmt>"),
  "<!-- <wpt lat='1' lon='1'><name>not</name></wpt>\n -->",
  wpt(45.0001, 7, "<name>B &amp; C</name><desc><![CDATA[Girth: 1.005 m & mossy]]></desc>"),
  wpt(45, 7.0001, "<name>D dbh 28.5</name>"),
);

describe("trees from GPX waypoints", () => {
  it("take the name, and the trunk from what is written beside it", () => {
    const list = readTreesGpx(GOOD);
    const rows = list.ok ? list.value.rows : [];
    expect(list.ok && list.value.bad).toEqual([]);
    expect(rows.map(({ id, dbh_cm, girth_cm }) => [id, dbh_cm, girth_cm])).toEqual([
      ["A", 32, undefined],
      ["B & C", undefined, 100.5],
      ["D dbh 28.5", 28.5, undefined],
    ]);
  });

  it("stand where the same points of GeoJSON stand, from the first one", () => {
    const feature = (id: string, lon: number, lat: number) => ({
      type: "Feature",
      geometry: { type: "Point", coordinates: [lon, lat] },
      properties: { id, dbh_cm: 30 },
    });
    const features = [feature("A", 7, 45), feature("B", 7, 45.0001), feature("D", 7.0001, 45)];
    const same = readTreesGeoJson(JSON.stringify({ type: "FeatureCollection", features }));
    const list = readTreesGpx(GOOD);
    if (!list.ok || !same.ok) throw new Error("refused");
    const places = (rows: typeof same.value.rows) => rows.map(({ x_m, y_m }) => [x_m, y_m]);
    expect(places(list.value.rows)).toEqual(places(same.value.rows));
    const opened = openCamp(importTrees(exampleCamp("pairs").document, list.value));
    expect(opened.ok && opened.value.camp.ground?.source).toBe("gps");
    expect(opened.ok && opened.value.document.ground?.origin).toEqual({ lat_deg: 45, lon_deg: 7 });
  });

  it("are refused one by one where the trunk, the name or the place is missing or told two ways", () => {
    const list = readTreesGpx(
      gpx(
        wpt(45, 7, "<name>A</name><cmt>by the path</cmt>"),
        wpt(45, 7, "<cmt>dbh 30</cmt>"),
        '<wpt lat="north" lon="7"><name>C</name><cmt>dbh 30</cmt></wpt>',
        wpt(45, 7, "<name>D</name><cmt>dbh 30 cm</cmt><desc>dbh 40 cm</desc>"),
        wpt(45, 7, "<name>E</name><cmt>dbh 30,5 cm</cmt>"),
        wpt(45, 7, "<name>F</name><cmt>dbh 30 cm, girth 200 cm</cmt>"),
      ),
    );
    const bad = list.ok ? list.value.bad : [];
    expect(bad.map(({ place, refusals }) => [place, ...refusals.map(({ field }) => field)])).toEqual([
      ["line 3", "dbh_cm"],
      ["line 4", "id"],
      ["line 5", "wpt"],
      ["line 6", "dbh_cm"],
      ["line 7", "dbh_cm"],
      ["line 8", "dbh_cm"],
    ]);
    expect(bad[0]?.refusals[0]?.need).toContain('such as "dbh 32 cm"');
  });

  it("come from GPX alone, without entities of its own", () => {
    expect(faultFields(readTreesGpx("<!DOCTYPE x [<!ENTITY a 'b'>]><gpx/>"))).toEqual(["file"]);
    expect(faultFields(readTreesGpx("<kml/>"))).toEqual(["file"]);
    expect(faultFields(readTreesGpx(gpx()))).toEqual(["wpt"]);
  });

  it("are read in a time that grows with the text alone", () => {
    const started = performance.now();
    expect(readTreesGpx(`<gpx>${"<wpt lat='1' ".repeat(100_000)}`).ok).toBe(false);
    expect(readTreesGpx(`<gpx>${"<wpt>".repeat(20_000)}`).ok).toBe(false);
    expect(performance.now() - started).toBeLessThan(5_000);
  });
});
