import type { Camp } from "../../plan/camp.ts";
import type { Plan } from "../../plan/plan.ts";
import { byCodeUnit } from "../order.ts";
import type { PlanBefore } from "./repair-types.ts";

/** Who of the camp had a berth before and now lies between other trees, or has none; sorted. */
export function movedSleepers(before: PlanBefore, { berths }: Pick<Plan, "berths">, camp: Camp): string[] {
  const now = new Map(berths.map((berth) => [berth.sleeper, keyOf(berth)]));
  const here = new Set(camp.sleepers.map(({ id }) => id));
  return before.berths
    .filter((berth) => here.has(berth.sleeper) && now.get(berth.sleeper) !== keyOf(berth))
    .map(({ sleeper }) => sleeper)
    .sort(byCodeUnit);
}

/** Two trees whichever is the head, and the stated pair where one stands behind it. */
function keyOf({ headTree, footTree, pair }: PlanBefore["berths"][number]): string {
  return JSON.stringify([...[headTree, footTree].sort(byCodeUnit), pair]);
}
