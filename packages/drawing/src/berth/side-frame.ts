import type { Hang, Point2 } from "@nightspan/core";
import { LINE, LINE_MM } from "../colour/tokens.ts";
import type { XY } from "../scene/scene.ts";

/** Where the upright plane through both trees lies on the paper: one scale across and up. */
export interface SideFrame {
  /** Paper units a metre. */
  readonly scale: number;
  /** Paper place of the head tree's centre at its ground. */
  readonly originX: number;
  readonly originY: number;
  readonly lines: LineSet;
  /** Heights between which trunks are drawn [m]: from below the lower ground to the torn top. */
  readonly topZM: number;
  /** Edges of the drawn ground on the paper. */
  readonly leftX: number;
  readonly rightX: number;
}

export interface LineSet {
  readonly trunk: number;
  readonly cloth: number;
  readonly strap: number;
  readonly tarp: number;
  readonly guy: number;
  readonly dimension: number;
  /** Paper units to a screen pixel: small things are sized by it. */
  readonly px: number;
}

export const SCREEN_LINES: LineSet = { ...LINE, px: 1 };
export const PAPER_LINES: LineSet = { ...LINE_MM, px: 0.22 };

export function onPaper({ originX, originY, scale }: SideFrame, [xM, zM]: Point2): XY {
  return [originX + xM * scale, originY - zM * scale];
}

/** The highest strap above the head tree's ground [m]. */
export function highestStrapM({ shape }: Hang): number {
  return Math.max(shape.headAnchor[1], shape.footAnchor[1]);
}

/** The lower and the higher of the two grounds [m]. */
export function groundRangeM({ shape }: Hang): readonly [number, number] {
  return [Math.min(0, shape.groundFootZM), Math.max(0, shape.groundFootZM)];
}
