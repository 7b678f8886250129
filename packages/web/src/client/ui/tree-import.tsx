import type { Outcome } from "@nightspan/core";
import { importTrees, readTreesCsv, readTreesGeoJson, readTreesGpx, type TreeList } from "@nightspan/edge";
import { editCamp } from "../state/camp-store.ts";
import { WORDS } from "../words.ts";
import { ListImport } from "./list-import.tsx";

/** Trees from a list. */
export function TreeImport() {
  return (
    <ListImport
      accept=".csv,text/csv,.geojson,.json,.gpx"
      title={WORDS.ground.import}
      note={WORDS.ground.importNote}
      done={WORDS.ground.imported}
      read={(text, name) => readTrees(text, name)}
      take={(list) => editCamp("", (document) => importTrees(document, list))}
    />
  );
}

/** How a list is read, by the ending of its name. */
function readTrees(text: string, name: string): Outcome<TreeList> {
  if (/\.gpx$/i.test(name)) return readTreesGpx(text);
  return /\.(geo)?json$/i.test(name) ? readTreesGeoJson(text) : readTreesCsv(text);
}
