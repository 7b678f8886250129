/** Level ground or a slope through the foot of the head tree: z = alongRise · x + acrossRise · y. */
export interface GroundPlane {
  readonly alongRise: number;
  readonly acrossRise: number;
}

export type Point3 = readonly [xM: number, yM: number, zM: number];

export function groundZM({ alongRise, acrossRise }: GroundPlane, xM: number, yM: number): number {
  return alongRise * xM + acrossRise * yM;
}

/** Height above the ground below the point [m]. */
export function aboveGroundM(ground: GroundPlane, [xM, yM, zM]: Point3): number {
  return zM - groundZM(ground, xM, yM);
}

/**
 * Where a line from a point, going outwards in a level direction and down by a slope, meets the ground.
 *
 * Shapes   a point, a level unit direction, tangent of the slope below level → point on the ground
 * Holds    the line must fall faster than the ground; where it does not, the slope is steepened until it does
 */
export function downToGround(
  ground: GroundPlane,
  from: Point3,
  [alongX, alongY]: readonly [number, number],
  fall: number,
): Point3 {
  const rise = ground.alongRise * alongX + ground.acrossRise * alongY;
  const closing = Math.max(fall + rise, LEAST_CLOSING);
  const runM = Math.max(0, aboveGroundM(ground, from)) / closing;
  const [xM, yM] = [from[0] + runM * alongX, from[1] + runM * alongY];
  return [xM, yM, groundZM(ground, xM, yM)];
}

/** Lines that hardly come nearer to the ground than this would be pegged out of sight. */
const LEAST_CLOSING = 0.3;
