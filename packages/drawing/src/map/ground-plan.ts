import type { BerthTarp, Camp, Plan, PlannedBerth, SpareBerth, Verdict } from "@nightspan/core";
import type { MapTree } from "./map-tree.ts";
import { sketchGround } from "./sketch-ground.ts";
import { treeState } from "./tree-state.ts";

export interface MapBerth {
  readonly id: string;
  readonly sleeper: string;
  readonly head: MapTree;
  readonly foot: MapTree;
  /** Shares of the way from head to foot at which the cloth begins and ends. */
  readonly cloth: readonly [number, number];
  readonly verdict: Verdict;
  readonly stepItOut: boolean;
  /** How the tarp is pitched, where it was computed. */
  readonly tarp?: BerthTarp;
  /** Kept free for whoever must leave their own berth. */
  readonly spare?: true;
}

/** What a map shows, in metres: east x, north y. */
export interface GroundPlan {
  readonly trees: readonly MapTree[];
  readonly berths: readonly MapBerth[];
  /** True where nobody has surveyed the ground: pairs laid out by their bearings. */
  readonly sketch: boolean;
  /** False where a pair's bearing is not known either, so that no north can be drawn. */
  readonly northKnown: boolean;
}

/** The trees and berths of a plan where they stand, or as a sketch where only pairs are known. */
export function groundPlan(plan: Plan, camp: Camp): GroundPlan {
  const surveyed = (camp.ground?.trees ?? []).map((tree): MapTree => {
    const { id, tag, dbhM, xM, yM, heightM } = tree;
    const base = { id, tag, dbhM, at: [xM, yM] as const, state: treeState(tree, camp) };
    return heightM === undefined ? base : { ...base, heightM };
  });
  const sketched = surveyed.length === 0 ? sketchGround(camp) : { trees: [], northKnown: true };
  const trees = surveyed.length === 0 ? sketched.trees : surveyed;
  const byId = new Map(trees.map((tree) => [tree.id, tree]));
  const names = new Map(camp.sleepers.map(({ id, name }) => [id, name]));
  const berths = plan.berths.flatMap((berth) => {
    const head = byId.get(berth.headTree);
    const foot = byId.get(berth.footTree);
    if (head === undefined || foot === undefined) return [];
    return [mapBerth(berth, head, foot, names.get(berth.sleeper) ?? berth.sleeper)];
  });
  const spares = (plan.spares ?? []).flatMap((spare) => {
    const [head, foot] = [byId.get(spare.headTree), byId.get(spare.footTree)];
    return head === undefined || foot === undefined ? [] : [spareBerth(spare, head, foot)];
  });
  return {
    trees,
    berths: [...berths, ...spares],
    sketch: surveyed.length === 0,
    northKnown: sketched.northKnown,
  };
}

function mapBerth(berth: PlannedBerth, head: MapTree, foot: MapTree, sleeper: string): MapBerth {
  const { headGather, footGather } = berth.hang.shape;
  return {
    id: berth.id,
    sleeper,
    head,
    foot,
    cloth: [headGather[0] / berth.spanM, footGather[0] / berth.spanM],
    verdict: berth.verdict,
    stepItOut: berth.stepItOut,
    ...(berth.tarp === undefined ? {} : { tarp: berth.tarp }),
  };
}

/** A spare berth: nobody's, with no cloth in it. */
function spareBerth({ id, verdict, stepItOut }: SpareBerth, head: MapTree, foot: MapTree): MapBerth {
  return { id, sleeper: "", head, foot, cloth: SPARE_CLOTH, verdict, stepItOut, spare: true };
}

/** Where the cloth of a spare berth may begin and end, as shares of the way. */
const SPARE_CLOTH = [0.15, 0.85] as const;
