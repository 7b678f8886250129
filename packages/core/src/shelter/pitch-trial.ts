import { aboveGroundM } from "./ground-plane.ts";
import { guyLines, guyPullN, type GuyLine } from "./guy-lines.ts";
import type { HungBody } from "./hung-body.ts";
import type { TarpCut } from "./tarp-cut.ts";
import {
  pitchTarp,
  type BerthFrame,
  type End,
  type Pitch,
  type PitchedTarp,
  type Side,
} from "./tarp-geometry.ts";
import { tarpLoads, type TarpLoads } from "./tarp-loads.ts";
import { tarpRoom, type TarpRoom } from "./tarp-room.ts";
import { windRatioAt, type Surrounding } from "./wind-profile.ts";
import { wetting, type Weather } from "./wetting.ts";

/** One tarp that may be pitched. */
export interface TarpChoice {
  readonly item: string;
  readonly cut: TarpCut;
  readonly massKg: number;
}

/** What every pitch of one berth is held against. */
export interface PitchSite {
  readonly berth: BerthFrame;
  readonly body: HungBody;
  readonly weather: Weather;
  /** Directions the wind may come from, as in `wetting`; at least one. */
  readonly windsFrom: readonly number[];
  /** Gust at 1.5 m [m/s]. */
  readonly gustMS: number;
  readonly surrounding: Surrounding;
  readonly cord: { readonly setN: number; readonly eaN: number };
  /** Rise of the suspension per level metre at each end, from the gather towards the tree. */
  readonly strapRise: Readonly<Record<End, number>>;
  /** What one peg was measured to hold; absent: nobody measured [N]. */
  readonly pegHoldsN?: number;
}

/** A pitch and all that follows from it. */
export interface PitchTrial {
  readonly choice: TarpChoice;
  readonly pitch: Pitch;
  readonly pegged: readonly Side[];
  readonly tarp: PitchedTarp;
  readonly guys: readonly GuyLine[];
  readonly loads: TarpLoads;
  readonly room: TarpRoom;
  /** Cloth's ridge end over the suspension at each end, upright [m]. */
  readonly strapClearM: Readonly<Record<End, number>>;
  /** Open rain that reaches the hammock, mean over the directions [m²]. */
  readonly wetM2: number;
  /** Greatest guy pull in the gust [N]. */
  readonly sideLoadN: number;
}

/**
 * Tries one pitch: geometry, guys, loads, room and what gets wet.
 *
 * Shapes   a tarp, a pitch, a site → a trial
 * Units    metres, newtons, radians
 * Holds    as `pitchTarp`
 * Source   tarp-geometry, rain-shade, en-1991-1-4 (handbook/shelter.md)
 */
export function tryPitch(
  choice: TarpChoice,
  pitch: Pitch,
  pegged: readonly Side[],
  site: PitchSite,
): PitchTrial {
  const { berth, body, weather, windsFrom } = site;
  const tarp = pitchTarp(choice.cut, pitch, berth);
  const guys = guyLines(tarp, berth.ground, choice.cut.tieOuts ?? 0);
  const loads = loadsOf(choice, pitch, pegged, tarp, site);
  const room = tarpRoom(tarp, body, berth, pitch.closedEnds, loads.calm.sagM);
  const wets = windsFrom.map((from) => wetting(body, tarp.panels, weather, from).wholeM2);
  return {
    choice,
    pitch,
    pegged,
    tarp,
    guys,
    loads,
    room,
    strapClearM: strapClearM(tarp, site),
    wetM2: wets.reduce((sum, wet) => sum + wet, 0) / wets.length,
    sideLoadN: Math.max(0, ...guys.map((guy) => guyPullN(guy, loads.edgeN))),
  };
}

function loadsOf(
  { massKg }: TarpChoice,
  pitch: Pitch,
  pegged: readonly Side[],
  tarp: PitchedTarp,
  { berth, gustMS, surrounding, cord }: PitchSite,
): TarpLoads {
  return tarpLoads({
    tarp,
    spanM: berth.spanM,
    gustMS: gustMS * windRatioAt(meanHeightM(tarp, berth), surrounding),
    pegged,
    closedEnds: pitch.closedEnds.length,
    massKg,
    ...cord,
  });
}

/** Half way between the ridge and the lower edges, above the ground. */
function meanHeightM({ ridgeHead, ridgeFoot, edges }: PitchedTarp, { ground }: BerthFrame): number {
  const ridgeM = (aboveGroundM(ground, ridgeHead) + aboveGroundM(ground, ridgeFoot)) / 2;
  const corners = [...edges.left, ...edges.right];
  const edgeM = corners.reduce((sum, corner) => sum + aboveGroundM(ground, corner), 0) / corners.length;
  return (ridgeM + edgeM) / 2;
}

function strapClearM({ ridgeHead, ridgeFoot }: PitchedTarp, { berth, strapRise }: PitchSite) {
  const { headGather, footGather } = berth;
  const headOut = Math.max(0, headGather[0] - ridgeHead[0]);
  const footOut = Math.max(0, ridgeFoot[0] - footGather[0]);
  return {
    head: ridgeHead[2] - (headGather[2] + headOut * strapRise.head),
    foot: ridgeFoot[2] - (footGather[2] + footOut * strapRise.foot),
  };
}
