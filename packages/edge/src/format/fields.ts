import * as z from "zod/mini";
import { alternatives } from "./schema-words.ts";

/** A number within inclusive bounds. One sentence is refusal and description alike. */
export function number(low: number, high: number, unit = "") {
  const need = `a number from ${low} to ${high}${unit === "" ? "" : ` ${unit}`}`;
  return z.number({ error: need }).check(z.gte(low, need), z.lte(high, need), z.describe(need));
}

/** A whole number within inclusive bounds. */
export function whole(low: number, high: number) {
  const need = `a whole number from ${low} to ${high}`;
  return z.number({ error: need }).check(z.int(need), z.gte(low, need), z.lte(high, need), z.describe(need));
}

/** Text with at least one character that can be seen. */
export function text(what: string, longest = 200) {
  const need = `${what}: text, 1 to ${longest} characters`;
  return z.string({ error: need }).check(z.regex(/\S/, need), z.maxLength(longest, need), z.describe(need));
}

export function choice<const T extends readonly [string, ...string[]]>(...words: T) {
  const need = alternatives(words.map((word) => `"${word}"`));
  return z.enum(words, { error: need }).check(z.describe(need));
}

export function flag() {
  const need = "true or false";
  return z.boolean({ error: need }).check(z.describe(need));
}

/** A list with bounds on its length. */
export function list<T extends z.core.$ZodType>(item: T, what: string, least = 0, most = 10_000) {
  const need = `a list of ${least === most ? String(least) : `${least} to ${most}`} ${what}`;
  return z.array(item, { error: need }).check(z.minLength(least, need), z.maxLength(most, need));
}

/** A day of the calendar, "2027-05-14". */
export function day() {
  const need = "a day of the calendar, such as 2027-05-14";
  return z
    .string({ error: need })
    .check(z.regex(/^\d{4}-\d{2}-\d{2}$/, need), z.refine(isCivilDay, need), z.describe(need));
}

/** An object of named fields; fields it does not know are kept in the file and reported. */
export function record<T extends z.core.$ZodLooseShape>(what: string, shape: T) {
  return z.object(shape, { error: `an object: ${what}` });
}

/** Whether a day of the form 2027-05-14 is in the calendar. */
export function isCivilDay(value: string): boolean {
  const [year, month, dayOfMonth] = value.split("-").map(Number);
  if (year === undefined || month === undefined || dayOfMonth === undefined) return false;
  return year >= 1 && month >= 1 && month <= 12 && dayOfMonth >= 1 && dayOfMonth <= daysIn(year, month);
}

function daysIn(year: number, month: number): number {
  if (month === 2) return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}
