export { importTrees, type BadRow, type TreeList } from "./tree-list.ts";
export { readTreesCsv } from "./trees-csv.ts";
export { readTreesGeoJson } from "./trees-geojson.ts";
export { readTreesGpx } from "./trees-gpx.ts";
