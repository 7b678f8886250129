import type { Camp, PlannedBerth } from "@nightspan/core";

export function sleeperName(camp: Camp, id: string): string {
  return camp.sleepers.find((sleeper) => sleeper.id === id)?.name ?? id;
}

/** What is written on the tape; where there is no map, a tree is known by its tag alone. */
export function treeTag(camp: Camp, id: string): string {
  return camp.ground?.trees.find((tree) => tree.id === id)?.tag ?? id;
}

/** Trees that carry a berth and that nobody has looked at, in the order of the berths. */
export function unlookedEnds(berths: readonly PlannedBerth[]): readonly UnlookedEnd[] {
  return berths.flatMap((berth) =>
    (["head", "foot"] as const).flatMap((end) => {
      const tree = end === "head" ? berth.headTree : berth.footTree;
      return isLookedAt(berth, tree) ? [] : [{ berth, end, tree }];
    }),
  );
}

export interface UnlookedEnd {
  readonly berth: PlannedBerth;
  readonly end: "head" | "foot";
  readonly tree: string;
}

/** The plan's own findings say whose look is missing, at the tree or above it. */
function isLookedAt({ findings }: PlannedBerth, treeId: string): boolean {
  return !findings.some(
    ({ rule, subject, verdict }) =>
      (rule === "tree.looked-at" || rule === "tree.above-looked-at") &&
      subject === `tree/${treeId}` &&
      verdict !== "clear",
  );
}
