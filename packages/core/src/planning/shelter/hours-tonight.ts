import type { Camp } from "../../plan/camp.ts";
import type { NightHour } from "../../plan/night-types.ts";
import { parseDate, parseInstant } from "../../shelter/civil-time.ts";
import { dateLongitudeDeg } from "./date-longitude.ts";

/** The forecast's hours that are of this night: noon to noon, half a day more where nobody knows where; all without a date. */
export function hoursTonight({
  night,
  date,
  place,
}: Pick<Camp, "night" | "date" | "place">): readonly NightHour[] {
  const hours = night?.hours ?? [];
  const day = parseDate(date ?? "");
  if (day === undefined) return hours;
  const noon = day - (place === undefined ? 0 : dateLongitudeDeg(place) / 360);
  const spareDays = place === undefined ? 0.5 : 0;
  return hours.filter(({ at }) => {
    const instant = parseInstant(at);
    return instant !== undefined && instant >= noon - spareDays && instant <= noon + 1 + spareDays;
  });
}
