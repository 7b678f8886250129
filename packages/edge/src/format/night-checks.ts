import type { Refusal } from "@nightspan/core";
import { isCivilDay } from "./fields.ts";
import { findInstant, isTime, isTimezone } from "./instant.ts";
import { field, listAt, numberAt, textAt } from "./raw.ts";

/** What a time lacks that nobody can place. */
export const AT_FAULT =
  "the camp's date and place.timezone, or a time with day and offset, such as 2027-05-14T21:00Z";

/** Faults between the fields of place and night: bounds out of order, times that cannot be placed or come twice. */
export function nightChecks(document: unknown): readonly Refusal[] {
  const place = field(document, "place");
  const night = field(document, "night");
  const timezone = textAt(place, "timezone");
  const known = timezone !== undefined && isTimezone(timezone);
  return [
    ...(timezone === undefined || known
      ? []
      : [{ field: "place.timezone", got: timezone, need: "a time zone such as Europe/Oslo" }]),
    ...notAbove(night, "low_c", "high_c", "night"),
    ...notAbove(night, "wind_m_s", "gust_m_s", "night"),
    ...hourChecks(listAt(night, "hours"), "night.hours", {
      date: civilDay(textAt(document, "date")),
      timezone: known ? timezone : undefined,
    }),
  ];
}

/** A date that is no day is a fault told elsewhere, once: the hours are judged as of some day. */
function civilDay(date: string | undefined): string | undefined {
  return date === undefined || isCivilDay(date) ? date : SOME_DAY;
}

const SOME_DAY = "2000-06-15";

/** The same of a list of hours alone. */
export function hourChecks(
  hours: readonly unknown[],
  list: string,
  clock: Parameters<typeof findInstant>[1],
): readonly Refusal[] {
  const first = new Map<string, number>();
  return hours.flatMap((hour, index) => {
    const at = `${list}[${index}]`;
    const faults = notAbove(hour, "wind_m_s", "gust_m_s", at);
    const time = textAt(hour, "at");
    if (time === undefined || !isTime(time)) return faults;
    const instant = findInstant(time, clock);
    if (instant === undefined) {
      return [...faults, { field: `${at}.at`, got: time, need: AT_FAULT }];
    }
    const before = first.get(instant);
    if (before === undefined) first.set(instant, index);
    else
      faults.push({
        field: `${at}.at`,
        got: time,
        need: `a time of its own; ${list}[${before}] has this one`,
      });
    return faults;
  });
}

function notAbove(given: unknown, low: string, high: string, at: string): Refusal[] {
  const [least, most] = [numberAt(given, low), numberAt(given, high)];
  if (least === undefined || most === undefined || least <= most) return [];
  return [{ field: `${at}.${low}`, got: least, need: `at most ${high}, which is ${most}` }];
}
