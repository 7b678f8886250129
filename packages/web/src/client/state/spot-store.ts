import { computed, signal } from "@preact/signals";
import { campId } from "./camp-store.ts";
import { go } from "./route.ts";
import { AT_FIRST, afterTheSit, type Sat, type SpotState } from "./spot-state.ts";

interface Visit {
  readonly camp: string | undefined;
  readonly berth: string;
  /** Every state before a press, so that each press can be undone. */
  readonly past: readonly SpotState[];
  readonly now: SpotState;
}

const visit = signal<Visit | undefined>(undefined);

export const canStepBack = computed(() => (visit.value?.past.length ?? 0) > 0);

/** Where the look at this berth has come to; a berth not looked at yet starts at the first page. */
export function spotState(berth: string): SpotState {
  const here = visit.value;
  return here?.berth === berth && here.camp === campId.value ? here.now : AT_FIRST;
}

/** Goes on by one press. */
export function press(berth: string, next: (state: SpotState) => SpotState): void {
  const now = spotState(berth);
  const past = now === visit.peek()?.now ? (visit.peek()?.past ?? []) : [];
  visit.value = { camp: campId.peek(), berth, past: [...past, now], now: next(now) };
}

/** Takes the last press back. */
export function stepBack(): void {
  const here = visit.value;
  const before = here?.past.at(-1);
  if (here === undefined || before === undefined) return;
  visit.value = { ...here, past: here.past.slice(0, -1), now: before };
}

/** Begins anew at a berth. */
export function checkOnTheSpot(berth: string): void {
  visit.value = { camp: campId.peek(), berth, past: [], now: AT_FIRST };
  go({ page: "spot", berth });
}

/** Begins with what one sit told. */
export function satIn(berth: string, sat: Sat): void {
  visit.value = { camp: campId.peek(), berth, past: [], now: afterTheSit(sat) };
  go({ page: "spot", berth });
}
