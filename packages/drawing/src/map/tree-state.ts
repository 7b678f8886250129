import type { Camp, Looked, Tree } from "@nightspan/core";

/** How a tree is drawn: only "looked-at" ones are filled. */
export type TreeState = "looked-at" | "not-looked-at" | "doubtful" | "dead" | "thin" | "barred";

/** What is known of a tree on the day of the camp; the worst that is known comes first. */
export function treeState(tree: Tree, camp: Camp): TreeState {
  if (tree.condition === "dead" || tree.condition === "doubtful") return tree.condition;
  if (!tree.use) return "barred";
  if (tree.dbhM < camp.rules.trunkMinM.value) return "thin";
  return tree.condition === "healthy" && lookedAtOnTheDay(tree.lookedAt, camp)
    ? "looked-at"
    : "not-looked-at";
}

/** Whether somebody looked on the day of the camp; on any day where the camp has none. */
export function lookedAtOnTheDay(looked: Looked | undefined, camp: Camp): boolean {
  return looked !== undefined && (camp.date === undefined || looked.on === camp.date);
}
