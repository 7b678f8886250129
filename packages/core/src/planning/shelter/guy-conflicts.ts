import type { Camp } from "../../plan/camp.ts";
import type { Guy, GuyConflict, Point3 } from "../../plan/tarp-types.ts";
import { pointToSegment } from "../../geometry/segment-distance.ts";
import { segmentsToPolygon } from "../../geometry/polygon-distance.ts";
import type { GroundXY } from "../../site/obstacle.ts";
import type { Tree } from "../../site/tree.ts";
import { shapeToCordM } from "./shape-to-cord.ts";
import type { HungPlace } from "./shelter-place.ts";

/** Where a berth lies on the map. */
export interface MapFrame {
  readonly head: GroundXY;
  /** Head to foot, clockwise from north [rad]. */
  readonly bearingRad: number;
}

/** From berth coordinates to the map. */
export function onMap({ head, bearingRad }: MapFrame, [xM, yM]: Point3): GroundXY {
  const [sine, cosine] = [Math.sin(bearingRad), Math.cos(bearingRad)];
  return [head[0] + xM * sine - yM * cosine, head[1] + xM * cosine + yM * sine];
}

/** All that guys could run into, sorted out once for a camp. */
export interface GuySurroundings {
  readonly trees: readonly Tree[];
  readonly obstacles: NonNullable<Camp["ground"]>["obstacles"];
  readonly berths: readonly HungPlace[];
}

/** What the line of a guy, cloth to peg, comes too near to on the map: stems, other berths, paths, obstacles. */
export function guyConflicts(
  id: string,
  frame: MapFrame,
  { from, peg }: Pick<Guy, "from" | "peg">,
  { trees, obstacles, berths }: GuySurroundings,
): GuyConflict[] {
  const [a, b] = [onMap(frame, from), onMap(frame, peg)];
  const near = <T>(items: readonly T[], told: (item: T) => GuyConflict, closeM: (item: T) => number) =>
    items.flatMap((item) => {
      const conflict = told(item);
      return conflict.gapM < closeM(item) ? [conflict] : [];
    });
  return [
    ...near(
      trees,
      (tree) => ({
        with: "stem",
        id: tree.id,
        gapM: Math.max(0, pointToSegment([tree.xM, tree.yM], a, b) - tree.dbhM / 2),
      }),
      () => STEM_CLEAR_M,
    ),
    ...near(
      berths.filter((other) => other.id !== id && isNear(other, a)),
      (other) => ({ with: "berth", id: other.id, gapM: gapToBerth(other, a, b) }),
      () => 1e-9,
    ),
    ...near(
      obstacles.filter(({ kind }) => kind !== "overhead"),
      ({ id: other, kind, shape }) => ({
        with: kind === "path" ? "path" : "obstacle",
        id: other,
        gapM: shapeToCordM(shape, a, b),
      }),
      () => PATH_CLEAR_M,
    ),
  ];
}

/** A cord needs no more than this beside a stem, and so much beside a path that people use by night [m]. */
export const STEM_CLEAR_M = 0.05;
export const PATH_CLEAR_M = 0.5;

function isNear({ place: { middle } }: HungPlace, [xM, yM]: GroundXY): boolean {
  return middle !== undefined && (middle[0] - xM) ** 2 + (middle[1] - yM) ** 2 < NEAR_M * NEAR_M;
}

/** No guy reaches a berth whose middle is farther off [m]. */
const NEAR_M = 9;

/** To the strip of somebody else's hammock: the ground beyond it, which the layout keeps for guys, is for both. */
function gapToBerth({ place: { footprint, bare = footprint } }: HungPlace, a: GroundXY, b: GroundXY): number {
  return bare === undefined ? Infinity : segmentsToPolygon([[a, b]], bare);
}
