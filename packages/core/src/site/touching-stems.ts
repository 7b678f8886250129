import { pointGrid } from "../geometry/point-grid.ts";
import { LENGTH_SLACK_M } from "../quantity/constants.ts";
import type { Tree } from "./tree.ts";

/** Two stems of a map that cannot both stand where it says. */
export interface TouchingStems {
  readonly first: Tree;
  readonly second: Tree;
  /** Between their middles [m]. */
  readonly apartM: number;
  /** Half of both trunks: the least there must be between them [m]. */
  readonly leastM: number;
}

/**
 * Pairs of stems that the map has at one spot, or nearer to each other than half of both trunks.
 *
 * Shapes   trees in any order → pairs in the order of the trees, each once
 * Units    metres
 * Holds    finite coordinates, dbh ≥ 0; two stems at one spot touch whatever their dbh
 * Error    trunks are taken as round and upright at breast height; twins of one root are told too
 * Source   layout-search (handbook/layout.md: stems at one spot)
 */
export function touchingStems(trees: readonly Tree[]): readonly TouchingStems[] {
  const widestM = trees.reduce((most, { dbhM }) => Math.max(most, dbhM), 0);
  const grid = pointGrid(
    Float64Array.from(trees, ({ xM }) => xM),
    Float64Array.from(trees, ({ yM }) => yM),
    Math.max(widestM, LEAST_CELL_M),
  );
  return trees.flatMap((first, index) => {
    const reachM = (first.dbhM + widestM) / 2 + LENGTH_SLACK_M;
    const later: number[] = [];
    grid.each(first.xM - reachM, first.yM - reachM, first.xM + reachM, first.yM + reachM, (other) => {
      if (other > index) later.push(other);
    });
    later.sort((a, b) => a - b);
    return later.flatMap((other) => {
      const second = trees[other];
      return second === undefined ? [] : touching(first, second);
    });
  });
}

function touching(first: Tree, second: Tree): TouchingStems[] {
  const [x, y] = [second.xM - first.xM, second.yM - first.yM];
  const apartM = Math.sqrt(x * x + y * y);
  const leastM = (first.dbhM + second.dbhM) / 2;
  const isOne = apartM <= LENGTH_SLACK_M;
  return isOne || apartM < leastM - LENGTH_SLACK_M ? [{ first, second, apartM, leastM }] : [];
}

const LEAST_CELL_M = 0.1;
