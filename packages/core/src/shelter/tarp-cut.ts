/** Outline of a tarp laid flat. */
export type TarpCutShape = "rectangle" | "diamond" | "hexagon" | "asymmetric";

/** A tarp as it was cut, laid flat. */
export interface TarpCut {
  readonly shape: TarpCutShape;
  readonly ridgeM: number;
  readonly widthM: number;
  /** Lower edges of a hexagon. */
  readonly edgeM?: number;
  /** Shift of the side corners of an asymmetric one. */
  readonly skewM?: number;
  /** Depth of the hollow of each edge at its middle. */
  readonly catenaryCutM?: number;
  readonly tieOuts?: number;
}

/** A point of a side laid flat: along the ridge from its middle, footwards; down the side from the ridge [m]. */
export type FlatPoint = readonly [alongM: number, downM: number];

export interface FlatSide {
  /** Corners that take guys, head to foot: two, or one where the side comes to a point. */
  readonly corners: readonly FlatPoint[];
  /** From the ridge's head end to its foot end along the edges, hollows included; the ridge closes it. */
  readonly outline: readonly FlatPoint[];
}

/**
 * One side of a tarp, laid flat.
 *
 *   a hollow edge is a parabola, deepest at its middle
 *
 * Shapes   a cut → corners and outline; `turn` +1 for the side on the left of who looks footwards, −1 for the right
 * Units    metres
 * Holds    ridge and width > 0; the hollow less than the side is deep
 * Source   tarp-geometry (handbook/shelter.md)
 */
export function flatSide(cut: TarpCut, turn: 1 | -1): FlatSide {
  const corners = cornersOf(cut, turn);
  const half = cut.ridgeM / 2;
  const round: readonly FlatPoint[] = [[-half, 0], ...corners, [half, 0]];
  const hollowM = cut.catenaryCutM ?? 0;
  const outline = round.slice(1).flatMap((to, index) => {
    const from = round[index];
    return from === undefined ? [] : edge(from, to, hollowM);
  });
  return { corners, outline: [[-half, 0], ...outline] };
}

/** Both sides of a cut and the area of one; told again without reckoning where the very same cut is asked for. */
export function flatSides(cut: TarpCut): FlatSides {
  const known = KNOWN.get(cut);
  if (known !== undefined) return known;
  const [left, right] = [flatSide(cut, 1), flatSide(cut, -1)];
  const sides = { left, right, areaM2: flatAreaM2(left) };
  KNOWN.set(cut, sides);
  return sides;
}

export interface FlatSides {
  readonly left: FlatSide;
  readonly right: FlatSide;
  readonly areaM2: number;
}

const KNOWN = new WeakMap<TarpCut, FlatSides>();

function cornersOf({ shape, ridgeM, widthM, edgeM, skewM }: TarpCut, turn: 1 | -1): FlatPoint[] {
  const downM = widthM / 2;
  switch (shape) {
    case "rectangle":
      return [
        [-ridgeM / 2, downM],
        [ridgeM / 2, downM],
      ];
    case "hexagon": {
      const half = (edgeM ?? ridgeM * HEXAGON_EDGE) / 2;
      return [
        [-half, downM],
        [half, downM],
      ];
    }
    case "diamond":
      return [[0, downM]];
    case "asymmetric":
      return [[turn * (skewM ?? ridgeM * ASYMMETRIC_SKEW), downM]];
  }
}

/** Where nobody measured: lower edge and shift as shares of the ridge. Common practice. */
export const HEXAGON_EDGE = 0.65;
export const ASYMMETRIC_SKEW = 0.2;

/** Points of one edge after its first, up to and with its last. */
function edge(from: FlatPoint, to: FlatPoint, hollowM: number): FlatPoint[] {
  const [alongM, downM] = [to[0] - from[0], to[1] - from[1]];
  const lengthM = Math.hypot(alongM, downM);
  if (!(hollowM > 0) || lengthM === 0) return [to];
  const inwards: FlatPoint = [downM / lengthM, -alongM / lengthM];
  return Array.from({ length: EDGE_PARTS }, (_, index) => {
    const share = (index + 1) / EDGE_PARTS;
    const deepM = 4 * hollowM * share * (1 - share);
    return [
      from[0] + share * alongM + deepM * inwards[0],
      Math.max(0, from[1] + share * downM + deepM * inwards[1]),
    ];
  });
}

const EDGE_PARTS = 6;

/** Area of one side laid flat [m²]. */
export function flatAreaM2({ outline }: FlatSide): number {
  let twice = 0;
  outline.forEach((from, index) => {
    const to = outline[(index + 1) % outline.length];
    if (to !== undefined) twice += from[0] * to[1] - to[0] * from[1];
  });
  return Math.abs(twice) / 2;
}
