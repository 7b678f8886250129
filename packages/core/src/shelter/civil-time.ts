/**
 * Dates and instants by arithmetic alone: the core has no clock. An instant is counted in days since
 * 2000-01-01T12:00Z, leap seconds left out.
 */

/** Noon (UTC) of a civil date, "2027-05-14"; nothing where it is no date of 1900 to 2100. */
export function parseDate(date: string): number | undefined {
  const found = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date);
  if (found === null) return undefined;
  const [year, month, day] = [Number(found[1]), Number(found[2]), Number(found[3])];
  if (year < 1900 || year > 2100 || month < 1 || month > 12 || day < 1) return undefined;
  if (day > monthDays(year, month)) return undefined;
  return dayNumber(year, month, day) - EPOCH;
}

/** An instant of ISO 8601 in UTC or with an offset: "2027-05-14T21:00Z", "2027-05-14T22:00:30+01:00". */
export function parseInstant(text: string): number | undefined {
  const found = /^(\d{4}-\d{2}-\d{2})T(\d{2}):(\d{2})(?::(\d{2})(?:\.\d+)?)?(Z|[+-]\d{2}:?\d{2})$/.exec(text);
  if (found === null) return undefined;
  const noon = parseDate(found[1] ?? "");
  const [hour, minute, second] = [Number(found[2]), Number(found[3]), Number(found[4] ?? 0)];
  if (noon === undefined || hour > 24 || minute > 59 || second > 60) return undefined;
  return noon - 0.5 + (hour * 3600 + minute * 60 + second) / DAY_S - offsetDays(found[5] ?? "Z");
}

function offsetDays(text: string): number {
  if (text === "Z") return 0;
  const sign = text.startsWith("-") ? -1 : 1;
  const digits = text.slice(1).replace(":", "");
  return (sign * (Number(digits.slice(0, 2)) * 60 + Number(digits.slice(2)))) / 1440;
}

/** "2027-05-14T20:12:09Z", to the nearest second. */
export function isoInstant(dayJ2000: number): string {
  const seconds = Math.round((dayJ2000 + 0.5) * DAY_S);
  const day = Math.floor(seconds / DAY_S);
  const clock = seconds - day * DAY_S;
  const parts = [Math.floor(clock / 3600), Math.floor(clock / 60) % 60, clock % 60];
  return `${civilDate(day + EPOCH)}T${parts.map((part) => String(part).padStart(2, "0")).join(":")}Z`;
}

/** The civil date so many days later. */
export function dateLater(date: string, days: number): string {
  return civilDate((parseDate(date) ?? Number.NaN) + EPOCH + days);
}

const DAY_S = 86_400;

/** Days of the proleptic Gregorian calendar, counted from 1 March of the year 0. */
function dayNumber(year: number, month: number, day: number): number {
  const years = month > 2 ? year : year - 1;
  const months = (month + 9) % 12;
  return (
    365 * years +
    Math.floor(years / 4) -
    Math.floor(years / 100) +
    Math.floor(years / 400) +
    Math.floor((153 * months + 2) / 5) +
    day -
    1
  );
}

const EPOCH = dayNumber(2000, 1, 1);

function civilDate(number: number): string {
  const era = Math.floor(number / 146_097);
  const inEra = number - era * 146_097;
  const yearInEra = Math.floor(
    (inEra - Math.floor(inEra / 1460) + Math.floor(inEra / 36_524) - Math.floor(inEra / 146_096)) / 365,
  );
  const dayOfYear = inEra - (365 * yearInEra + Math.floor(yearInEra / 4) - Math.floor(yearInEra / 100));
  const months = Math.floor((5 * dayOfYear + 2) / 153);
  const day = dayOfYear - Math.floor((153 * months + 2) / 5) + 1;
  const month = months < 10 ? months + 3 : months - 9;
  const year = yearInEra + era * 400 + (month <= 2 ? 1 : 0);
  return `${String(year).padStart(4, "0")}-${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`;
}

function monthDays(year: number, month: number): number {
  const next = month === 12 ? dayNumber(year + 1, 1, 1) : dayNumber(year, month + 1, 1);
  return next - dayNumber(year, month, 1);
}
