import {
  explainPlan,
  planCamp,
  repairPlan,
  withLog,
  type Camp,
  type LoggedNight,
  type Outcome,
  type Plan,
} from "@nightspan/core";
import { ENGINE, openCamp } from "@nightspan/edge";
import type { PlannerReply, PlannerRequest } from "../shared/planner-messages.ts";
import { withSolver } from "./lazy-solver.ts";
import { proveSolver } from "./prove-solver.ts";

type Nights = readonly LoggedNight[] | undefined;

declare const self: DedicatedWorkerGlobalScope;

self.addEventListener("message", (event: MessageEvent<PlannerRequest>) => {
  void answer(event.data);
});

/** Every answer goes out, a mistake of our own too: the page must never wait for nothing. */
async function answer(request: PlannerRequest): Promise<void> {
  try {
    if (request.kind === "prove") post({ kind: "proof", id: request.id, ...(await proveSolver()) });
    else if (request.kind === "explain")
      await explain(request.id, request.document, request.plan, request.nights);
    else if (request.kind === "repair")
      await repair(request.id, request.document, request.before, request.nights);
    else await plan(request.id, request.document, request.nights);
  } catch (error) {
    const details = error instanceof Error ? (error.stack ?? error.message) : String(error);
    post({ kind: "mistake", id: request.id, details });
  }
}

async function plan(id: number, document: unknown, nights: Nights): Promise<void> {
  const opened = openCamp(document);
  if (!opened.ok) {
    post({ kind: "plan", id, outcome: opened, solved: false });
    return;
  }
  const camp = withLog(opened.value.camp, nights ?? []);
  const { value: outcome, solved } = await withSolver(isLarge(camp), (solver): Outcome<Plan> =>
    planCamp(camp, {
      engine: ENGINE,
      onPairs: (found) => post({ kind: "pairs", id, found }),
      onIncumbent: (found) => post({ kind: "incumbent", id, plan: found }),
      ...(solver === undefined ? {} : { solver }),
    }),
  );
  post({ kind: "plan", id, outcome, solved });
}

async function explain(id: number, document: unknown, plan: Plan, nights: Nights): Promise<void> {
  const opened = openCamp(document);
  if (!opened.ok) throw new Error("a camp that was planned cannot be opened");
  const camp = withLog(opened.value.camp, nights ?? []);
  const { value } = await withSolver(isLarge(camp), (solver) =>
    explainPlan(plan, camp, solver === undefined ? {} : { solver }),
  );
  post({ kind: "explained", id, plan: value });
}

async function repair(id: number, document: unknown, before: Plan, nights: Nights): Promise<void> {
  const opened = openCamp(document);
  if (!opened.ok) {
    post({ kind: "repaired", id, outcome: opened });
    return;
  }
  const camp = withLog(opened.value.camp, nights ?? []);
  const { value } = await withSolver(isLarge(camp), (solver) =>
    repairPlan(before, camp, { engine: ENGINE, ...(solver === undefined ? {} : { solver }) }),
  );
  post({ kind: "repaired", id, outcome: value });
}

/** Camps beyond this nearly always need the solver; below it the search alone nearly always proves its answer. */
const LARGE = 4_000;

function isLarge({ ground, sleepers }: Camp): boolean {
  return sleepers.length * ((ground?.trees.length ?? 0) + (ground?.pairs.length ?? 0)) > LARGE;
}

function post(reply: PlannerReply): void {
  self.postMessage(reply);
}
