import { isCivilDay } from "./fields.ts";

/** What a time in a forecast may look like. */
export const AT_NEED = 'a time such as "23:00", "2027-05-14T23:00" or, with its offset, "2027-05-14T21:00Z"';

const TIME =
  /^(?:(\d{4}-\d{2}-\d{2})[T ])?([01]\d|2[0-3]):([0-5]\d)(?::[0-5]\d(?:\.\d+)?)?(Z|[+-](?:0\d|1[0-4]):?[0-5]\d)?$/;

/** Whether a text is a time that a forecast may state. */
export function isTime(text: string): boolean {
  const match = TIME.exec(text.trim());
  if (match === null) return false;
  const [, date, , , offset] = match;
  return date === undefined ? offset === undefined : isCivilDay(date);
}

/** What a time without its day or offset is read by. */
export interface ClockOf {
  /** Civil date of the night: a time from noon on is of this day, one before noon of the next. */
  readonly date?: string | undefined;
  readonly timezone?: string | undefined;
}

/** The instant of a time, "2027-05-14T21:00Z"; nothing where day or time zone are needed and not known. */
export function findInstant(text: string, { date, timezone }: ClockOf): string | undefined {
  const match = TIME.exec(text.trim());
  if (match === null) return undefined;
  const [, ownDate, hour = "", minute = "", offset] = match;
  const clock = Number(hour) * 60 + Number(minute);
  const day = ownDate ?? (date === undefined ? undefined : dayAfter(date, clock < NOON ? 1 : 0));
  if (day === undefined) return undefined;
  const asIfUtc = Date.parse(`${day}T00:00Z`) + clock * MINUTE_MS;
  if (offset !== undefined) return written(asIfUtc - offsetMinutes(offset) * MINUTE_MS);
  return timezone === undefined ? undefined : written(fromLocal(asIfUtc, timezone));
}

const NOON = 12 * 60;
const MINUTE_MS = 60_000;
const DAY_MS = 24 * 60 * MINUTE_MS;

function dayAfter(date: string, days: number): string {
  return new Date(Date.parse(`${date}T00:00Z`) + days * DAY_MS).toISOString().slice(0, 10);
}

function offsetMinutes(offset: string): number {
  if (offset === "Z") return 0;
  const [hours, minutes] = [offset.slice(1, 3), offset.slice(-2)].map(Number);
  return (offset.startsWith("-") ? -1 : 1) * ((hours ?? 0) * 60 + (minutes ?? 0));
}

function written(instantMs: number): string {
  return `${new Date(instantMs).toISOString().slice(0, 16)}Z`;
}

/** What a clock in a time zone shows, as the instant at which UTC shows the same; and back, across a change of clocks. */
function fromLocal(asIfUtcMs: number, timezone: string): number {
  const first = asIfUtcMs - aheadMs(asIfUtcMs, timezone);
  return asIfUtcMs - aheadMs(first, timezone);
}

/** How far the clocks of a time zone are ahead of UTC at an instant. */
function aheadMs(instantMs: number, timezone: string): number {
  const parts = new Intl.DateTimeFormat("en-GB", {
    timeZone: timezone,
    hourCycle: "h23",
    year: "numeric",
    month: "2-digit",
    day: "2-digit",
    hour: "2-digit",
    minute: "2-digit",
  }).formatToParts(instantMs);
  const part = (type: Intl.DateTimeFormatPartTypes) => parts.find((one) => one.type === type)?.value ?? "";
  const shown = `${part("year")}-${part("month")}-${part("day")}T${part("hour")}:${part("minute")}Z`;
  return Date.parse(shown) - Math.floor(instantMs / MINUTE_MS) * MINUTE_MS;
}

/** Whether this machine knows a time zone. */
export function isTimezone(name: string): boolean {
  try {
    return new Intl.DateTimeFormat("en-GB", { timeZone: name }).resolvedOptions().timeZone !== "";
  } catch {
    return false;
  }
}
