import type { Camp } from "../../plan/camp.ts";
import { DEFAULTS } from "../../plan/defaults.ts";
import type {
  BerthTarp,
  DripLine,
  Guy,
  PitchOption,
  RidgeLine,
  TarpEnd,
  TarpPitch,
} from "../../plan/tarp-types.ts";
import { radians } from "../../quantity/angle.ts";
import { findBestPitch, STRAP_CLEAR_M, type BestPitch } from "../../shelter/best-pitch.ts";
import { cordClearM } from "../../shelter/cord-clear.ts";
import { dripPlace } from "../../shelter/drip-line.ts";
import { guyPullN } from "../../shelter/guy-lines.ts";
import { groundZM } from "../../shelter/ground-plane.ts";
import type { Effort } from "../../shelter/pitch-list.ts";
import type { PitchTrial } from "../../shelter/pitch-trial.ts";
import type { Side } from "../../shelter/tarp-geometry.ts";
import { reversed } from "../bearing.ts";
import { guyConflicts, type GuySurroundings, type MapFrame } from "./guy-conflicts.ts";
import { diagonalRoom } from "./diagonal-room.ts";
import { loweredPitch } from "./lowered-pitch.ts";
import { raisedTies } from "./raised-ties.ts";
import {
  shelterPlace,
  tarpChoice,
  type HungPlace,
  type ShelterPlace,
  type TarpWeather,
} from "./shelter-place.ts";
import { tarpFindings } from "./tarp-findings.ts";
import { wetAnswers } from "./wet-answers.ts";

export interface BerthTarpInput {
  readonly camp: Camp;
  readonly weather: TarpWeather;
  readonly hung: HungPlace;
  readonly around: GuySurroundings;
  /** Where the berth lies, where it is on the map. */
  readonly frame?: MapFrame;
  readonly effort: Effort;
  /** Tarps to choose among; the one dealt goes first. */
  readonly tarps: readonly Parameters<typeof tarpChoice>[0][];
}

/** A pitched berth and what it was pitched in, for who asks more. */
export interface PitchedBerth {
  readonly tarp: BerthTarp;
  readonly where: ShelterPlace;
  readonly found: BestPitch;
}

/** Pitches the tarp of one berth; nothing where there is none, or none whose ridge can be tied. */
export function findBerthTarp(input: BerthTarpInput): PitchedBerth | undefined {
  const { camp, weather, hung, effort, tarps } = input;
  const where = shelterPlace(camp, weather, hung, effort);
  const isFoul = weather.rainMmH > 0;
  const found = findBestPitch({
    choices: tarps.map(tarpChoice),
    site: where.site,
    effort,
    reachM: tallestM(camp),
    overhangM: DEFAULTS["tarp.overhang_m"].value,
    headroomM: isFoul ? FOUL_ROOM_M : FAIR_ROOM_M,
    ventM2: VENT_M2,
    rainWeight: isFoul ? 1 : DRY_WEIGHT,
    ...(where.windEnd === undefined ? {} : { windEnd: where.windEnd }),
    ...(where.leeSide === undefined ? {} : { leeSide: where.leeSide }),
  });
  if (found === undefined) return undefined;
  const settled = clearedPitch(weather, where, settledPitch(weather, where, found), tallestM(camp));
  return { tarp: toldTarp(input, where, settled), where, found: settled.found };
}

/** Wanted room over the hammock in rain and in fair weather [m], and opening to breathe through [m²]. Common practice. */
const FOUL_ROOM_M = 0.15;
const FAIR_ROOM_M = 0.3;
const VENT_M2 = 1.5;
/** Rain nobody forecasts weighs a fifth. */
const DRY_WEIGHT = 0.2;

interface SettledPitch {
  readonly found: BestPitch;
  readonly wet: ReturnType<typeof wetAnswers>;
}

/** The best of the list, let down a little in rain where that alone covers what it leaves uncovered. */
function settledPitch(weather: TarpWeather, where: ShelterPlace, found: BestPitch): SettledPitch {
  const wet = wetAnswers(weather, where, found.best);
  const isFoul = weather.rainMmH > 0;
  const best = isFoul ? loweredPitch(found.best, wet.wetVerdicts, where.site, FOUL_ROOM_M) : undefined;
  if (best === undefined) return { found, wet };
  const tradeOff = found.tradeOff.map((trial) => (trial === found.best ? best : trial));
  return { found: { ...found, best, tradeOff }, wet: wetAnswers(weather, where, best) };
}

/** Ties higher at the trees where the tarp line would meet a strap, unless that lets rain in that was kept out. */
function clearedPitch(
  weather: TarpWeather,
  where: ShelterPlace,
  settled: SettledPitch,
  reachM: number,
): SettledPitch {
  const { found, wet } = settled;
  const best = raisedTies(found.best, where.site, reachM);
  if (best === undefined) return settled;
  const raised = wetAnswers(weather, where, best);
  const letsIn = raised.wetVerdicts.some(
    ({ covered }, at) => !covered && wet.wetVerdicts[at]?.covered === true,
  );
  if (letsIn && weather.rainMmH > 0) return settled;
  const tradeOff = found.tradeOff.map((trial) => (trial === found.best ? best : trial));
  return { found: { ...found, best, tradeOff }, wet: raised };
}

function tallestM({ sleepers }: Camp): number {
  return sleepers.reduce((most, { reachM }) => Math.max(most, reachM), 0);
}

function toldTarp(input: BerthTarpInput, where: ShelterPlace, { found, wet }: SettledPitch): BerthTarp {
  const { weather } = input;
  const { best, tradeOff } = found;
  const { choice, tarp, room } = best;
  const told: Omit<BerthTarp, "findings"> = {
    item: choice.item,
    shape: choice.cut.shape,
    pitch: toldPitch(best),
    panels: tarp.panels,
    guys: toldGuys(input, best),
    ridge: toldRidge(where, best),
    overhangM: room.overhangM,
    diagonalM: diagonalRoom(input.hung, tarp.panels),
    headroomM: room.headroomM,
    ventM2: room.ventM2,
    drip: { head: toldDrip(where, best, "head"), foot: toldDrip(where, best, "foot") },
    ...wet,
    options: tradeOff.map((trial) => toldOption(trial, where, trial === best)),
    windMS: weather.windMS,
    gustMS: weather.gustMS,
  };
  const pegHoldsN = where.site.pegHoldsN;
  const gatherM = where.site.berth.footGather[0] - where.site.berth.headGather[0];
  return {
    ...told,
    findings: tarpFindings({
      berth: input.hung.id,
      tarp: told,
      isRainy: weather.rainMmH > 0,
      ridgeM: choice.cut.ridgeM,
      gatherM,
      cordClearM: cordClearM(best, where.site),
      ...(pegHoldsN === undefined ? {} : { pegHoldsN }),
    }),
  };
}

function toldPitch({ pitch, pegged }: PitchTrial): TarpPitch {
  const { headTieM, footTieM, shiftM, leftAngle, rightAngle, closedEnds } = pitch;
  const porch = [...porchOf("left", leftAngle), ...porchOf("right", rightAngle)][0];
  return {
    headTieM,
    footTieM,
    shiftM,
    leftAngle: radians(leftAngle),
    rightAngle: radians(rightAngle),
    closedEnds,
    pegged,
    ...(porch === undefined ? {} : { porch }),
  };
}

function porchOf(side: Side, angle: number): Side[] {
  return angle < PORCH_BELOW ? [side] : [];
}

/** A side flatter than this is a porch [rad]. */
const PORCH_BELOW = 0.2;

function toldGuys({ hung, around, frame }: BerthTarpInput, { guys, loads }: PitchTrial): Guy[] {
  return guys.map((guy) => {
    const { name, from, peg, lengthM, angleRad } = guy;
    return {
      name,
      from,
      peg,
      lengthM,
      angle: radians(angleRad),
      asideM: Math.abs(peg[1]),
      alongM: peg[0],
      pullN: guyPullN(guy, loads.edgeN),
      conflicts: frame === undefined ? [] : guyConflicts(hung.id, frame, { from, peg }, around),
    };
  });
}

function toldRidge({ site, bearingRad }: ShelterPlace, { pitch, loads }: PitchTrial): RidgeLine {
  const { berth } = site;
  const riseM = groundZM(berth.ground, berth.spanM, 0) + pitch.footTieM - pitch.headTieM;
  const levelN = (loads.gust.pullN * berth.spanM) / Math.hypot(berth.spanM, riseM);
  const sidewaysN = Math.hypot(levelN, loads.asideN / 2);
  const towards = (rad: number) => (bearingRad === undefined ? {} : { towardsRad: rad });
  const onwards = bearingRad ?? 0;
  return {
    spanM: Math.hypot(berth.spanM, riseM),
    headTieM: pitch.headTieM,
    footTieM: pitch.footTieM,
    sagM: loads.calm.sagM,
    gustSagM: loads.gust.sagM,
    pullN: loads.calm.pullN,
    gustPullN: loads.gust.pullN,
    onTrees: {
      head: { sidewaysN, heightM: pitch.headTieM, ...towards(onwards) },
      foot: { sidewaysN, heightM: pitch.footTieM, ...towards(reversed(onwards)) },
    },
  };
}

function toldDrip({ site }: ShelterPlace, { tarp, strapClearM }: PitchTrial, end: TarpEnd): DripLine {
  const clearM = strapClearM[end];
  const strap = clearM >= STRAP_CLEAR_M ? "clear" : clearM > -STRAP_CLEAR_M ? "rubs" : "above-tarp";
  return { ...dripPlace(tarp, site, end), strapClearM: clearM, strap };
}

function toldOption(trial: PitchTrial, { site }: ShelterPlace, chosen: boolean): PitchOption {
  return {
    item: trial.choice.item,
    pitch: toldPitch(trial),
    wetM3S: trial.wetM2 * site.weather.rain.rateMS,
    headroomM: trial.room.headroomM,
    ventM2: trial.room.ventM2,
    sideLoadN: trial.sideLoadN,
    chosen,
  };
}
