import type { GroundPlane, Point3 } from "./ground-plane.ts";
import { aboveGroundM, groundZM } from "./ground-plane.ts";
import { flatSides, type FlatPoint, type FlatSide, type FlatSides, type TarpCut } from "./tarp-cut.ts";

export type Side = "left" | "right";
export type End = "head" | "foot";

export const SIDES = ["left", "right"] as const satisfies readonly Side[];
export const ENDS = ["head", "foot"] as const satisfies readonly End[];

/** How a tarp is pitched; the same figures as a plan's `TarpPitch`. */
export interface Pitch {
  readonly headTieM: number;
  readonly footTieM: number;
  readonly shiftM: number;
  readonly leftAngle: number;
  readonly rightAngle: number;
  readonly closedEnds: readonly End[];
}

/** Where the berth's parts are, for the tarp: berth coordinates. */
export interface BerthFrame {
  readonly spanM: number;
  readonly ground: GroundPlane;
  /** Level distance of each gather from the head tree's centre, and height over the head tree's ground [m]. */
  readonly headGather: Point3;
  readonly footGather: Point3;
}

export interface Panel {
  readonly name: Side | "head-door" | "foot-door";
  readonly corners: readonly Point3[];
}

/** A tarp in its place. */
export interface PitchedTarp {
  readonly panels: readonly Panel[];
  /** Ends of the cloth's ridge. */
  readonly ridgeHead: Point3;
  readonly ridgeFoot: Point3;
  /** Both ends of each lower edge, head to foot, as folded; the same point twice where a side comes to one. */
  readonly edges: Readonly<Record<Side, readonly [Point3, Point3]>>;
  /** Corners that take guys, head to foot. */
  readonly corners: Readonly<Record<Side, readonly Point3[]>>;
  readonly flat: FlatSides;
  readonly angle: Readonly<Record<Side, number>>;
}

/**
 * A tarp's panels in berth coordinates.
 *
 *   point = ridge(along) + down (± cos a across, −sin a square to the ridge)
 *
 * A closed end is folded: the lower corner is brought to the middle plane below the ridge, which takes the fold from
 * the ridge's end to a point w cos a along the lower edge, w the depth of the side.
 *
 * Shapes   cut, pitch and berth → two panels, two more for each closed end
 * Units    metres, radians
 * Holds    angles from −30° (a porch that rises) to 90°; only rectangles without hollow edges close
 * Error    the ridge is straight; its sag is told apart
 * Source   tarp-geometry (handbook/shelter.md)
 */
export function pitchTarp(cut: TarpCut, pitch: Pitch, berth: BerthFrame): PitchedTarp {
  const frame = ridgeFrame(pitch, berth);
  const flat = flatSides(cut);
  const angle = { left: pitch.leftAngle, right: pitch.rightAngle };
  const panels = SIDES.flatMap((side) => panelsOf(side, flat[side], angle[side], frame, pitch.closedEnds));
  const cornersOf = (side: Side) =>
    flat[side].corners.flatMap((corner) =>
      isFolded(corner, pitch.closedEnds) ? [] : [frame.at(corner, side, angle[side])],
    );
  const edgeOf = (side: Side): readonly [Point3, Point3] => {
    const ends = flat[side].corners.map((corner) =>
      isFolded(corner, pitch.closedEnds) ? foldOf(corner, angle[side]).along : corner,
    );
    const [first = [0, 0], last = first] = [ends[0], ends[ends.length - 1]];
    return [frame.at(first, side, angle[side]), frame.at(last, side, angle[side])];
  };
  const half = cut.ridgeM / 2;
  return {
    panels,
    edges: { left: edgeOf("left"), right: edgeOf("right") },
    ridgeHead: frame.at([-half, 0], "left", angle.left),
    ridgeFoot: frame.at([half, 0], "left", angle.left),
    corners: { left: cornersOf("left"), right: cornersOf("right") },
    flat,
    angle,
  };
}

/** Lowest corner of a side over the ground below it, at an angle of its own [m]. */
export function lowestCornerM(
  corners: readonly FlatPoint[],
  pitch: Omit<Pitch, "leftAngle" | "rightAngle">,
  berth: BerthFrame,
  side: Side,
): (angle: number) => number {
  const { at } = ridgeFrame(pitch, berth);
  return (angle) =>
    corners.reduce((least, corner) => {
      return Math.min(least, aboveGroundM(berth.ground, at(corner, side, angle)));
    }, Infinity);
}

/** From a point laid flat on a side to berth coordinates. */
interface RidgeFrame {
  readonly at: (point: FlatPoint, side: Side, angle: number) => Point3;
  /** A point in the upright plane of the ridge: along it, and square to it downwards. */
  readonly below: (alongM: number, downM: number) => Point3;
}

function ridgeFrame(pitch: Omit<Pitch, "leftAngle" | "rightAngle">, berth: BerthFrame): RidgeFrame {
  const { spanM, ground, headGather, footGather } = berth;
  const riseM = groundZM(ground, spanM, 0) + pitch.footTieM - pitch.headTieM;
  const lengthM = Math.hypot(spanM, riseM);
  const [rx, rz] = [spanM / lengthM, riseM / lengthM];
  const middleXM = (headGather[0] + footGather[0]) / 2 + pitch.shiftM;
  const middleZM = pitch.headTieM + (riseM / spanM) * middleXM;
  const below = (alongM: number, downM: number): Point3 => [
    middleXM + alongM * rx + downM * rz,
    0,
    middleZM + alongM * rz - downM * rx,
  ];
  const at = ([alongM, downM]: FlatPoint, side: Side, angle: number): Point3 => {
    const [xM, , zM] = below(alongM, downM * Math.sin(angle));
    return [xM, (side === "left" ? 1 : -1) * downM * Math.cos(angle), zM];
  };
  return { at, below };
}

function isFolded([alongM]: FlatPoint, closed: readonly End[]): boolean {
  return (alongM < 0 && closed.includes("head")) || (alongM > 0 && closed.includes("foot"));
}

function panelsOf(
  side: Side,
  { corners, outline }: FlatSide,
  angle: number,
  { at, below }: RidgeFrame,
  closed: readonly End[],
): Panel[] {
  const onSide = (point: FlatPoint) => at(point, side, angle);
  if (closed.length === 0) return [{ name: side, corners: outline.map(onSide) }];
  const folds = corners.filter((corner) => isFolded(corner, closed)).map((corner) => foldOf(corner, angle));
  const kept = outline.map((point) => {
    const fold = folds.find(({ corner }) => corner[0] === point[0] && point[1] > 0);
    return fold === undefined ? point : fold.along;
  });
  const doors = folds.map(({ corner, along, foldedAlongM }): Panel => {
    const [, downM] = corner;
    const ridgeEnd: FlatPoint = [corner[0], 0];
    return {
      name: corner[0] < 0 ? "head-door" : "foot-door",
      corners: [onSide(ridgeEnd), onSide(along), below(foldedAlongM, downM * Math.sin(angle))],
    };
  });
  return [{ name: side, corners: kept.map(onSide) }, ...doors];
}

/** Where the fold meets the lower edge, and where its corner comes to lie in the middle plane. */
function foldOf(corner: FlatPoint, angle: number) {
  const inM = Math.sign(-corner[0]) * corner[1] * Math.cos(angle);
  const along: FlatPoint = [corner[0] + inM, corner[1]];
  return { corner, along, foldedAlongM: corner[0] + inM };
}

/** Whether an end of this tarp can be folded shut at this angle of its sides. */
export function canClose(cut: TarpCut, angle: number): boolean {
  const isStraight = cut.catenaryCutM === undefined || cut.catenaryCutM === 0;
  return cut.shape === "rectangle" && isStraight && cut.widthM * Math.cos(angle) < cut.ridgeM;
}
