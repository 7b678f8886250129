import type { Tree } from "./tree.ts";

/**
 * A tree's height: as measured, else estimated from its trunk.
 *
 *   height = 4 m + 0.5 m per centimetre of diameter at breast height
 *
 * A convention to draw circles by, not a forester's law: measure where it matters.
 *
 * Units    dbhM [m] → metres
 * Source   house-convention
 */
export function estimatedHeightM(tree: Pick<Tree, "dbhM" | "heightM">): number {
  return tree.heightM ?? BASE_M + RISE_PER_DBH * tree.dbhM;
}

/** Height of a tree of no girth [m]. Source: house-convention. */
const BASE_M = 4;

/** Metres of height for each metre of diameter. Source: house-convention. */
const RISE_PER_DBH = 50;
