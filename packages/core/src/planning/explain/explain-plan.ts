import type { Camp } from "../../plan/camp.ts";
import type { Plan } from "../../plan/plan.ts";
import { withAlternatives } from "../alternatives/with-alternatives.ts";
import { prepareCamp } from "../prepare-camp.ts";
import { givenIn } from "../redeal/dealt-changes.ts";
import { asPlanned } from "../survey-room.ts";
import { findBottleneck } from "./bottleneck.ts";
import { counterfactuals, type CounterfactualOptions } from "./counterfactuals.ts";
import { failedPairs } from "./failed-pairs.ts";

/**
 * The plan with what explains it, where not everybody has a berth: what one change alone would do, what limits
 * it, and for each of the first 20 without a berth the pairs that nearly serve.
 *
 * Apart from the planning itself, so that the plan is there first and the explanation follows.
 *
 * Holds    a plan of this very camp; one that places everybody comes back as it is
 * Source   layout-search, common-practice (handbook/planning.md: what would change it)
 */
export function explainPlan(plan: Plan, camp: Camp, options: CounterfactualOptions = {}): Plan {
  if (plan.placed >= plan.asked) return plan;
  const prepared = prepareCamp(asPlanned(camp, plan), undefined, givenIn(plan));
  const bottleneck = findBottleneck(prepared, plan, options.solver);
  const explained = {
    ...plan,
    unplaced: plan.unplaced.map((one, at) =>
      at < PEOPLE_TOLD ? { ...one, ...failedPairs(prepared, plan, one.sleeper) } : one,
    ),
    counterfactuals: counterfactuals(prepared, plan.placed, options),
    ...(bottleneck === undefined ? {} : { bottleneck }),
  };
  return withAlternatives(explained, prepared);
}

/** People whose pairs are gone through one by one. */
const PEOPLE_TOLD = 20;
