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
} from "@nightspan/core";
import { ENGINE } from "@nightspan/edge";

/**
 * Plans first without the solver, which small camps do not need; only where that leaves something unproven is
 * the solver loaded and the camp planned with it.
 */
export async function planWithSolver(camp: Camp, onIncumbent: (plan: Plan) => void): Promise<Outcome<Plan>> {
  const alone = planCamp(camp, { engine: ENGINE });
  if (!alone.ok || isProven(alone.value)) return alone;
  onIncumbent(alone.value);
  const { loadSolver } = await import("./solver/load-solver.ts");
  return planCamp(camp, { engine: ENGINE, solver: await loadSolver(), onIncumbent });
}

/** No layout places more, and none of as many costs less. */
function isProven({ placed, bound, gap }: Plan): boolean {
  return placed === bound && gap === 0;
}

/** The least change that mends a plan, beside the camp planned anew; with the solver where small means do not do. */
export async function repairWithSolver(before: PlanBefore, camp: Camp): Promise<Outcome<PlanRepair>> {
  const alone = repairPlan(before, camp, { engine: ENGINE });
  if (!alone.ok || (isProven(alone.value.fresh) && alone.value.fewest)) return alone;
  const { loadSolver } = await import("./solver/load-solver.ts");
  return repairPlan(before, camp, { engine: ENGINE, solver: await loadSolver() });
}

/** The plan with what would change it, where not everybody has a berth. */
export async function explainWithSolver(plan: Plan, camp: Camp, all: boolean): Promise<Plan> {
  if (plan.placed === plan.asked) return plan;
  return explainPlan(plan, camp, { all, ...(await solverFor(plan)) });
}

/** The solver where the plan itself needed it. */
async function solverFor({ method }: Plan): Promise<{ readonly solver?: LinearSolver }> {
  if (method.includes("component search")) return {};
  const { loadSolver } = await import("./solver/load-solver.ts");
  return { solver: await loadSolver() };
}
