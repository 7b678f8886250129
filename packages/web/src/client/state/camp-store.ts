import type { Outcome, Refusal } from "@nightspan/core";
import { openCamp, readCamp, type CampDocument, type OpenedCamp } from "@nightspan/edge";
import { computed, signal } from "@preact/signals";
import { change, redo, settle, startHistory, undo, type History } from "./history.ts";
import { keepCamp, keptCamps } from "./kept-camps.ts";

/** The camp in hand: the file's own form is the truth, opened for the engine at every change. */
interface Current {
  readonly id: string;
  readonly history: History<CampDocument>;
  readonly opened: OpenedCamp;
}

const current = signal<Current | undefined>(undefined);

export const opened = computed(() => current.value?.opened);
export const campId = computed(() => current.value?.id);
export const canUndo = computed(() => (current.value?.history.past.length ?? 0) > 0);
export const canRedo = computed(() => (current.value?.history.future.length ?? 0) > 0);

/** Whether this device refused to keep the camp. */
export const keepsNothing = signal(false);

/** The last camp of this device, for "continue". */
export const lastCamp = signal<{ readonly id: string; readonly document: CampDocument } | undefined>(
  undefined,
);

/** Takes a document as the camp in hand, or says everything that stands against it and keeps the old one. */
export function takeCamp(document: unknown, id: string = crypto.randomUUID()): Outcome<OpenedCamp> {
  return take(openCamp(document), id);
}

/** The same for the text of a camp file. */
export function takeCampText(text: string): Outcome<OpenedCamp> {
  return take(readCamp(text), crypto.randomUUID());
}

function take(outcome: Outcome<OpenedCamp>, id: string): Outcome<OpenedCamp> {
  if (outcome.ok) {
    show({ id, history: startHistory(outcome.value.document), opened: outcome.value });
  }
  return outcome;
}

/**
 * Changes the camp in hand. A change that the camp cannot bear is not made, and its refusals come back.
 *
 * @param about what is changed; a run of changes to one thing is undone together
 */
export function editCamp(about: string, recipe: (document: CampDocument) => unknown): readonly Refusal[] {
  const before = current.value;
  if (before === undefined) return [];
  const outcome = openCamp(recipe(before.history.present));
  if (!outcome.ok) return outcome.refusals;
  const history = change(before.history, outcome.value.document, about);
  show({ ...before, history, opened: outcome.value });
  return [];
}

/** Ends a run of changes: the next one is undone apart. */
export function settleEdit(): void {
  const now = current.value;
  if (now !== undefined) current.value = { ...now, history: settle(now.history) };
}

export function undoEdit(): void {
  walk(undo);
}

export function redoEdit(): void {
  walk(redo);
}

function walk(along: (history: History<CampDocument>) => History<CampDocument>): void {
  const before = current.value;
  if (before === undefined) return;
  const history = along(before.history);
  const outcome = openCamp(history.present);
  if (outcome.ok) show({ ...before, history, opened: outcome.value });
}

function show(next: Current): void {
  current.value = next;
  lastCamp.value = { id: next.id, document: next.history.present };
  const kept = { id: next.id, document: next.history.present, savedAt: Date.now() };
  keepCamp(kept).then(
    () => (keepsNothing.value = false),
    () => (keepsNothing.value = true),
  );
}

/**
 * Looks for the last camp of this device, for "continue", and takes one in hand where the address asks
 * for it: the last, the one between two trees, or the one of the store.
 */
export async function recallCamp(wanted: "last" | "tonight" | "store" | "none"): Promise<void> {
  const kept = await keptCamps().catch(() => []);
  const last = kept[0];
  const mine = wanted === "tonight" || wanted === "store" ? kept.find(({ id }) => id === wanted) : last;
  if (current.value !== undefined) return;
  const outcome = last === undefined ? undefined : openCamp(last.document);
  if (last !== undefined && outcome?.ok === true) {
    lastCamp.value = { id: last.id, document: outcome.value.document };
  }
  if (wanted === "none" || mine === undefined) return;
  const taken = openCamp(mine.document);
  if (!taken.ok) return;
  const history = startHistory(taken.value.document);
  current.value = { id: mine.id, history, opened: taken.value };
}

/** The camp between two trees is kept under one name: tonight's takes the place of yesterday's. */
export const TONIGHT_ID = "tonight";
/** And the camp of whoever is fitted out from the store: it has no ground. */
export const STORE_ID = "store";
