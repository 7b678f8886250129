import type { Camp, FirstPairs, Plan, Refusal } from "@nightspan/core";
import { computed, effect, signal } from "@preact/signals";
import { campId, opened } from "./camp-store.ts";
import { nightsKnown } from "./log-store.ts";
import { showMistake } from "./mistake.ts";
import { Planner } from "./planner.ts";

/** A plan with the camp that it answers. */
export interface Answer {
  readonly plan: Plan;
  readonly camp: Camp;
  /** Which of the kept camps it is about. */
  readonly campId: string | undefined;
}

type Work =
  | { readonly state: "rest" }
  /** Since when, on the page's own clock [ms]; whether a whole plan is already there. */
  | { readonly state: "working"; readonly since: number; readonly proving: boolean }
  | { readonly state: "stopped" };

const lastAnswer = signal<Answer | undefined>(undefined);

/** The last answer about the camp in hand; it stays while a newer one is worked out. */
export const answer = computed(() =>
  lastAnswer.value?.campId === campId.value ? lastAnswer.value : undefined,
);
export const work = signal<Work>({ state: "rest" });
/** Pairs spoken for on the way to a first plan of the camp in hand; gone as soon as there is one. */
export const firstPairs = signal<FirstPairs | undefined>(undefined);
/** Why the camp in hand cannot be planned. */
export const planRefusals = signal<readonly Refusal[]>([]);

/** Whether the answer shown is from before the last change. */
export const stale = computed(() => answer.value !== undefined && answer.value.camp !== opened.value?.camp);

let asked: { readonly id: number; readonly camp: Camp; readonly campId: string | undefined } | undefined;

const planner = new Planner(
  () => new Worker(new URL("../../worker/planner.worker.ts", import.meta.url), { type: "module" }),
  {
    started: () => {
      firstPairs.value = undefined;
      work.value = { state: "working", since: performance.now(), proving: false };
    },
    pairs: (id, found) => {
      if (asked?.id === id && work.value.state === "working" && !work.value.proving) firstPairs.value = found;
    },
    incumbent: (id, plan) => {
      if (!put(id, plan)) return;
      work.value = { state: "working", since: performance.now(), proving: true };
    },
    answered: (id, outcome) => {
      if (outcome.ok) put(id, outcome.value);
      firstPairs.value = undefined;
      planRefusals.value = outcome.ok ? [] : outcome.refusals;
      work.value = { state: "rest" };
    },
    mistaken: (details) => {
      firstPairs.value = undefined;
      work.value = { state: "rest" };
      showMistake(details);
    },
  },
);

function put(id: number, plan: Plan): boolean {
  if (asked?.id !== id) return false;
  firstPairs.value = undefined;
  lastAnswer.value = { plan, camp: asked.camp, campId: asked.campId };
  return true;
}

/** Plans the camp in hand anew after every change to it. */
export function followCamp(): void {
  effect(() => {
    const now = opened.value;
    if (now === undefined) return;
    planRefusals.value = [];
    ask(nightsKnown());
  });
}

/** Asks for a plan of the camp in hand. */
export function ask(nights = nightsKnown()): void {
  const now = opened.peek();
  if (now === undefined) return;
  asked = { id: planner.plan(now.document, nights), camp: now.camp, campId: campId.peek() };
}

/** Ends the work under way; the last whole plan stays. */
export function stopPlanning(): void {
  planner.stop();
  work.value = { state: "stopped" };
}
