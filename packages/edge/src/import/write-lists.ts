import type { CampDocument } from "../format/camp-document.ts";
import { FORECAST_COLUMNS } from "./forecast.ts";
import { writeInspectionsCsv } from "./inspections-csv.ts";
import { writeKitCsv } from "./kit-csv.ts";
import type { ListKind } from "./read-list.ts";
import { TREE_COLUMNS } from "./tree-columns.ts";
import { writeCsv } from "./write-csv.ts";

/** Lists that can be taken out of a camp, each as the CSV text that `import` reads. */
export const LISTS: Readonly<Record<ListKind, (camp: CampDocument) => string>> = {
  trees: writeTreesCsv,
  forecast: writeForecastCsv,
  kit: writeKitCsv,
  inspections: writeInspectionsCsv,
};

function writeTreesCsv({ ground }: CampDocument): string {
  const trees = (ground?.trees ?? []).map(({ looked_at: looked, ...tree }) => ({
    ...tree,
    ...(looked === undefined ? {} : { looked_at_by: looked.by, looked_at_on: looked.on }),
  }));
  return writeCsv(TREE_COLUMNS, trees);
}

function writeForecastCsv({ night }: CampDocument): string {
  return writeCsv(FORECAST_COLUMNS, night?.hours ?? []);
}
