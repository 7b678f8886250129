import type { Camp, Plan } from "@nightspan/core";
import { ENGLISH } from "@nightspan/drawing";
import { momentsTold } from "../words/night-lines.ts";

/**
 * The night by the clock as an iCalendar text (RFC 5545), an event a moment, in UTC; nothing where no moment is known.
 * The same plan gives the same text: each event is stamped with its own moment.
 */
export function calendarText(plan: Plan, { name, ground }: Camp): string | undefined {
  const moments = momentsTold(plan);
  if (moments.length === 0) return undefined;
  const place = ground?.meetingPoint?.note;
  const events = moments.flatMap(({ at, what }) => {
    const stamp = stampOf(at);
    return [
      "BEGIN:VEVENT",
      `UID:${stamp}-${what}@nightspan`,
      `DTSTAMP:${stamp}`,
      `DTSTART:${stamp}`,
      `SUMMARY:${escaped(`${ENGLISH[`night.${what}`]} (${name})`)}`,
      ...(place === undefined ? [] : [`LOCATION:${escaped(place)}`]),
      ...(what === "arrive-by"
        ? ["BEGIN:VALARM", "ACTION:DISPLAY", ALARM, "TRIGGER:-PT1H", "END:VALARM"]
        : []),
      "END:VEVENT",
    ];
  });
  const lines = ["BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//Nightspan//EN", ...events, "END:VCALENDAR"];
  return lines.map((line) => `${folded(line)}\r\n`).join("");
}

const ALARM = "DESCRIPTION:Arrive by in an hour";

/** "2027-05-14T21:00Z" → "20270514T210000Z". */
function stampOf(at: string): string {
  return `${new Date(at).toISOString().slice(0, 19).replaceAll(/[-:]/g, "")}Z`;
}

function escaped(text: string): string {
  return text.replaceAll(/[\\;,]/g, (sign) => `\\${sign}`).replaceAll(/\r\n|\r|\n/g, "\\n");
}

/** At most 75 bytes a line; what is longer goes on in the next, behind a space, and no sign is cut in two. */
function folded(line: string): string {
  const encoder = new TextEncoder();
  let bytes = 0;
  let text = "";
  for (const sign of line) {
    const size = encoder.encode(sign).length;
    if (bytes + size > 75) {
      text += "\r\n ";
      bytes = 1;
    }
    text += sign;
    bytes += size;
  }
  return text;
}
