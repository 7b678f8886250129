import { refuse, succeed, type LoggedNight, type Outcome, type Refusal } from "@nightspan/core";
import type * as z from "zod/mini";
import { parseJson } from "./json-text.ts";
import { kelvin } from "./kit-to-si.ts";
import { LOG_FORMAT, type loggedNightSchema, type loggedSleeperSchema, logSchema } from "./log-schema.ts";
import { convert, present } from "./optional.ts";
import { schemaRefusals } from "./schema-refusals.ts";
import { unknownFields } from "./unknown-fields.ts";

/** The log file as it is written. Fields that the schema does not know ride along. */
export type LogDocument = z.infer<typeof logSchema>;
export type LoggedNightDocument = z.infer<typeof loggedNightSchema>;
export type LoggedSleeperDocument = z.infer<typeof loggedSleeperSchema>;

/** A log that can be learnt from: in SI units for the engine, and as it is to be saved. */
export interface OpenedLog {
  readonly nights: readonly LoggedNight[];
  readonly document: LogDocument;
  readonly unknownFields: readonly string[];
}

export const EMPTY_LOG: LogDocument = { format: LOG_FORMAT, nights: [] };

/** A log from the text of its file, or every reason why it cannot be used. */
export function readLog(text: string): Outcome<OpenedLog> {
  const parsed = parseJson(text);
  return parsed.ok ? openLog(parsed.value) : parsed;
}

/** A log from its document, or every reason why it cannot be used, by field path. */
export function openLog(given: unknown): Outcome<OpenedLog> {
  const checked = logSchema.safeParse(given);
  const newer = newerFormat(given);
  if (newer !== undefined) return newer;
  if (!checked.success) return { ok: false, refusals: schemaRefusals(checked.error.issues, given) };
  const twice = checked.data.nights.flatMap(twiceRefusals);
  if (twice.length > 0 || !fits(given)) return { ok: false, refusals: twice };
  return succeed({
    nights: given.nights.map(loggedNight),
    document: given,
    unknownFields: unknownFields(given, checked.data),
  });
}

/** The whole file: keys in the order they came in, one newline at the end. */
export function writeLog(document: LogDocument): string {
  return `${JSON.stringify(document, null, 2)}\n`;
}

/** The log with a night more. The same camp's same date is one night: of it the later answers of a sleeper count. */
export function withNight(document: LogDocument, night: LoggedNightDocument): LogDocument {
  const at = document.nights.findIndex(({ camp, date }) => camp === night.camp && date === night.date);
  const before = document.nights[at];
  if (before === undefined) return { ...document, nights: [...document.nights, night] };
  const answered = new Set(night.sleepers.map(({ sleeper }) => sleeper));
  const kept = before.sleepers.filter(({ sleeper }) => !answered.has(sleeper));
  const merged = { ...before, ...night, sleepers: [...kept, ...night.sleepers] };
  return { ...document, nights: document.nights.with(at, merged) };
}

function newerFormat(given: unknown): Outcome<never> | undefined {
  if (typeof given !== "object" || given === null || !("format" in given)) return undefined;
  const { format } = given;
  if (typeof format !== "string" || format === LOG_FORMAT || !/^nightspan-log\/\d+$/.test(format))
    return undefined;
  return refuse("format", format, `"${LOG_FORMAT}"; a newer file needs a newer version of Nightspan`);
}

/** The document itself is used on, not the schema's copy, which has no unknown fields. */
function fits(document: unknown): document is LogDocument {
  return logSchema.safeParse(document).success;
}

function twiceRefusals({ sleepers }: LoggedNightDocument, night: number): readonly Refusal[] {
  const seen = new Set<string>();
  return sleepers.flatMap(({ sleeper }, at) => {
    const isTwice = seen.has(sleeper);
    seen.add(sleeper);
    const field = `nights[${night}].sleepers[${at}].sleeper`;
    return isTwice ? [{ field, got: sleeper, need: "each sleeper once a night" }] : [];
  });
}

function loggedNight(night: LoggedNightDocument): LoggedNight {
  const { camp, date, planned_low_c, measured_low_c, sleepers, note } = night;
  return present({
    camp,
    date,
    plannedLowK: convert(planned_low_c, kelvin),
    measuredLowK: convert(measured_low_c, kelvin),
    sleepers: sleepers.map((one) =>
      present({
        sleeper: one.sleeper,
        under: loggedHalf(one.under),
        over: loggedHalf(one.over),
        wokeAt: one.woke_at,
        trouble: one.trouble,
        leaveOut: one.leave_out,
        note: one.note,
      }),
    ),
    note,
  });
}

function loggedHalf(half: LoggedSleeperDocument["under"]) {
  return half === undefined
    ? undefined
    : present({ felt: half.felt, marginK: half.margin_k, item: half.item });
}
