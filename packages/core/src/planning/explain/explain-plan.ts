import type { Camp } from "../../plan/camp.ts";
import type { Plan } from "../../plan/plan.ts";
import { prepareCamp } from "../prepare-camp.ts";
import { findBottleneck } from "./bottleneck.ts";
import { counterfactuals, type CounterfactualOptions } from "./counterfactuals.ts";

/**
 * The plan with what explains it, where not everybody has a berth: what one change alone would do, and what limits it.
 *
 * Apart from the planning itself, so that the plan is there first and the explanation follows.
 *
 * Holds    a plan of this very camp; one that places everybody comes back as it is
 * Source   layout-search, common-practice (handbook/planning.md: what would change it)
 */
export function explainPlan(plan: Plan, camp: Camp, options: CounterfactualOptions = {}): Plan {
  if (plan.placed >= plan.asked) return plan;
  const prepared = prepareCamp(camp);
  const bottleneck = findBottleneck(prepared, plan, options.solver);
  return {
    ...plan,
    counterfactuals: counterfactuals(prepared, plan.placed, options),
    ...(bottleneck === undefined ? {} : { bottleneck }),
  };
}
