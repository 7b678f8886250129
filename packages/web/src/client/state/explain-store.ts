import type { Plan } from "@nightspan/core";
import { signal } from "@preact/signals";
import { askOnce } from "./ask-once.ts";
import { logged } from "./log-store.ts";
import { opened } from "./camp-store.ts";
import { stale, type Answer } from "./plan-store.ts";

interface Explanation {
  readonly of: Plan;
  /** The same plan with what explains it; absent while that is worked out. */
  readonly explained?: Plan;
}

const explanation = signal<Explanation | undefined>(undefined);
let end = (): void => undefined;

/** What explains this plan, as far as it was asked for and found. */
export function explainedPlan(plan: Plan): Plan | undefined {
  return explanation.value?.of === plan ? explanation.value.explained : undefined;
}

/** Asks what would change the plan; once for each plan, in a worker of its own that ends with the answer. */
export function explain({ plan }: Answer): void {
  const document = opened.peek()?.document;
  if (document === undefined || stale.peek() || explanation.peek()?.of === plan) return;
  explanation.value = { of: plan };
  end();
  end = askOnce({ kind: "explain", id: 1, document, plan, ...logged() }, (reply) => {
    if (reply.kind === "explained") explanation.value = { of: plan, explained: reply.plan };
  });
}
