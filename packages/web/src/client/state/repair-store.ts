import type { PlanRepair } from "@nightspan/core";
import type { CampDocument } from "@nightspan/edge";
import { signal } from "@preact/signals";
import { askOnce } from "./ask-once.ts";
import { logged } from "./log-store.ts";
import { editCamp, opened } from "./camp-store.ts";
import { writeAt } from "./document-path.ts";
import { keepingAll } from "./pins.ts";
import type { Answer } from "./plan-store.ts";

/** What doing without a tree would come to; no repair yet while that is worked out. */
interface Loss {
  readonly tree: string;
  readonly of: CampDocument;
  readonly repair?: PlanRepair;
}

const loss = signal<Loss | undefined>(undefined);
let end = (): void => undefined;

/** The choice for this tree in the camp in hand, as far as it was asked for. */
export function lossOf(tree: string): Loss | undefined {
  const now = loss.value;
  return now?.tree === tree && now.of === opened.value?.document ? now : undefined;
}

/** Asks who would move without this tree: as few as can be, or as planned anew. */
export function tryWithout(tree: string, { plan }: Answer): void {
  const before = opened.peek()?.document;
  if (before === undefined) return;
  loss.value = { tree, of: before };
  end();
  end = askOnce(
    { kind: "repair", id: 1, document: withoutTree(before, tree), before: plan, ...logged() },
    (reply) => {
      if (reply.kind !== "repaired" || !reply.outcome.ok) return;
      loss.value = { tree, of: before, repair: reply.outcome.value };
    },
  );
}

/** Does without the tree; everybody else stays, as the repair says. */
export function mend({ tree, repair }: Loss): void {
  editCamp("", (document) => {
    const without = withoutTree(document, tree);
    return repair === undefined ? without : keepingAll(without, repair.repaired.berths);
  });
}

/** Does without the tree, whoever has to move. */
export function planAnew({ tree }: Loss): void {
  editCamp("", (document) => withoutTree(document, tree));
}

function withoutTree(document: CampDocument, tree: string): unknown {
  const index = (document.ground?.trees ?? []).findIndex(({ id }) => id === tree);
  return index < 0 ? document : writeAt(document, ["ground", "trees", index, "use"], false);
}
