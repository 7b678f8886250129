import {
  explainPlan,
  planCamp,
  repairPlan,
  type Camp,
  type LinearSolver,
  type Outcome,
  type Plan,
  type PlanBefore,
  type PlanRepair,
  type PlanTools,
} from "@nightspan/core";
import { ENGINE } from "@nightspan/edge";

/**
 * Plans without the solver loaded, which small camps never ask for. The first question to it ends that, before any work
 * that is not needed to put the question; then the solver is loaded and the camp planned with it.
 */
export async function planWithSolver(camp: Camp, told: Told = {}): Promise<Outcome<Plan>> {
  return loadedWhenAsked((solver) => planCamp(camp, { engine: ENGINE, solver, ...told }));
}

/** The least change that mends a plan, beside the camp planned anew. */
export async function repairWithSolver(before: PlanBefore, camp: Camp): Promise<Outcome<PlanRepair>> {
  return loadedWhenAsked((solver) => repairPlan(before, camp, { engine: ENGINE, solver }));
}

/** What a plan on the way is told to. */
type Told = Pick<PlanTools, "onIncumbent" | "onPairs">;

async function loadedWhenAsked<T>(work: (solver: LinearSolver) => T): Promise<T> {
  try {
    return work(NOT_LOADED);
  } catch (error) {
    if (!(error instanceof SolverAskedFor)) throw error;
  }
  const { loadSolver } = await import("./solver/load-solver.ts");
  return work(await loadSolver());
}

class SolverAskedFor extends Error {}

const NOT_LOADED: LinearSolver = {
  name: "not loaded",
  solve: () => {
    throw new SolverAskedFor("the solver is not loaded");
  },
};

/** The plan with what would change it, where not everybody has a berth. */
export async function explainWithSolver(plan: Plan, camp: Camp, all: boolean): Promise<Plan> {
  if (plan.placed === plan.asked || plan.fit !== undefined) return plan;
  return explainPlan(plan, camp, { all, ...(await solverFor(plan)) });
}

/** The solver where the plan itself needed it. */
async function solverFor({ method }: Plan): Promise<{ readonly solver?: LinearSolver }> {
  if (method.includes("component search")) return {};
  const { loadSolver } = await import("./solver/load-solver.ts");
  return { solver: await loadSolver() };
}
