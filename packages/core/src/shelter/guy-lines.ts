import { aboveGroundM, downToGround, groundZM, type GroundPlane, type Point3 } from "./ground-plane.ts";
import { ENDS, SIDES, type End, type PitchedTarp, type Side } from "./tarp-geometry.ts";

export interface GuyLine {
  readonly name: string;
  readonly from: Point3;
  readonly peg: Point3;
  readonly lengthM: number;
  /** Above level, at the peg. */
  readonly angleRad: number;
  /** What it takes of each side's edge pull; more than its stretch of the edge where it runs aslant. */
  readonly shares: Readonly<Record<Side, number>>;
}

/**
 * Guys of a pitched tarp: from each corner outwards along the diagonal, from folds, tie-outs and points straight aside,
 * down at 45° to a peg; a corner at the ground is pegged where it is. The corners of a closed end meet under the ridge
 * and are pegged there, straight down.
 *
 *   share = half the edge to both neighbours / whole edge / cosine of the guy off the plane across the ridge
 *
 * Shapes   tarp, ground, tie-outs along each lower edge → guys, left side first, head to foot, doors last
 * Units    metres, radians
 * Holds    slopes up to 35°; guys that would run along the slope are steepened
 * Source   tarp-geometry; the angle is common-practice (handbook/shelter.md)
 */
export function guyLines(tarp: PitchedTarp, ground: GroundPlane, tieOuts: number): GuyLine[] {
  const tips = ENDS.flatMap((end) => tipOf(tarp, end));
  const edges = SIDES.map((side) => ({ side, points: edgePoints(tarp, side, tieOuts, tips) }));
  const guys = edges.flatMap(({ side, points }) =>
    points.flatMap(({ name, from, outwards, stretch }) =>
      outwards === undefined
        ? []
        : [guy({ name, from, ground, outwards, stretch: { ...NONE, [side]: stretch } })],
    ),
  );
  const doors = tips.map(({ name, from }) => {
    const stretchOf = (side: Side) =>
      edges.find((edge) => edge.side === side)?.points.find((point) => point.name === name)?.stretch ?? 0;
    return pegged(name, from, below(ground, from), { left: stretchOf("left"), right: stretchOf("right") });
  });
  return [...guys, ...doors];
}

/** Pull in a guy for the pull of each side's lower edge [N]. */
export function guyPullN({ shares }: GuyLine, edgeN: Readonly<Record<Side, number>>): number {
  return shares.left * edgeN.left + shares.right * edgeN.right;
}

const NONE = { left: 0, right: 0 } as const;

interface Tip {
  readonly name: `${End}-door`;
  readonly end: End;
  readonly from: Point3;
}

/** Where the corners of a closed end meet. */
function tipOf({ panels }: PitchedTarp, end: End): Tip[] {
  const name = `${end}-door` as const;
  const from = panels.find((panel) => panel.name === name)?.corners[2];
  return from === undefined ? [] : [{ name, end, from }];
}

interface EdgePoint {
  readonly name: string;
  readonly from: Point3;
  /** Absent at a door's tip. */
  readonly outwards?: readonly [number, number];
  /** Part of the whole lower edge that it holds. */
  readonly stretch: number;
}

/** All that holds a lower edge, from its head end to its foot end, doors' tips with it. */
function edgePoints(tarp: PitchedTarp, side: Side, tieOuts: number, tips: readonly Tip[]): EdgePoint[] {
  const turn = side === "left" ? 1 : -1;
  const [first, last] = tarp.edges[side];
  const aside = [0, turn] as const;
  if (tarp.flat[side].corners.length === 1)
    return [{ name: `${side}/point`, from: first, outwards: aside, stretch: 1 }];
  const tip = (end: End) => tips.filter((one) => one.end === end);
  const corner = (end: End, from: Point3) => {
    const along = end === "head" ? -DIAGONAL : DIAGONAL;
    const outwards = tip(end).length > 0 ? aside : ([along, turn * DIAGONAL] as const);
    return { name: `${side}/${end}`, from, outwards };
  };
  const between = Array.from({ length: tieOuts }, (_, index) => {
    const from = mixed(first, last, (index + 1) / (tieOuts + 1));
    return { name: `${side}/mid-${index + 1}`, from, outwards: aside };
  });
  return stretched([...tip("head"), corner("head", first), ...between, corner("foot", last), ...tip("foot")]);
}

function stretched(points: readonly Omit<EdgePoint, "stretch">[]): EdgePoint[] {
  const gaps = points.slice(1).map(({ from }, index) => distance(from, points[index]?.from ?? from));
  const wholeM = gaps.reduce((sum, gapM) => sum + gapM, 0);
  return points.map((point, index) => ({
    ...point,
    stretch: ((gaps[index - 1] ?? 0) + (gaps[index] ?? 0)) / (2 * wholeM),
  }));
}

const DIAGONAL = Math.SQRT1_2;
/** Tangent of 45°. Common practice: 30 to 45° to the ground. */
const FALL = 1;
/** A corner lower than this is pegged where it is [m]. */
const AT_GROUND_M = 0.05;

interface GuyParts {
  readonly name: string;
  readonly from: Point3;
  readonly ground: GroundPlane;
  readonly outwards: readonly [number, number];
  readonly stretch: Readonly<Record<Side, number>>;
}

function guy({ name, from, ground, outwards, stretch }: GuyParts): GuyLine {
  if (aboveGroundM(ground, from) <= AT_GROUND_M) return pegged(name, from, from, stretch);
  return pegged(name, from, downToGround(ground, from, outwards, FALL), stretch);
}

function pegged(name: string, from: Point3, peg: Point3, stretch: Readonly<Record<Side, number>>): GuyLine {
  const lengthM = distance(from, peg);
  const runM = Math.hypot(peg[0] - from[0], peg[1] - from[1]);
  const across = lengthM > 0 ? Math.hypot(peg[1] - from[1], peg[2] - from[2]) / lengthM : 1;
  return {
    name,
    from,
    peg,
    lengthM,
    angleRad: lengthM > 0 ? Math.atan2(from[2] - peg[2], runM) : Math.PI / 2,
    shares: { left: stretch.left / across, right: stretch.right / across },
  };
}

/** The ground straight below a point; the point itself where it lies as good as on it. */
function below(ground: GroundPlane, from: Point3): Point3 {
  if (aboveGroundM(ground, from) <= AT_GROUND_M) return from;
  return [from[0], from[1], groundZM(ground, from[0], from[1])];
}

function distance(a: Point3, b: Point3): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}

function mixed(a: Point3, b: Point3, share: number): Point3 {
  return [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1]), a[2] + share * (b[2] - a[2])];
}
