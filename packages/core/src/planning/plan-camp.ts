import { succeed, type Outcome } from "../outcome/outcome.ts";
import type { Camp } from "../plan/camp.ts";
import type { Plan } from "../plan/plan.ts";
import { firstPairs, pairsAt, type FirstPairs } from "./first-pairs.ts";
import { withAlternatives } from "./alternatives/with-alternatives.ts";
import type { ChosenBerths } from "./choose-berths.ts";
import { chooseLayout } from "./choose-layout.ts";
import type { LinearSolver } from "./linear-solver.ts";
import { layoutFaults } from "./layout-faults.ts";
import { planOf, type Work } from "./plan-work.ts";
import { prepareCamp } from "./prepare-camp.ts";
import { dealAnew } from "./redeal/deal-anew.ts";
import { findRobustCount } from "./robust-count.ts";
import { roomWhereFree } from "./survey-room.ts";

export interface PlanTools {
  readonly solver?: LinearSolver;
  /** Version of the engine, as the plan carries it. */
  readonly engine: string;
  /** Told of each plan that is better than the one before, tarps not yet pitched; not above a hundred people placed. */
  readonly onIncumbent?: (plan: Plan) => void;
  /** Told at once, and of every better choice, which pairs of trees are spoken for before hangs are worked out. */
  readonly onPairs?: (found: FirstPairs) => void;
}

/**
 * Plans a camp: who hangs where, in what, how high, and every comparison that follows.
 *
 * Kit is dealt; pairs of trees are found on the map and among those stated; each pair × class of sleepers whose hang
 * is refused is left out; the search places as many as can be, then for the least cost; berths are dealt with the
 * heaviest on the stoutest trees; where somebody is left out, kit and places are decided together; every berth's hang, findings and verdict are worked out in full.
 *
 * Shapes   one camp → one plan; berths in reading order of the map
 * Units    SI
 * Holds    any camp, also without sleepers, trees, pairs, kit or ground: the plan then says who has no berth, and why
 *          Surveyed by GPS or steps, it keeps room for their error where nobody is worse off by it
 * Error    exact for the positions as surveyed, where `gap` is 0 and `placed` is `bound`
 * Source   layout-search, hang-chain, house-rules (handbook/planning.md)
 */
export function planCamp(camp: Camp, tools: PlanTools): Outcome<Plan> {
  const { engine, solver } = tools;
  const quiet = { engine, ...(solver === undefined ? {} : { solver }) };
  return succeed(roomWhereFree(camp, planned(camp, tools), (roomy) => planned(roomy, quiet)));
}

function planned(camp: Camp, tools: PlanTools): Plan {
  const { onIncumbent, onPairs, ...rest } = tools;
  const prepared = prepareCamp(camp, onPairs && ((ground) => onPairs(firstPairs(camp, ground))));
  const telling = {
    ...rest,
    ...(onPairs === undefined
      ? {}
      : {
          onPlaces: (places: readonly number[]) =>
            onPairs(pairsAt(camp.sleepers.length, prepared.ground, places)),
        }),
    ...(onIncumbent === undefined
      ? {}
      : {
          onIncumbent: (so: Work, far: ChosenBerths) => onIncumbent(planOf({ ...so, isInterim: true }, far)),
        }),
  };
  const { layout, given, told } = dealAnew(chooseLayout(prepared, telling), prepared, rest);
  const { work, chosen } = layout;
  const robust = findRobustCount(camp, tools.solver, given);
  return {
    ...withAlternatives(lookedAtAgain(planOf(work, chosen), work), work),
    ...(told === undefined ? {} : { dealtAnew: told }),
    ...(robust === undefined ? {} : { robust }),
  };
}

/** The plan, once nothing is wrong with its berths and spare berths by other arithmetic; a fault is our own mistake. */
function lookedAtAgain(plan: Plan, { camp }: Work): Plan {
  const faults = layoutFaults(camp, [...plan.berths, ...(plan.spares ?? [])]);
  if (faults.length > 0) throw new Error(`the layout breaks a rule of the ground: ${faults.join("; ")}`);
  return plan;
}
