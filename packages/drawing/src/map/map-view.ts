import type { Camp } from "@nightspan/core";
import type { XY } from "../scene/scene.ts";
import type { GroundPlan } from "./ground-plan.ts";

/** Where the ground lies on the paper: `leftM` and `topM` are the metres at the upper left corner. */
export interface MapView {
  readonly pxPerM: number;
  readonly leftM: number;
  readonly topM: number;
  readonly widthPx: number;
  readonly heightPx: number;
}

export interface ViewWish {
  readonly widthPx: number;
  /** As high as the ground needs where silent. */
  readonly heightPx?: number;
  /** Part of the ground: its middle [m] and the scale; the whole where silent. */
  readonly centreM?: XY;
  readonly pxPerM?: number;
}

/** The view that shows the whole ground, or the part that is asked for. */
export function mapView(ground: GroundPlan, camp: Camp, wish: ViewWish): MapView {
  const [west, east, south, north] = bounds(ground, camp);
  const { widthPx, centreM } = wish;
  // On a narrow map the box with the scale would hide ground: the whole is shown above it.
  const kept = widthPx < NARROW_PX ? SCALE_BOX_PX : 0;
  const aspect = (north - south) / (east - west);
  const heightPx = wish.heightPx ?? Math.round(widthPx * clamp(aspect, 0.5, 1.35)) + kept;
  const fit = Math.min(
    widthPx / (east - west),
    Math.max(1, heightPx - kept) / (north - south),
    MOST_PX_PER_M,
  );
  const pxPerM = wish.pxPerM ?? fit;
  const [x, y] = centreM ?? [(west + east) / 2, (south + north) / 2 - kept / 2 / pxPerM];
  return {
    pxPerM,
    leftM: x - widthPx / 2 / pxPerM,
    topM: y + heightPx / 2 / pxPerM,
    widthPx,
    heightPx,
  };
}

/** Narrower maps are laid out for a phone [px]. */
export const NARROW_PX = 500;
const SCALE_BOX_PX = 88;

/** A place on the ground as a place on the paper. */
export function toPx(view: MapView, [x, y]: XY): XY {
  return [(x - view.leftM) * view.pxPerM, (view.topM - y) * view.pxPerM];
}

export function inView(view: MapView, [x, y]: XY, marginPx: number): boolean {
  return x >= -marginPx && y >= -marginPx && x <= view.widthPx + marginPx && y <= view.heightPx + marginPx;
}

/** Whole berths to scale, spans, or number plates alone. */
export type Detail = "leaf" | "span" | "plate";

export function detailOf({ pxPerM }: MapView): Detail {
  if (pxPerM >= LEAF_PX_PER_M) return "leaf";
  return pxPerM >= SPAN_PX_PER_M ? "span" : "plate";
}

const LEAF_PX_PER_M = 18;
const SPAN_PX_PER_M = 6;
/** Two trees alone do not fill a wall. */
const MOST_PX_PER_M = 90;
const MARGIN_M = 1.8;
/** Room round a sketched pair for its lines and names [m]. */
const SKETCH_ROOM_M = 0.8;

function bounds(ground: GroundPlan, camp: Camp): readonly [number, number, number, number] {
  let [west, east, south, north] = [Infinity, -Infinity, Infinity, -Infinity];
  const take = ([x, y]: XY): void => {
    west = Math.min(west, x);
    east = Math.max(east, x);
    south = Math.min(south, y);
    north = Math.max(north, y);
  };
  for (const tree of ground.trees) take(tree.at);
  const room = camp.rules.footprintHalfWidthM.value + (ground.sketch ? SKETCH_ROOM_M : 0);
  for (const { head, foot } of ground.berths) {
    const [x, y] = [(head.at[0] + foot.at[0]) / 2, (head.at[1] + foot.at[1]) / 2];
    take([x - room, y - room]);
    take([x + room, y + room]);
  }
  for (const spot of [camp.ground?.meetingPoint, camp.ground?.muster, camp.ground?.fallback]) {
    if (spot?.at !== undefined) take(spot.at);
  }
  for (const { shape } of camp.ground?.obstacles ?? []) if (shape.type === "point") take(shape.at);
  if (west > east) return [-5, 5, -4, 4];
  return [west - MARGIN_M, east + MARGIN_M, south - MARGIN_M, north + MARGIN_M];
}

function clamp(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}
