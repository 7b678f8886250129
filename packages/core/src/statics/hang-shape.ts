import { at } from "../numeric/at.ts";
import { stationOnCloth, STATION_RATIO } from "./body-on-cloth.ts";
import { CLOTH_CELLS } from "./hang-constants.ts";
import {
  hangFigures,
  LYING_PLACES,
  SITTING_PLACES,
  type HangSetting,
  type HangSite,
  type NodePlaces,
} from "./hang-figures.ts";
import type { HangRig } from "./hang-rig.ts";
import { startOf, type HangTrial } from "./hang-trial.ts";
import type { HangShape, Point2 } from "./hang-types.ts";

/** Where everything of a solved hang lies, from one more forward solve that starts at the answer. */
export function hangShape(
  rig: HangRig,
  site: HangSite,
  setting: HangSetting,
  { straps }: HangTrial,
): HangShape {
  const { ridgeN } = hangFigures(rig, site, setting, startOf(straps));
  const onBody = (stationRatio: number) =>
    alongCloth(
      LYING_PLACES,
      (stationOnCloth(rig.clothM, rig.statureM, stationRatio) / rig.clothM) * CLOTH_CELLS,
    );
  const last = CLOTH_CELLS + 2;
  return {
    headAnchor: placeOf(LYING_PLACES, 0),
    footAnchor: placeOf(LYING_PLACES, last),
    headGather: placeOf(LYING_PLACES, 1),
    footGather: placeOf(LYING_PLACES, last - 1),
    cloth: clothOf(LYING_PLACES),
    clothSitting: clothOf(SITTING_PLACES),
    body: {
      ankle: onBody(STATION_RATIO.ankle),
      knee: onBody(STATION_RATIO.knee),
      hip: onBody(STATION_RATIO.hip),
      shoulder: onBody(STATION_RATIO.shoulder),
      head: onBody(STATION_RATIO.head),
    },
    ridgelineTaut: ridgeN > 0,
    groundHeadZM: 0,
    groundFootZM: site.footGroundM,
  };
}

function placeOf({ xM, zM }: NodePlaces, node: number): Point2 {
  return [at(xM, node), at(zM, node)];
}

function clothOf(places: NodePlaces): readonly Point2[] {
  return Array.from({ length: CLOTH_CELLS + 1 }, (_, node) => placeOf(places, node + 1));
}

/** A place along the cloth, told in cells from its head end. */
function alongCloth(places: NodePlaces, cells: number): Point2 {
  const cell = Math.max(0, Math.min(CLOTH_CELLS - 1, Math.floor(cells)));
  const share = cells - cell;
  const [ax, az] = placeOf(places, cell + 1);
  const [bx, bz] = placeOf(places, cell + 2);
  return [ax + share * (bx - ax), az + share * (bz - az)];
}
