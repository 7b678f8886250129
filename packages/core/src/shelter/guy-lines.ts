import { aboveGroundM, downToGround, type GroundPlane, type Point3 } from "./ground-plane.ts";
import { SIDES, type PitchedTarp, type Side } from "./tarp-geometry.ts";

export interface GuyLine {
  readonly name: string;
  readonly side: Side;
  readonly from: Point3;
  readonly peg: Point3;
  readonly lengthM: number;
  /** Above level, at the peg. */
  readonly angleRad: number;
}

/**
 * Guys of a pitched tarp: from each corner outwards along the diagonal, from tie-outs and points straight aside, down at
 * 45° to a peg; a corner at the ground is pegged where it is.
 *
 * Shapes   tarp, ground, tie-outs along each lower edge → guys, left side first, head to foot
 * Units    metres, radians
 * Holds    slopes up to 35°; guys that would run along the slope are steepened
 * Source   tarp-geometry; the angle is common-practice (handbook/shelter.md)
 */
export function guyLines(tarp: PitchedTarp, ground: GroundPlane, tieOuts: number): GuyLine[] {
  return SIDES.flatMap((side) => {
    const turn = side === "left" ? 1 : -1;
    const corners = tarp.corners[side];
    const [first, last] = [corners[0], corners[corners.length - 1]];
    if (first === undefined || last === undefined) return [];
    if (first === last) return [guy(`${side}/point`, side, first, ground, [0, turn])];
    const between = Array.from({ length: tieOuts }, (_, index) => {
      const share = (index + 1) / (tieOuts + 1);
      return guy(`${side}/mid-${index + 1}`, side, mixed(first, last, share), ground, [0, turn]);
    });
    return [
      guy(`${side}/head`, side, first, ground, [-DIAGONAL, turn * DIAGONAL]),
      ...between,
      guy(`${side}/foot`, side, last, ground, [DIAGONAL, turn * DIAGONAL]),
    ];
  });
}

const DIAGONAL = Math.SQRT1_2;
/** Tangent of 45°. Common practice: 30 to 45° to the ground. */
const FALL = 1;
/** A corner lower than this is pegged where it is [m]. */
const AT_GROUND_M = 0.05;

function guy(
  name: string,
  side: Side,
  from: Point3,
  ground: GroundPlane,
  outwards: readonly [number, number],
): GuyLine {
  if (aboveGroundM(ground, from) <= AT_GROUND_M) {
    return { name, side, from, peg: from, lengthM: 0, angleRad: Math.PI / 2 };
  }
  const peg = downToGround(ground, from, outwards, FALL);
  const runM = Math.hypot(peg[0] - from[0], peg[1] - from[1]);
  const fallM = from[2] - peg[2];
  return { name, side, from, peg, lengthM: Math.hypot(runM, fallM), angleRad: Math.atan2(fallM, runM) };
}

function mixed(a: Point3, b: Point3, share: number): Point3 {
  return [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1]), a[2] + share * (b[2] - a[2])];
}
