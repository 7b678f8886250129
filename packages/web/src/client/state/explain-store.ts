import type { Plan } from "@nightspan/core";
import { signal } from "@preact/signals";
import type { PlannerReply, PlannerRequest } from "../../shared/planner-messages.ts";
import { opened } from "./camp-store.ts";
import { showMistake } from "./mistake.ts";
import { stale, type Answer } from "./plan-store.ts";

interface Explanation {
  readonly of: Plan;
  /** The same plan with what explains it; absent while that is worked out. */
  readonly explained?: Plan;
}

const explanation = signal<Explanation | undefined>(undefined);
let worker: Worker | undefined;

/** What explains this plan, as far as it was asked for and found. */
export function explainedPlan(plan: Plan): Plan | undefined {
  return explanation.value?.of === plan ? explanation.value.explained : undefined;
}

/** Asks what would change the plan; once for each plan, in a worker of its own that ends with the answer. */
export function explain({ plan }: Answer): void {
  const document = opened.peek()?.document;
  if (document === undefined || stale.peek() || explanation.peek()?.of === plan) return;
  explanation.value = { of: plan };
  worker?.terminate();
  const fresh = new Worker(new URL("../../worker/planner.worker.ts", import.meta.url), { type: "module" });
  worker = fresh;
  fresh.onmessage = ({ data }: MessageEvent<PlannerReply>) => {
    fresh.terminate();
    if (data.kind === "explained") explanation.value = { of: plan, explained: data.plan };
    if (data.kind === "mistake") showMistake(data.details);
  };
  fresh.onerror = ({ message }) => showMistake(message);
  const request: PlannerRequest = { kind: "explain", id: 1, document, plan };
  fresh.postMessage(request);
}
