export { planLists, type PlanList } from "./plan-lists.ts";
export { calendarText } from "./calendar.ts";
export { berthsGeoJson } from "./berths-geojson.ts";
export { berthsGpx } from "./berths-gpx.ts";
export { cutsCsv, packingCsv, returnsCsv, spoolsCsv } from "./store-lists.ts";
