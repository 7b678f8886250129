/** The civil day after a day "2027-05-14", in the Gregorian calendar; nothing where it is no such day. */
export function nextDay(date: string): string | undefined {
  const found = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date);
  if (found === null) return undefined;
  const [year = 0, month = 0, day = 0] = found.slice(1).map(Number);
  if (day < daysIn(year, month)) return written(year, month, day + 1);
  return month < 12 ? written(year, month + 1, 1) : written(year + 1, 1, 1);
}

function daysIn(year: number, month: number): number {
  if (month === 2) return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}

function written(year: number, month: number, day: number): string {
  const two = (value: number) => String(value).padStart(2, "0");
  return `${String(year).padStart(4, "0")}-${two(month)}-${two(day)}`;
}
