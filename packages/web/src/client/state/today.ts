/** Today's civil day on this device, "2027-05-14". */
export function today(now = new Date()): string {
  const two = (value: number): string => String(value).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** A civil day in short words, "14 May"; with the weekday where there is room, "Fri 14 May". */
export function sayDay(day: string, withWeekday = false): string {
  const date = new Date(`${day}T12:00:00Z`);
  if (Number.isNaN(date.getTime())) return day;
  const written = date.toLocaleDateString("en-GB", {
    timeZone: "UTC",
    day: "numeric",
    month: "short",
    ...(withWeekday ? { weekday: "short" } : {}),
  });
  return written.replace(",", "").replaceAll(" ", "\u00a0");
}
