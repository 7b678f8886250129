import { planCamp, type Camp, type Outcome, type Plan } from "@nightspan/core";
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
