import type { PlannedBerth, PlanRepair } from "@nightspan/core";
import type { CampDocument, PinDocument } from "@nightspan/edge";
import { computed, signal } from "@preact/signals";
import { askOnce } from "./ask-once.ts";
import { logged } from "./log-store.ts";
import { campId, editCamp, opened } from "./camp-store.ts";
import { pick, picked, pickOf } from "./map-look.ts";
import { keepingAll, pinAt, withPinsFor } from "./pins.ts";
import type { Answer } from "./plan-store.ts";

/** Somebody who is being put elsewhere by choice: first who, then where, then what it costs. */
export interface Placing {
  readonly sleeper: string;
  /** Which of the kept camps it is about. */
  readonly campId: string | undefined;
  /** Trees chosen so far: at the head first. */
  readonly trees: readonly string[];
  /** What was chosen, and of which camp. */
  readonly wanted?: Wanted;
}

interface Wanted {
  readonly pins: readonly PinDocument[];
  readonly of: CampDocument;
  /** What the choice comes to; absent while that is worked out. */
  readonly repair?: PlanRepair;
}

const chosen = signal<Placing | undefined>(undefined);
let end = (): void => undefined;

/** Who is being put elsewhere in the camp in hand. */
export const placing = computed(() => (chosen.value?.campId === campId.value ? chosen.value : undefined));

/** Begins to put somebody elsewhere. */
export function startPlacing(sleeper: string): void {
  end();
  picked.value = undefined;
  chosen.value = { sleeper, campId: campId.peek(), trees: [] };
}

export function stopPlacing(): void {
  end();
  chosen.value = undefined;
}

/** Takes the choice of place back; who it is about stays. */
export function chooseAgain(): void {
  const now = placing.peek();
  if (now !== undefined) startPlacing(now.sleeper);
}

/** What a press on the map means: a place for whoever is being put elsewhere, else something to look at. */
export function pressed(refs: readonly string[], now: Answer): void {
  const who = placing.peek();
  if (who === undefined) {
    pick(refs);
    return;
  }
  if (who.wanted !== undefined) return;
  const things = refs.flatMap((ref) => pickOf(ref) ?? []);
  const tree = things.find(({ kind }) => kind === "tree");
  if (tree?.kind === "tree") {
    chooseTree(tree.id, now);
    return;
  }
  const berth = now.plan.berths.find(({ id }) => things.some((one) => one.kind === "berth" && one.id === id));
  if (berth !== undefined) chooseBerth(berth, now);
}

/** A tree for the head, then one for the foot; the same one again takes it back. */
export function chooseTree(tree: string, now: Answer): void {
  const who = placing.peek();
  if (who === undefined) return;
  const [head] = who.trees;
  if (head === tree) chosen.value = { ...who, trees: [] };
  else if (head === undefined) chosen.value = { ...who, trees: [tree] };
  else weigh({ ...who, trees: [head, tree] }, [{ sleeper: who.sleeper, trees: [head, tree], head }], now);
}

/** Somebody's berth: whoever lies there gets the other's in return, where there is one. */
export function chooseBerth(berth: PlannedBerth, now: Answer): void {
  const who = placing.peek();
  if (who === undefined || berth.sleeper === who.sleeper) return;
  const own = now.plan.berths.find(({ sleeper }) => sleeper === who.sleeper);
  const back = own === undefined ? [] : [pinAt(berth.sleeper, own)];
  weigh(who, [pinAt(who.sleeper, berth), ...back], now);
}

/** Takes the choice, with as few others moved as can be, or all others planned anew round it. */
export function takePlacing(how: "few" | "anew"): void {
  const wanted = placing.peek()?.wanted;
  if (wanted === undefined) return;
  const { pins, repair } = wanted;
  editCamp("", (document) => {
    const pinned = withPinsFor(document, pins);
    return how === "anew" || repair === undefined ? pinned : keepingAll(pinned, repair.repaired.berths);
  });
  stopPlacing();
}

/** Works out what the choice comes to, beside the plan as it is. */
function weigh(who: Placing, pins: readonly PinDocument[], { plan }: Answer): void {
  const of = opened.peek()?.document;
  if (of === undefined) return;
  const asked: Placing = { ...who, wanted: { pins, of } };
  chosen.value = asked;
  end();
  end = askOnce(
    { kind: "repair", id: 1, document: withPinsFor(of, pins), before: plan, ...logged() },
    (reply) => {
      if (reply.kind !== "repaired" || !reply.outcome.ok) return;
      chosen.value = { ...asked, wanted: { pins, of, repair: reply.outcome.value } };
    },
  );
}
