import type { Camp, PlannedBerth } from "@nightspan/core";

export function sleeperName(camp: Camp, id: string): string {
  return camp.sleepers.find((sleeper) => sleeper.id === id)?.name ?? id;
}

/** What is written on the tape; where there is no map, a tree is known by its tag alone. */
export function treeTag(camp: Camp, id: string): string {
  return camp.ground?.trees.find((tree) => tree.id === id)?.tag ?? id;
}

/** The sleeper's own easy steps from tree to tree, to half a step. */
export function stepsOf(camp: Camp, berth: PlannedBerth): string {
  const stepM = camp.sleepers.find(({ id }) => id === berth.sleeper)?.stepM ?? 1;
  const halves = Math.round((berth.spanM / stepM) * 2);
  const whole = Math.floor(halves / 2);
  return halves % 2 === 0 ? String(whole) : `${whole === 0 ? "" : whole}½`;
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
