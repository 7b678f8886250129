import { hungBody } from "./hung-body.ts";
import { fallingRain } from "./falling-rain.ts";
import type { GroundPlane, Point3 } from "./ground-plane.ts";
import type { TarpCut } from "./tarp-cut.ts";
import type { BerthFrame, Pitch } from "./tarp-geometry.ts";
import { gustySpeeds } from "./wind-profile.ts";
import type { Weather } from "./wetting.ts";

const HEAD_GATHER: Point3 = [0.85, 0, 1.15];
const FOOT_GATHER: Point3 = [3.35, 0, 1.35];

/** A berth of 4.2 m, its hammock 2.5 m from gather to gather. */
export function berthOn(ground: GroundPlane = { alongRise: 0, acrossRise: 0 }): BerthFrame {
  return { spanM: 4.2, ground, headGather: HEAD_GATHER, footGather: FOOT_GATHER };
}

/** Its loaded cloth, half a metre deep. */
export const BODY = hungBody({
  cloth: Array.from({ length: 21 }, (_, index) => {
    const share = index / 20;
    const z = HEAD_GATHER[2] + 0.2 * share - 0.55 * 4 * share * (1 - share);
    return [HEAD_GATHER[0] + 2.5 * share, z] as const;
  }),
  widthM: 1.5,
});

export const RECTANGLE: TarpCut = { shape: "rectangle", ridgeM: 3.4, widthM: 3 };

/** Ridge parallel to the gathers, 40 cm over them, both sides at 40°. */
export const PITCH: Pitch = {
  headTieM: 1.15 - 0.08 * 0.85 + 0.4,
  footTieM: 1.35 + 0.08 * 0.85 + 0.4,
  shiftM: 0,
  leftAngle: (40 * Math.PI) / 180,
  rightAngle: (40 * Math.PI) / 180,
  closedEnds: [],
};

export function weatherOf(rainMmH: number, windMS: number, gustMS = windMS): Weather {
  return { rain: fallingRain(rainMmH), winds: gustySpeeds(windMS, gustMS) };
}
