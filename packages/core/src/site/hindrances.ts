import { boxGrid } from "../geometry/box-grid.ts";
import { boxAround, inflate, type Box } from "../geometry/point.ts";
import { pointToConvex } from "../geometry/polygon-distance.ts";
import { LENGTH_SLACK_M } from "../quantity/constants.ts";
import { estimatedHeightM } from "./estimated-height.ts";
import type { GroundXY, Obstacle } from "./obstacle.ts";
import type { PlaceBlock, PlacesInput } from "./places-types.ts";
import { boxOfShape, shapeToFootprintM } from "./shape-distance.ts";
import { stemsInTheWay } from "./stems-in-the-way.ts";
import type { Tree } from "./tree.ts";

/** Something other than a stem that keeps footprints away. */
interface Hindrance {
  readonly by: PlaceBlock;
  readonly cause: string;
  readonly box: Box;
  readonly blocks: (footprint: readonly GroundXY[]) => boolean;
}

export interface Hindrances {
  /** What stands in the way of a berth between two trees, nothing where the ground is free; stems only in the bare strip. */
  readonly find: (
    first: number,
    second: number,
    footprint: readonly GroundXY[],
    bare: readonly GroundXY[],
  ) => { readonly by: PlaceBlock; readonly cause: string } | undefined;
}

/**
 * All that can block a berth, indexed by place: every stem, the reach of dead and doubtful trees,
 * overhead hazards, obstacles with their set-backs.
 *
 * A stem blocks where its centre is nearer to the footprint than its radius; a reach blocks up to and
 * including its edge; an obstacle blocks nearer than its set-back and where it touches. Where several
 * block, the one told is the first by kind (stem, dead tree, overhead, obstacle), then by id.
 *
 * `roomM` is added to every radius, reach and set-back.
 *
 * Shapes   `order` lists tree indices by id
 * Units    metres; 1e-9 m slack on every limit
 * Source   house-rules, house-convention
 */
export function hindrances(input: PlacesInput, order: Int32Array, roomM = 0): Hindrances {
  const findStem = stemsInTheWay(input.trees, order, roomM);
  const groups = [
    reaches(input, order, roomM),
    obstaclesOf(input, true, roomM),
    obstaclesOf(input, false, roomM),
  ];
  const indexed = groups.map((list) => ({ list, grid: boxGrid(list.map(({ box }) => box)) }));
  return {
    find: (first, second, footprint, bare) => {
      const box = boxAround(footprint);
      const stem = input.trees[findStem(first, second, bare, boxAround(bare))];
      if (stem !== undefined) return { by: "stem", cause: stem.id };
      for (const { list, grid } of indexed) {
        let found = Infinity;
        grid.each(box, (index) => {
          const hindrance = list[index];
          if (hindrance === undefined || index >= found) return;
          if (hindrance.blocks(footprint)) found = index;
        });
        const hindrance = list[found];
        if (hindrance !== undefined) return { by: hindrance.by, cause: hindrance.cause };
      }
      return undefined;
    },
  };
}

function reaches(input: PlacesInput, order: Int32Array, roomM: number): readonly Hindrance[] {
  return Array.from(order).flatMap((index) => {
    const tree = input.trees[index];
    const heights = tree === undefined ? 0 : heightsKept(tree, input);
    return tree === undefined || !(heights > 0)
      ? []
      : [reachOf(tree, heights * estimatedHeightM(tree) + roomM + LENGTH_SLACK_M)];
  });
}

function heightsKept(tree: Tree, input: PlacesInput): number {
  if (tree.condition === "dead") return input.deadTreeHeights;
  return tree.condition === "doubtful" ? input.doubtfulTreeHeights : 0;
}

function reachOf(tree: Tree, reachM: number): Hindrance {
  const centre: GroundXY = [tree.xM, tree.yM];
  return {
    by: "dead-tree",
    cause: tree.id,
    box: inflate(boxAround([centre]), reachM),
    blocks: (footprint) => pointToConvex(centre, footprint) <= reachM,
  };
}

function obstaclesOf({ obstacles }: PlacesInput, overhead: boolean, roomM: number): readonly Hindrance[] {
  return (
    obstacles
      .filter(({ kind }) => (kind === "overhead") === overhead)
      .sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0))
      .filter(({ shape }) => Number.isFinite(boxOfShape(shape).minX))
      .map((obstacle) => ({ ...obstacle, setbackM: obstacle.setbackM + roomM }))
      // Off for the better, it may not be there at all.
      .filter(({ setbackM }) => setbackM >= 0 || roomM >= 0)
      .map((obstacle) => keptAway(obstacle, overhead))
  );
}

function keptAway({ id, shape, setbackM }: Obstacle, overhead: boolean): Hindrance {
  const reachM = overhead ? setbackM + LENGTH_SLACK_M : Math.max(setbackM - LENGTH_SLACK_M, LENGTH_SLACK_M);
  return {
    by: overhead ? "overhead" : "obstacle",
    cause: id,
    box: inflate(boxOfShape(shape), reachM),
    blocks: (footprint) => {
      const apartM = shapeToFootprintM(shape, footprint);
      return overhead ? apartM <= reachM : apartM < reachM;
    },
  };
}
