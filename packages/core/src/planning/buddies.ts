import { DEFAULTS } from "../plan/defaults.ts";
import type { PlannedBerth } from "../plan/plan.ts";
import type { Buddy } from "../plan/spare-types.ts";
import { LENGTH_SLACK_M } from "../quantity/constants.ts";
import { byCodeUnit } from "./order.ts";
import type { Lying } from "./wish-measures.ts";

/**
 * Names for everybody who looks after them at night: of those whom one of the two wishes near, else of all, who lies
 * nearest; the first by id of equals. Nobody has to be each other's buddy, but two who wish near each other are.
 *
 * Units    metres, berth middle to berth middle
 * Holds    whoever lies where nobody knows the distance has none
 * Source   common-practice (handbook/layout.md: people)
 */
export function withBuddies(berths: readonly PlannedBerth[], lying: readonly Lying[]): PlannedBerth[] {
  const byId = new Map(lying.map((one) => [one.sleeper.id, one]));
  return berths.map((berth) => {
    const own = byId.get(berth.sleeper);
    const buddy = own === undefined ? undefined : findBuddy(own, lying);
    return buddy === undefined ? berth : { ...berth, buddy };
  });
}

function findBuddy(own: Lying, lying: readonly Lying[]): Buddy | undefined {
  const wished = lying.filter(
    ({ sleeper }) => own.sleeper.near.includes(sleeper.id) || sleeper.near.includes(own.sleeper.id),
  );
  return nearest(own, wished) ?? nearest(own, lying);
}

function nearest(own: Lying, others: readonly Lying[]): Buddy | undefined {
  let best: Buddy | undefined;
  for (const other of others) {
    const { id } = other.sleeper;
    if (other === own || own.at === undefined || other.at === undefined) continue;
    const [east, north] = [own.at[0] - other.at[0], own.at[1] - other.at[1]];
    const apartM = Math.sqrt(east * east + north * north);
    const isFirst =
      best === undefined ||
      apartM < best.apartM ||
      (apartM === best.apartM && byCodeUnit(id, best.sleeper) < 0);
    if (isFirst) best = { sleeper: id, apartM, withinCall: apartM <= CALLING_M + LENGTH_SLACK_M };
  }
  return best;
}

/** Calling distance by night. */
const CALLING_M = DEFAULTS["people.near_m"].value;
