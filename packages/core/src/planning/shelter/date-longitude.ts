import type { CampPlace } from "../../plan/camp.ts";

/**
 * Longitude by which a place keeps its date: its own, a whole turn on where its clocks keep the date of the far side of the
 * 180° meridian.
 *
 * Source   meeus-1998 for the sun; the zones are those of the public zone table (handbook/shelter.md)
 */
export function dateLongitudeDeg({ lonDeg, timezone }: CampPlace): number {
  if (timezone === undefined) return lonDeg;
  if (lonDeg < 0 && EAST_OF_THE_LINE.has(timezone)) return lonDeg + 360;
  return lonDeg > 0 && WEST_OF_THE_LINE.has(timezone) ? lonDeg - 360 : lonDeg;
}

/** Zones of western longitudes a day ahead of their sun, and of eastern ones a day behind. */
const EAST_OF_THE_LINE: ReadonlySet<string> = new Set([
  "Asia/Anadyr",
  "Pacific/Apia",
  "Pacific/Auckland",
  "Pacific/Chatham",
  "Pacific/Enderbury",
  "Pacific/Fakaofo",
  "Pacific/Fiji",
  "Pacific/Kanton",
  "Pacific/Kiritimati",
  "Pacific/Tongatapu",
  "Pacific/Wallis",
]);
const WEST_OF_THE_LINE: ReadonlySet<string> = new Set(["America/Adak"]);
