import type { CampPlace } from "@nightspan/core";
import type { SaidText } from "../scene/text-item.ts";

/**
 * An instant as the camp's clocks show it, "21:40": by its time zone where one is named, else by the sun, four minutes a
 * degree of longitude; without a place in UTC.
 */
export function clockText(instant: string, place: CampPlace | undefined): SaidText {
  const at = instantMs(instant);
  return at === undefined ? { said: instant } : clockAt(at, place);
}

/** The same of an instant in milliseconds since 1970. */
export function clockAt(at: number, place: CampPlace | undefined): SaidText {
  if (place?.timezone !== undefined && zoneKnown(place.timezone)) return { said: inZone(at, place.timezone) };
  return { said: inZone(at + (place?.lonDeg ?? 0) * MS_PER_DEGREE, "UTC") };
}

function zoneKnown(timeZone: string): boolean {
  try {
    return new Intl.DateTimeFormat("en-GB", { timeZone }).resolvedOptions().timeZone !== "";
  } catch {
    return false;
  }
}

function inZone(at: number, timeZone: string): string {
  const style = { hour: "2-digit", minute: "2-digit", hourCycle: "h23", timeZone } as const;
  return new Intl.DateTimeFormat("en-GB", style).format(Math.round(at / MINUTE_MS) * MINUTE_MS);
}

/** Milliseconds since 1970 of an instant in UTC, "2027-05-14T20:10Z"; nothing where it is none. */
export function instantMs(instant: string): number | undefined {
  const parts = /^(\d{4})-(\d\d)-(\d\d)T(\d\d):(\d\d)(?::(\d\d)(?:\.\d+)?)?Z$/.exec(instant);
  if (parts === null) return undefined;
  const [year = 0, month = 1, day = 1, hour = 0, minute = 0, second = 0] = parts
    .slice(1)
    .map((part) => Number(part || 0));
  const seconds = ((daysSince1970(year, month, day) * 24 + hour) * 60 + minute) * 60 + second;
  return seconds * 1000;
}

/** Days of the Gregorian calendar, counted in years that begin in March. */
function daysSince1970(year: number, month: number, day: number): number {
  const march = month > 2 ? month - 3 : month + 9;
  const y = month > 2 ? year : year - 1;
  const ofYear = Math.floor((153 * march + 2) / 5) + day - 1;
  return 365 * y + Math.floor(y / 4) - Math.floor(y / 100) + Math.floor(y / 400) + ofYear - 719_468;
}

const MS_PER_DEGREE = 240_000;
const MINUTE_MS = 60_000;
