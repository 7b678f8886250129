import type { Camp } from "../../plan/camp.ts";
import type { PlannedBerth } from "../../plan/plan.ts";
import type { CutList, Dealing, PackingList } from "../../plan/store-types.ts";
import { planCuts } from "../cutting/plan-cuts.ts";
import { packingList } from "../packing/packing-list.ts";

/** What a plan says of the store besides the dealing: what to cut and what to pack; nothing of what there is nothing to say. */
export interface StoreParts {
  readonly cuts?: CutList;
  readonly packing?: PackingList;
}

/** Cuts for the berths there are, and the packing of what was dealt. */
export function storeParts(
  camp: Camp,
  berths: readonly PlannedBerth[],
  dealing: Dealing | undefined,
): StoreParts {
  const cuts = planCuts(berths, camp.kit);
  const berthOf = new Map(berths.map(({ sleeper, id }) => [sleeper, id]));
  return {
    ...(berths.length === 0 ? {} : { cuts }),
    ...(dealing === undefined ? {} : { packing: packingList({ camp, dealing, cuts, berthOf }) }),
  };
}
