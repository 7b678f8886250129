import type { LoggedNight } from "@nightspan/core";
import {
  EMPTY_LOG,
  openLog,
  readLog,
  withNight,
  writeLog,
  type LogDocument,
  type LoggedSleeperDocument,
  type OpenedLog,
} from "@nightspan/edge";
import { computed, signal } from "@preact/signals";

const KEY = "nightspan-log";

const log = signal<OpenedLog>(kept());

/** How nights were, kept on this device alone. */
export const nights = computed(() => log.value.nights);

/** Whether this device refused to keep the log. */
export const logNotKept = signal(false);

/** The night that an answer belongs to. */
export interface NightOfLog {
  readonly camp: string;
  readonly date: string;
  readonly plannedLowC?: number;
}

/** Notes how one sleeper's night was; of the same night the later answer counts. */
export function noteNight({ camp, date, plannedLowC }: NightOfLog, sleeper: LoggedSleeperDocument): void {
  const night = {
    camp,
    date,
    ...(plannedLowC === undefined ? {} : { planned_low_c: plannedLowC }),
    sleepers: [sleeper],
  };
  take(withNight(log.peek().document, night));
}

/** Adds the nights of a log file to those here; false where the file cannot be used. */
export function takeLogText(text: string): boolean {
  const read = readLog(text);
  if (!read.ok) return false;
  const before = log.peek().document;
  take(read.value.document.nights.reduce<LogDocument>(withNight, before));
  return true;
}

/** The log as a file's text. */
export function logText(): string {
  return writeLog(log.peek().document);
}

/** Forgets every night on this device. */
export function forgetLog(): void {
  take(EMPTY_LOG);
}

/** What was answered for one sleeper of one night. */
export function answeredOf({ camp, date }: NightOfLog, sleeper: string): LoggedSleeperDocument | undefined {
  const night = log.value.document.nights.find((one) => one.camp === camp && one.date === date);
  return night?.sleepers.find((one) => one.sleeper === sleeper);
}

/** Nights as plans want them; nothing where there are none. */
export function nightsKnown(): readonly LoggedNight[] | undefined {
  const known = nights.value;
  return known.length === 0 ? undefined : known;
}

function take(document: LogDocument): void {
  const next = openLog(document);
  if (!next.ok) return;
  log.value = next.value;
  try {
    localStorage.setItem(KEY, writeLog(document));
    logNotKept.value = false;
  } catch {
    logNotKept.value = true;
  }
}

function kept(): OpenedLog {
  const empty: OpenedLog = { nights: [], document: EMPTY_LOG, unknownFields: [] };
  try {
    const text = localStorage.getItem(KEY);
    const read = text === null ? undefined : readLog(text);
    return read?.ok === true ? read.value : empty;
  } catch {
    return empty;
  }
}

/** The same for a question to the worker. */
export function logged(): { readonly nights?: readonly LoggedNight[] } {
  const known = nightsKnown();
  return known === undefined ? {} : { nights: known };
}
