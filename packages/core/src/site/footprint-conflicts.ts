import { boxGrid } from "../geometry/box-grid.ts";
import { penetrationDepth } from "../geometry/penetration-depth.ts";
import { boxAround, type Ring } from "../geometry/point.ts";

/**
 * Pairs of convex footprints that overlap, by index, lower first, sorted.
 *
 * Units    metres; touching is allowed, an overlap of up to 1e-7 m too
 * Source   layout-search
 */
export function footprintConflicts(footprints: readonly Ring[]): readonly (readonly [number, number])[] {
  const boxes = footprints.map(boxAround);
  const grid = boxGrid(boxes);
  const found: (readonly [number, number])[] = [];
  for (const [i, footprint] of footprints.entries()) {
    const box = boxes[i];
    if (box === undefined) continue;
    const later: number[] = [];
    grid.each(box, (j) => {
      const other = footprints[j];
      if (j > i && other !== undefined && penetrationDepth(footprint, other) > OVERLAP_SLACK_M) later.push(j);
    });
    later.sort((a, b) => a - b);
    for (const j of later) found.push([i, j]);
  }
  return found;
}

/** Footprints may reach this far into each other [m]. Source: house-convention. */
const OVERLAP_SLACK_M = 1e-7;
