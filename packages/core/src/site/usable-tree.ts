import { LENGTH_SLACK_M } from "../quantity/constants.ts";
import type { Tree } from "./tree.ts";

/**
 * Whether a tree may become an anchor at all: stout enough, allowed, and neither doubtful nor dead.
 *
 * Units    dbhM, trunkMinM [m]; the least diameter is inclusive
 * Source   house-rules
 */
export function isUsableTree(tree: Tree, trunkMinM: number): boolean {
  return (
    tree.use &&
    tree.condition !== "doubtful" &&
    tree.condition !== "dead" &&
    tree.dbhM >= trunkMinM - LENGTH_SLACK_M
  );
}
