import type { Camp, Night } from "../../plan/camp.ts";
import { DEFAULTS } from "../../plan/defaults.ts";
import type { Tarp } from "../../plan/kit.ts";
import type { NightHour } from "../../plan/night-types.ts";
import { fallingRain, type FallingRain } from "../../shelter/falling-rain.ts";
import type { GroundPlane } from "../../shelter/ground-plane.ts";
import { hungBody, type HungBody } from "../../shelter/hung-body.ts";
import type { Effort } from "../../shelter/pitch-list.ts";
import type { PitchSite, TarpChoice } from "../../shelter/pitch-trial.ts";
import type { BerthFrame, End, Side } from "../../shelter/tarp-geometry.ts";
import { gustAtHeight, gustySpeeds, TOLD_AT_M, windAtHeight } from "../../shelter/wind-profile.ts";
import type { Hang, Point2 } from "../../statics/hang-types.ts";
import { reversed } from "../bearing.ts";
import type { CampPlace } from "../camp-places-types.ts";
import type { DealtKit } from "../dealt-kit.ts";
import { headIsSecond } from "../hang-request.ts";
import { acrossRise } from "./across-rise.ts";
import { hoursTonight } from "./hours-tonight.ts";

/** One berth that is hung, before its tarp is pitched. */
export interface HungPlace {
  readonly id: string;
  readonly place: CampPlace;
  readonly kit: ShelterKit;
  readonly hang: Hang;
}

/** What of a berth's kit the tarp hangs over, and the tarp. */
export interface ShelterKit {
  readonly hammock: Pick<DealtKit["hammock"], "widthM">;
  readonly sleeper: Pick<DealtKit["sleeper"], "hand">;
  readonly tarp?: Tarp;
}

/** Tonight's weather where the tarps are. */
export interface TarpWeather {
  /** As forecast [mm/h]; 0 where none is. */
  readonly rainMmH: number;
  /** What shares are told for where no rain is forecast [mm/h]. */
  readonly assumedMmH: number;
  /** The same as it falls. */
  readonly rain: FallingRain;
  readonly windMS: number;
  readonly gustMS: number;
  readonly windFromRad?: number;
}

export function tarpWeather(camp: Camp): TarpWeather {
  const { night, ground } = camp;
  const canopy = ground?.canopy ?? "wood";
  const wind = worstHour(night, hoursTonight(camp));
  const assumedMmH = Math.max(wind.rainMmH, ASSUMED_MM_H);
  const profile = { fromM: night?.windHeightM ?? 10, heightM: TOLD_AT_M, surrounding: canopy };
  return {
    rainMmH: wind.rainMmH,
    assumedMmH,
    rain: fallingRain(assumedMmH),
    windMS: windAtHeight({ ...profile, windMS: wind.windMS }),
    gustMS: gustAtHeight({ ...profile, windMS: wind.gustMS }),
    ...(night?.windFromRad === undefined ? {} : { windFromRad: night.windFromRad }),
  };
}

const ASSUMED_MM_H = 1;

/** The most of each through the night: rain, wind, gust. */
function worstHour(
  night: Night | undefined,
  hours: readonly NightHour[],
): Pick<Night, "rainMmH" | "windMS" | "gustMS"> {
  if (night === undefined) return { rainMmH: 0, windMS: 0, gustMS: 0 };
  const most = (base: number, of: (hour: NightHour) => number | undefined) =>
    hours.reduce((top, hour) => Math.max(top, of(hour) ?? base), base);
  const windMS = most(night.windMS, (hour) => hour.windMS);
  return {
    rainMmH: most(night.rainMmH, (hour) => hour.rainMmH),
    windMS,
    gustMS: Math.max(
      windMS,
      most(night.gustMS, (hour) => hour.gustMS),
    ),
  };
}

/** A berth as the tarp's models see it. */
export interface ShelterPlace {
  /** What pitches are searched by; fewer directions where few pitches are looked at. */
  readonly site: PitchSite;
  /** The hammock in as many pieces as an answer needs; a short search takes fewer. */
  readonly body: HungBody;
  /** Directions the answers are judged over: five within 45° of the wind, or eight all round. */
  readonly windsFrom: readonly number[];
  /** Head to foot, clockwise from north [rad]; absent: nobody knows. */
  readonly bearingRad?: number;
  readonly windEnd?: End;
  readonly leeSide?: Side;
}

export function shelterPlace(
  camp: Camp,
  weather: TarpWeather,
  { place, kit, hang }: HungPlace,
  effort: Effort,
): ShelterPlace {
  const berth = berthFrame(camp, place, hang);
  const isSecond = headIsSecond(place);
  const bearingRad =
    place.bearingRad === undefined || !isSecond ? place.bearingRad : reversed(place.bearingRad);
  const from =
    bearingRad === undefined || weather.windFromRad === undefined
      ? undefined
      : bearingRad - weather.windFromRad;
  const pegHoldsN = pegHolds(camp);
  const trough = { cloth: hang.shape.cloth, widthM: kit.hammock.widthM };
  const body = hungBody(trough);
  const winds = windsFrom(from);
  const site: PitchSite = {
    berth,
    body: effort === "many" ? body : hungBody({ ...trough, sections: FEW_SECTIONS }),
    weather: {
      rain: weather.rain,
      winds: gustySpeeds(weather.windMS, weather.gustMS),
    },
    windsFrom: effort === "many" ? winds : winds.filter((_, index) => index % 2 === 0),
    gustMS: weather.gustMS,
    surrounding: camp.ground?.canopy ?? "wood",
    cord: { setN: DEFAULTS["tarp.ridge_pull_n"].value, eaN: DEFAULTS["tarp.ridge_ea_n"].value },
    strapRise: strapRises(hang.shape),
    ...(pegHoldsN === undefined ? {} : { pegHoldsN }),
  };
  return {
    site,
    body,
    windsFrom: winds,
    ...(bearingRad === undefined ? {} : { bearingRad }),
    ...facing(from),
  };
}

function berthFrame(camp: Camp, place: CampPlace, { shape }: Hang): BerthFrame {
  const { headGather, footGather, footAnchor, groundFootZM } = shape;
  const spanM = footAnchor[0];
  const ground: GroundPlane = {
    alongRise: groundFootZM / spanM,
    acrossRise: acrossRise(camp, place),
  };
  return {
    spanM,
    ground,
    headGather: [headGather[0], 0, headGather[1]],
    footGather: [footGather[0], 0, footGather[1]],
  };
}

/** Rise of the suspension from each gather towards its tree, a level metre. */
function strapRises({ headAnchor, headGather, footGather, footAnchor }: Hang["shape"]) {
  const rise = (from: Point2, to: Point2) =>
    (to[1] - from[1]) / Math.max(LEAST_RUN_M, Math.abs(to[0] - from[0]));
  return { head: rise(headGather, headAnchor), foot: rise(footGather, footAnchor) };
}

const LEAST_RUN_M = 0.01;
const FEW_SECTIONS = 5;

/** Five directions within 45° of the wind; eight all round where nobody knows it. Every other one spans the same. */
function windsFrom(from: number | undefined): number[] {
  if (from === undefined) return Array.from({ length: 8 }, (_, index) => (index * Math.PI) / 4);
  return [0, -1, -2, 1, 2].map((step) => from + (step * Math.PI) / 8);
}

/** The end that the wind blows at and the side away from it, where it comes within 60° of one. */
function facing(from: number | undefined): Pick<ShelterPlace, "windEnd" | "leeSide"> {
  if (from === undefined) return {};
  const [along, across] = [Math.cos(from), Math.sin(from)].map(settled);
  return {
    ...(along !== undefined && Math.abs(along) >= 0.5 ? { windEnd: along > 0 ? "foot" : "head" } : {}),
    ...(across !== undefined && Math.abs(across) >= 0.5 ? { leeSide: across > 0 ? "right" : "left" } : {}),
  };
}

/** To 1e-7, so that the same wind gives the same choice on every machine. */
function settled(value: number): number {
  return Math.round(value * 1e7) / 1e7;
}

/** The least that any kind of peg in use was measured to hold. */
function pegHolds({ kit }: Camp): number | undefined {
  const holds = kit.flatMap((item) =>
    item.kind === "peg" && item.state === "in-use" ? (item.holdsN ?? []) : [],
  );
  return holds.length === 0 ? undefined : Math.min(...holds);
}

export function tarpChoice(tarp: Tarp): TarpChoice {
  const { shape, ridgeM, widthM, edgeM, skewM, catenaryCutM, tieOuts } = tarp;
  return {
    item: tarp.id,
    massKg: tarp.massKg ?? DEFAULTS["kit.tarp.mass_kg"].value,
    cut: {
      shape,
      ridgeM,
      widthM,
      ...(edgeM === undefined ? {} : { edgeM }),
      ...(skewM === undefined ? {} : { skewM }),
      ...(catenaryCutM === undefined ? {} : { catenaryCutM }),
      ...(tieOuts === undefined ? {} : { tieOuts }),
    },
  };
}
