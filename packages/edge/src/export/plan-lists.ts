import type { Camp, Plan } from "@nightspan/core";
import { berthsGeoJson } from "./berths-geojson.ts";
import { berthsGpx } from "./berths-gpx.ts";
import { calendarText } from "./calendar.ts";
import { cutsCsv, packingCsv, returnsCsv, spoolsCsv } from "./store-lists.ts";

/** A file for another program, by its name. */
export interface PlanList {
  readonly name: string;
  readonly content: string;
}

/** What other programs read of a plan: lists, calendar and maps; none of it carries a body's weight, an age or a pull. */
export function planLists(plan: Plan, camp: Camp): readonly PlanList[] {
  const lists = [
    ["packing.csv", packingCsv(plan, camp)],
    ["returns.csv", returnsCsv(plan, camp)],
    ["cuts.csv", cutsCsv(plan)],
    ["spools.csv", spoolsCsv(plan)],
    ["night.ics", calendarText(plan, camp)],
    ["berths.gpx", berthsGpx(plan, camp)],
    ["berths.geojson", berthsGeoJson(plan, camp)],
  ] as const;
  return lists.flatMap(([name, content]) => (content === undefined ? [] : [{ name, content }]));
}
