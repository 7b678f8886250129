import type { Plan, PlannedBerth, RobustCount } from "../../plan/plan.ts";

/** What a repair must know of the plan before: who lay between which trees. A saved plan says it too. */
export interface PlanBefore {
  readonly berths: readonly Pick<PlannedBerth, "sleeper" | "headTree" | "footTree" | "pair">[];
  /** What the plan told of its survey: whether its berths keep room for the error. */
  readonly robust?: RobustCount;
}

export interface PlanRepair {
  /** As many placed as can be, with the fewest people moved, then the least cost. */
  readonly repaired: Plan;
  /** Who had a berth and now has another one, or none; by id. */
  readonly moved: readonly string[];
  /** Whether with as many placed nobody fewer can be moved. */
  readonly fewest: boolean;
  /** The camp planned anew, whoever has to move. */
  readonly fresh: Plan;
  readonly freshMoved: readonly string[];
}
