import { pointGrid } from "../geometry/point-grid.ts";
import { LENGTH_SLACK_M } from "../quantity/constants.ts";
import { footprintConflicts } from "./footprint-conflicts.ts";
import { hexagonFootprint } from "./hexagon-footprint.ts";
import { hindrances } from "./hindrances.ts";
import type { GroundXY } from "./obstacle.ts";
import type { BlockedPair, Place, Places, PlacesInput } from "./places-types.ts";
import { roomFor } from "./position-room.ts";
import type { Tree } from "./tree.ts";
import { isUsableTree } from "./usable-tree.ts";

/**
 * The pairs of trees that serve as berths, what blocks the others, and which berths exclude each other.
 *
 *   usable trees → pairs whose span is in range → footprint free → places; footprints overlap → conflict
 *
 * Shapes   trees and obstacles in any order → places and blocked pairs sorted by (first id, second id)
 * Units    metres; bounds are inclusive with 1e-9 m slack on lengths
 * Holds    finite coordinates, dbh ≥ 0; stems at one spot, no stems and no pairs are all allowed.
 *          Two trees at one spot are never a pair, whatever the least span
 * Error    decisions rest on + − × ÷ √ alone; turning the map may move a distance by rounding (1e-12 m)
 * Source   layout-search (handbook/layout.md), house-rules
 */
export function berthPlaces(input: PlacesInput): Places {
  const order = byId(input.trees);
  const usable = order.filter((index) => {
    const tree = input.trees[index];
    return tree !== undefined && isUsableTree(tree, input.trunkMinM);
  });
  const keptM = Math.max(input.halfWidthM, input.keptHalfWidthM ?? 0);
  const room = roomFor({ ...input, halfWidthM: keptM });
  const inTheWay = hindrances(input, order, room.aroundM);
  const places: Place[] = [];
  const blocked: BlockedPair[] = [];
  const pairs = pairsInRange(input, usable, room.spanM);
  for (const pair of pairs) {
    const { first, second, spanM, from, to } = pair;
    const bare = hexagonFootprint(from, to, input.halfWidthM);
    const footprint = keptM > input.halfWidthM ? hexagonFootprint(from, to, keptM) : bare;
    const block = inTheWay.find(first, second, footprint, bare);
    const strip = footprint === bare ? { footprint } : { footprint, bare };
    if (block === undefined) places.push({ first, second, spanM, ...strip });
    else blocked.push({ first, second, spanM, ...block });
  }
  const conflicts = footprintConflicts(places, room.betweenM);
  return { places, conflicts, usable: usable.length, pairs: pairs.length, blocked };
}

interface Pair {
  readonly first: number;
  readonly second: number;
  readonly spanM: number;
  readonly from: GroundXY;
  readonly to: GroundXY;
}

function byId(trees: readonly Tree[]): Int32Array {
  const indices = trees.map(({ id }, index) => ({ id, index }));
  indices.sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : a.index - b.index));
  return Int32Array.from(indices, ({ index }) => index);
}

/** Pairs of usable trees whose span is allowed, sorted as `usable` is. */
function pairsInRange(input: PlacesInput, usable: Int32Array, roomM: number): readonly Pair[] {
  const { trees } = input;
  const spanMinM = input.spanMinM + roomM;
  const spanMaxM = input.spanMaxM - roomM;
  const ends = Array.from(usable, (index): GroundXY => [trees[index]?.xM ?? NaN, trees[index]?.yM ?? NaN]);
  const longest = spanMaxM + LENGTH_SLACK_M;
  const shortest = Math.max(spanMinM - LENGTH_SLACK_M, LENGTH_SLACK_M);
  const grid = pointGrid(
    Float64Array.from(ends, ([x]) => x),
    Float64Array.from(ends, ([, y]) => y),
    spanMaxM,
  );
  return ends.flatMap((from, i) => {
    const found: { rank: number; spanM: number; to: GroundXY }[] = [];
    grid.each(from[0] - longest, from[1] - longest, from[0] + longest, from[1] + longest, (rank) => {
      const to = ends[rank];
      if (rank <= i || to === undefined) return;
      const spanM = distance(from, to);
      if (spanM >= shortest && spanM <= longest) found.push({ rank, spanM, to });
    });
    found.sort((a, b) => a.rank - b.rank);
    return found.map(({ rank, spanM, to }) => ({
      first: usable[i] ?? -1,
      second: usable[rank] ?? -1,
      spanM,
      from,
      to,
    }));
  });
}

function distance([ax, ay]: GroundXY, [bx, by]: GroundXY): number {
  const x = bx - ax;
  const y = by - ay;
  return Math.sqrt(x * x + y * y);
}
