import { aboveGroundM, type GroundPlane, type Point3 } from "./ground-plane.ts";
import type { HungBody } from "./hung-body.ts";
import { ENDS, SIDES, type BerthFrame, type End, type PitchedTarp, type Side } from "./tarp-geometry.ts";

/** Room under a tarp and past its ends. */
export interface TarpRoom {
  /** Lowest cloth over the hammock: rims, middle line and gathers; negative where the cloth would touch [m]. */
  readonly headroomM: number;
  /** Open ends and gaps under the edges, down to the ground [m²]. */
  readonly ventM2: number;
  /** Ridge beyond the gather at each end, level [m]. */
  readonly overhangM: Readonly<Record<End, number>>;
  /** Lowest corner of the lower edges above the ground [m]. */
  readonly lowestEdgeM: number;
}

/**
 * Room under a pitched tarp.
 *
 * Shapes   tarp, body, berth → scalars; `sagM` is taken off the headroom
 * Units    metres
 * Holds    panels that fall or rise evenly from the ridge
 * Error    doors do not count for the headroom; the gap under an edge is told by its corners
 * Source   tarp-geometry (handbook/shelter.md)
 */
export function tarpRoom(
  tarp: PitchedTarp,
  body: HungBody,
  { ground, headGather, footGather }: BerthFrame,
  closedEnds: readonly End[],
  sagM: number,
): TarpRoom {
  const over = (point: Point3) => clothOverM(tarp, point);
  const points = [...body.top, headGather, footGather];
  const headroomM = Math.min(...points.map(over)) - sagM;
  const open = ENDS.filter((end) => !closedEnds.includes(end));
  const ends = open.map((end) => endAreaM2(tarp, ground, end));
  const gaps = SIDES.map((side) => gapAreaM2(tarp, ground, side));
  const lowest = SIDES.flatMap((side) => tarp.edges[side].map((corner) => aboveGroundM(ground, corner)));
  return {
    headroomM,
    ventM2: [...ends, ...gaps].reduce((sum, area) => sum + area, 0),
    overhangM: {
      head: headGather[0] - tarp.ridgeHead[0],
      foot: tarp.ridgeFoot[0] - footGather[0],
    },
    lowestEdgeM: Math.min(...lowest),
  };
}

/** Upright distance from a point to the plane of the side above it. */
function clothOverM({ ridgeHead, ridgeFoot, angle }: PitchedTarp, [xM, yM, zM]: Point3): number {
  const run = ridgeFoot[0] - ridgeHead[0];
  const rise = ridgeFoot[2] - ridgeHead[2];
  const ridgeZM = ridgeHead[2] + ((xM - ridgeHead[0]) * rise) / run;
  const side = angle[yM >= 0 ? "left" : "right"];
  const square = Math.hypot(run, rise) / run;
  return ridgeZM - Math.abs(yM) * Math.tan(side) * square - zM;
}

/** Triangle below the ridge's end, and from its foot to the ground. */
function endAreaM2(tarp: PitchedTarp, ground: GroundPlane, end: End): number {
  const ridge = end === "head" ? tarp.ridgeHead : tarp.ridgeFoot;
  return SIDES.reduce((sum, side) => {
    const corner = tarp.edges[side][end === "head" ? 0 : 1];
    const heights = Math.max(0, aboveGroundM(ground, ridge)) + Math.max(0, aboveGroundM(ground, corner));
    return sum + (Math.abs(corner[1]) * heights) / 2;
  }, 0);
}

function gapAreaM2(tarp: PitchedTarp, ground: GroundPlane, side: Side): number {
  const [first, last] = tarp.edges[side];
  const heights = Math.max(0, aboveGroundM(ground, first)) + Math.max(0, aboveGroundM(ground, last));
  return (Math.abs(last[0] - first[0]) * heights) / 2;
}
