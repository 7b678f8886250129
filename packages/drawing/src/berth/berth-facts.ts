import type { Camp, Plan, PlannedBerth, Sleeper, Tree } from "@nightspan/core";
import { lookedAtOnTheDay } from "../map/tree-state.ts";
import { berthSteps, type BerthSteps } from "./berth-steps.ts";

/** One end of a berth as a drawing tells it. */
export interface EndFacts {
  readonly id: string;
  readonly tag: string;
  readonly dbhM: number;
  readonly dbhAssumed: boolean;
  readonly species?: string;
  readonly lookedAt: boolean;
  /** Somebody looked, but not on the day of the camp. */
  readonly seenBefore?: true;
  /** Who looked on the day. */
  readonly lookedBy?: string;
}

/** All that drawings and cards say of one berth, found once. */
export interface BerthFacts extends BerthSteps {
  readonly berth: PlannedBerth;
  readonly sleeper: Sleeper;
  /** Who sets the straps; their body gives the marks. */
  readonly setter: Sleeper;
  readonly head: EndFacts;
  readonly foot: EndFacts;
}

/** The facts of a berth of this plan. An unknown id is a mistake of the caller. */
export function berthFacts(plan: Plan, camp: Camp, berthId: string): BerthFacts {
  const berth = plan.berths.find(({ id }) => id === berthId);
  if (berth === undefined) throw new Error(`the plan has no berth ${berthId}`);
  return {
    berth,
    sleeper: person(camp, berth.sleeper),
    setter: person(camp, berth.setBy),
    head: endFacts(camp, berth, berth.headTree),
    foot: endFacts(camp, berth, berth.footTree),
    ...berthSteps(berth, camp),
  };
}

function person(camp: Camp, id: string): Sleeper {
  const found = camp.sleepers.find((sleeper) => sleeper.id === id);
  if (found === undefined) throw new Error(`the camp has no sleeper ${id}`);
  return found;
}

function lookOf(counts: boolean, look: Tree["lookedAt"]): Pick<EndFacts, "lookedBy" | "seenBefore"> {
  if (look === undefined) return {};
  return counts ? { lookedBy: look.by } : { seenBefore: true };
}

function endFacts(camp: Camp, { pair: pairId }: PlannedBerth, id: string): EndFacts {
  const tree = camp.ground?.trees.find((one) => one.id === id);
  if (tree !== undefined && pairId === undefined) {
    const looked = tree.condition === "healthy" && lookedAtOnTheDay(tree.lookedAt, camp);
    return {
      id,
      tag: tree.tag,
      dbhM: tree.dbhM,
      dbhAssumed: false,
      lookedAt: looked,
      ...lookOf(looked, tree.lookedAt),
      ...(tree.species === undefined ? {} : { species: tree.species }),
    };
  }
  const pair = camp.ground?.pairs.find((one) => one.id === pairId);
  if (pair === undefined) throw new Error(`the camp has no tree ${id}`);
  const end = pair.trees[0] === id ? 0 : 1;
  const looked = lookedAtOnTheDay(pair.lookedAt, camp);
  return {
    id,
    tag: id,
    dbhM: pair.dbhM[end],
    dbhAssumed: pair.dbhAssumed,
    lookedAt: looked,
    ...lookOf(looked, pair.lookedAt),
  };
}
