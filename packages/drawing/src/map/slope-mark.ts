import type { Camp } from "@nightspan/core";
import { TYPE } from "../colour/tokens.ts";
import { quantity } from "../scene/names.ts";
import type { Item, XY } from "../scene/scene.ts";
import { groundFall, slopeStrokes } from "./ground-lines.ts";
import type { GroundPlan } from "./ground-plan.ts";
import { hazardRims } from "./hazard-marks.ts";
import { boxAround, placesRound, type LabelPlace } from "./label-placement.ts";
import type { KeepOff, LabelWish } from "./map-labels.ts";
import type { MapView } from "./map-view.ts";

interface SlopeMark {
  readonly items: readonly Item[];
  readonly labels: readonly LabelWish[];
}

/** The slope's strokes where there is room, and how steep it is in words. */
export function slopeMark(
  ground: GroundPlan,
  camp: Camp,
  view: MapView,
  { always, ifPossible }: KeepOff,
): SlopeMark {
  const fall = ground.sketch ? undefined : groundFall(camp);
  if (fall === undefined || fall.riseRatio < 0.01) return { items: [], labels: [] };
  const rims = hazardRims(ground, camp, view);
  const outside = ([x, y]: XY): boolean => rims.every(({ at, r }) => Math.hypot(at[0] - x, at[1] - y) > r);
  const free = corners(view).filter((place) => outside(place) && always.isFree(boxAround(place, 34, 30)));
  const clear = (half: number): XY | undefined =>
    free.find((place) => ifPossible.isFree(boxAround(place, half)));
  const at = clear(44) ?? clear(30) ?? clear(24) ?? free[0];
  if (at === undefined) return { items: [], labels: [] };
  always.take(boxAround(at, 28));
  const label: LabelWish = {
    item: quantity("slope", fall.riseRatio, 0),
    size: TYPE.note,
    weight: 600,
    fill: "ink",
    places: belowFirst(placesRound(at, 30, TYPE.note)),
    needed: true,
    class: "ns-slope-words",
  };
  return { items: [slopeStrokes(at, fall)], labels: [label] };
}

/** Beneath or above a sign its words are not taken for a tag beside it. */
function belowFirst([right, left, below, above, ...corners]: readonly LabelPlace[]): LabelPlace[] {
  return [below, above, right, left, ...corners].filter((place) => place !== undefined);
}

/** Places for a sign of the whole ground: from the lower right corner inward. */
function corners({ widthPx, heightPx }: MapView): XY[] {
  const shares = Array.from({ length: 17 }, (_, index) => 0.94 - index * 0.055);
  const places = shares.flatMap((x) => shares.map((y): XY => [x, y]));
  const fromCorner = ([x, y]: XY): number => Math.min(1 - x, 1 - y) * 2 + (1 - x) + (1 - y);
  return places
    .sort((one, other) => fromCorner(one) - fromCorner(other))
    .map(([x, y]) => [x * widthPx, y * heightPx]);
}
