import type { Camp } from "../../plan/camp.ts";
import type { Plan, PlannedBerth } from "../../plan/plan.ts";
import { planCuts } from "../cutting/plan-cuts.ts";
import type { KitDeal } from "../deal-kit.ts";
import { fitPeople } from "../fit/fit-people.ts";
import { packingList } from "../packing/packing-list.ts";

/** What a plan says of the store; nothing of what there is nothing to say. */
export type StoreParts = Pick<Plan, "dealing" | "cuts" | "packing" | "fit">;

/** The dealing, cuts for the berths there are, the packing of what was dealt; without ground people fitted out instead. */
export function storeParts(camp: Camp, berths: readonly PlannedBerth[], deal: KitDeal): StoreParts {
  const { dealing } = deal;
  const cuts = planCuts(berths, camp.kit);
  const berthOf = new Map(berths.map(({ sleeper, id }) => [sleeper, id]));
  return {
    ...(dealing === undefined ? {} : { dealing, packing: packingList({ camp, dealing, cuts, berthOf }) }),
    ...(berths.length === 0 ? {} : { cuts }),
    ...(hasGround(camp) ? {} : { fit: fitPeople(camp, deal) }),
  };
}

/** Without trees or pairs people are fitted out from the store. */
function hasGround({ ground }: Camp): boolean {
  return ground !== undefined && ground.trees.length + ground.pairs.length > 0;
}
