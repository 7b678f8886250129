import { pointToConvex } from "../geometry/polygon-distance.ts";
import { pointGrid } from "../geometry/point-grid.ts";
import type { Box } from "../geometry/point.ts";
import { LENGTH_SLACK_M } from "../quantity/constants.ts";
import type { GroundXY } from "./obstacle.ts";
import type { Tree } from "./tree.ts";

/**
 * Finds the first stem, in the order given, whose centre is nearer to a footprint than its radius; the two
 * end trees are passed over, but not a stem at the same spot. −1 where there is none.
 *
 * `roomM` is added to every radius.
 *
 * Shapes   `order` lists tree indices → a tree index
 * Units    metres, 1e-9 m slack: a stem that just touches is not in the way
 */
export function stemsInTheWay(
  trees: readonly Tree[],
  order: Int32Array,
  roomM = 0,
): (first: number, second: number, footprint: readonly GroundXY[], box: Box) => number {
  const xs = Float64Array.from(order, (index) => trees[index]?.xM ?? NaN);
  const ys = Float64Array.from(order, (index) => trees[index]?.yM ?? NaN);
  const radii = Float64Array.from(order, (index) => (trees[index]?.dbhM ?? 0) / 2 + roomM - LENGTH_SLACK_M);
  const widest = radii.reduce((most, radius) => Math.max(most, radius), 0);
  const grid = pointGrid(xs, ys, CELL_M);
  return (first, second, footprint, box) => {
    let found = Infinity;
    grid.each(box.minX - widest, box.minY - widest, box.maxX + widest, box.maxY + widest, (rank) => {
      const index = order[rank] ?? -1;
      if (rank >= found || index === first || index === second) return;
      if (pointToConvex([xs[rank] ?? NaN, ys[rank] ?? NaN], footprint) < (radii[rank] ?? 0)) found = rank;
    });
    return order[found] ?? -1;
  };
}

/** Cell of the index [m]: about half a footprint. */
const CELL_M = 2;
