import type { BerthTarp, PlannedBerth, Point2, Point3 } from "@nightspan/core";
import type { XY } from "../scene/scene.ts";

/** Where a berth lies on the paper as seen from above: head left, the sleeper's way along, left side up. */
export interface PlanFrame {
  readonly pxPerM: number;
  /** Paper place of the head tree's middle. */
  readonly origin: XY;
  readonly widthPx: number;
  readonly heightPx: number;
}

const MARGIN_M = 0.45;
/** Half the width that is always shown [m]. */
const LEAST_HALF_M = 1.3;

/** The frame that shows both trees, tarp, guys and pegs, from `topPx` down. */
export function planFrame(
  { spanM }: PlannedBerth,
  tarp: BerthTarp | undefined,
  widthPx: number,
  topPx: number,
): PlanFrame {
  const places = tarp === undefined ? [] : placesOf(tarp);
  const xs = [0, spanM, ...places.map(([x]) => x)];
  const ys = [LEAST_HALF_M, -LEAST_HALF_M, ...places.map(([, y]) => y)];
  const [west, east] = [Math.min(...xs) - MARGIN_M, Math.max(...xs) + MARGIN_M];
  const [right, left] = [Math.min(...ys) - MARGIN_M, Math.max(...ys) + MARGIN_M];
  const pxPerM = Math.min(MOST_PX_PER_M, widthPx / (east - west));
  const spare = (widthPx - (east - west) * pxPerM) / 2;
  return {
    pxPerM,
    origin: [spare - west * pxPerM, topPx + left * pxPerM],
    widthPx,
    heightPx: (left - right) * pxPerM,
  };
}

const MOST_PX_PER_M = 130;

function placesOf({ panels, guys }: BerthTarp): readonly Point2[] {
  const corners = [...panels.flatMap((panel) => panel.corners), ...guys.map(({ peg }) => peg)];
  return corners.map(([x, y]: Point3) => [x, y]);
}

export function abovePx({ pxPerM, origin }: PlanFrame, [x, y]: Point2): XY {
  return [origin[0] + x * pxPerM, origin[1] - y * pxPerM];
}
