import type { PlanRepair } from "@nightspan/core";
import type { Names } from "./names.ts";

/** Who moves in a plan that mends one before, and what planning anew would come to. */
export function repairLines(
  { repaired, moved, fewest, fresh, freshMoved }: PlanRepair,
  names: Names,
): readonly string[] {
  const proof = fewest && moved.length > 0 ? " Moving fewer would leave somebody without a berth." : "";
  const saved = fresh.placed - repaired.placed;
  const [anew, kept] = [fresh.cost.toFixed(2), repaired.cost.toFixed(2)];
  const cost = anew === kept ? `the same cost, ${kept}` : `cost ${anew} instead of ${kept}`;
  const more = saved > 0 ? `, gives ${saved} more a berth` : "";
  return [
    `This plan moves ${people(moved, names)}.${proof}`,
    `Planning anew moves ${freshMoved.length}${more}: ${cost}.`,
  ];
}

function people(ids: readonly string[], names: Names): string {
  if (ids.length === 0) return "nobody";
  const who = ids.map((id) => names.sleeper(id)).join(", ");
  return ids.length === 1 ? `one: ${who}` : `${ids.length} people: ${who}`;
}
