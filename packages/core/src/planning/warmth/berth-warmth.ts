import { balanceOf, bandOf, LEAST_BAND_K } from "../../heat/sleeper-balance.ts";
import { halves } from "../../heat/halves.ts";
import { balanceAt } from "../../heat/required-insulation.ts";
import { sleepState } from "../../heat/sleep-heat.ts";
import type { Sleeper } from "../../plan/camp.ts";
import { DEFAULTS } from "../../plan/defaults.ts";
import type {
  BalanceWarmth,
  BerthWarmth,
  HalfWarmth,
  WarmthHour,
  WarmthNote,
} from "../../plan/warmth-types.ts";
import { enoughOf, weakerOf } from "./half-verdict.ts";
import { balancedK, kitHalves, overM2KPerW, underM2KPerW, type WarmKit } from "./kit-halves.ts";
import type { AirHour, NightAirs } from "./night-airs.ts";
import { bestChange } from "./warmth-changes.ts";
import { balancedAs, halfMargins, isYoung, learntHalf, type HalfMargins } from "./warmth-margin.ts";

/** Warmth of one berth with the figures that its findings rest on. */
export interface JudgedWarmth {
  readonly warmth: BerthWarmth;
  readonly margins: HalfMargins;
  /** Colder than anybody should lie in this kit, whatever they put up with. */
  readonly farShort: boolean;
}

/** Who looks after a young sleeper, and with what. */
export interface YouthCare {
  readonly spare?: string;
  readonly checkedBy?: string;
}

/**
 * How warm one sleeper is tonight, under and over: a balance of heat for grown people, a rule about the kit below 16.
 *
 * Source: sleeper-balance (handbook/heat.md)
 */
export function berthWarmth(sleeper: Sleeper, kit: WarmKit, night: NightAirs, care: YouthCare): JudgedWarmth {
  const { air } = night.coldest;
  const margins = halfMargins(sleeper, air, kit);
  const weaker = weakerOf(margins);
  const isEnough = enoughOf(margins[weaker]) === "enough";
  const helps = isEnough ? undefined : bestChange(sleeper, air, kit);
  const isGrown = !isYoung(sleeper);
  const common = {
    under: halfOf(margins.under, kit.under?.id, isGrown),
    over: halfOf(margins.over, kit.over?.id, isGrown),
    weaker,
    ...(helps === undefined ? {} : { helps }),
  };
  const notes = notesOf(sleeper, kit, night);
  if (!isGrown) {
    const youth = { ...common, by: "youth-rule", notes, ...care, checkAt: checkAt(night) } as const;
    return { warmth: youth, margins, farShort: margins[weaker].floorK < -YOUNG_FAR_K };
  }
  const found = balanced(sleeper, kit, night);
  const cold = air.airK < found.extremeK + found.bandK;
  const deep = bandOf(found.comfortK) > LEAST_BAND_K ? (["colder-than-known"] as const) : [];
  const warmth = { ...common, by: "balance", ...found.told, notes: [...notes, ...deep] } as const;
  return { warmth, margins, farShort: cold };
}

/** A half is far short for the young where it is warm enough only so much above the low [K]. Source: house-convention. */
const YOUNG_FAR_K = 8;

function halfOf(margin: HalfMargins["under"], item: string | undefined, isGrown: boolean): HalfWarmth {
  return {
    enough: enoughOf(margin),
    ...(item === undefined ? {} : { item }),
    ...(isGrown ? { marginK: margin.reckonedK } : {}),
  };
}

type Told = Omit<BalanceWarmth, "by" | "under" | "over" | "weaker" | "helps" | "notes">;

function balanced(sleeper: Sleeper, kit: WarmKit, night: NightAirs) {
  const person = balancedAs(sleeper);
  const found = balanceOf({ ...kitHalves(kit, night.coldest.air), person });
  const { offsetK, bandK } = learntAsWhole(sleeper);
  const hours = night.hours.map((hour) =>
    hourOf(sleeper, kit, hour.at === night.coldest.at ? night.coldest : hour),
  );
  const told: Told = {
    comfortK: found.comfortK + offsetK,
    limitK: found.limitK + offsetK,
    bandK: found.bandK - LEAST_BAND_K + bandK,
    ...(sleeper.learnt?.by === "nights" ? { learnt: sleeper.learnt } : {}),
    topWM2: found.topWM2,
    bottomWM2: found.bottomWM2,
    totalM2KPerW: found.totalM2KPerW,
    hours: hours.map((hour) => ({ ...hour, coldest: hour.at === night.coldest.at })),
  };
  return { told, comfortK: found.comfortK, extremeK: found.extremeK + offsetK, bandK: told.bandK };
}

/** What the log says of both halves together: by their shares of the heat, as unsure as the less sure of them. */
function learntAsWhole(sleeper: Sleeper): { readonly offsetK: number; readonly bandK: number } {
  const [under, over] = [learntHalf(sleeper, "under"), learntHalf(sleeper, "over")];
  const share = DEFAULTS["warmth.top_share"].value;
  return {
    offsetK: share * over.offsetK + (1 - share) * under.offsetK,
    bandK: Math.max(under.bandK, over.bandK),
  };
}

function hourOf(sleeper: Sleeper, kit: WarmKit, { at, air }: AirHour): Omit<WarmthHour, "coldest"> {
  const flows = halves(kitHalves(kit, air));
  const comfort = sleepState("comfort", balancedAs(sleeper));
  const needM2KPerW = balanceAt(comfort, balancedK(air.airK), air.humidityRatio).totalM2KPerW;
  return {
    at,
    airK: air.airK,
    windMS: air.windMS,
    under: { needM2KPerW, haveM2KPerW: flows.bottomM2KPerW, lossWM2: flows.bottomWM2 },
    over: { needM2KPerW, haveM2KPerW: flows.topM2KPerW, lossWM2: flows.topWM2 },
  };
}

/** The first hour that is within a kelvin of the coldest. */
function checkAt({ hours, coldest }: NightAirs): string {
  return hours.find(({ air }) => air.airK <= coldest.air.airK + 1)?.at ?? coldest.at;
}

function notesOf(sleeper: Sleeper, kit: WarmKit, { fromLow }: NightAirs): readonly WarmthNote[] {
  const when = (note: WarmthNote, holds: boolean): readonly WarmthNote[] => (holds ? [note] : []);
  const { under, over } = kit;
  return [
    ...ALWAYS,
    ...when("not-for-children", isYoung(sleeper)),
    ...when("age-not-given", sleeper.ageYears === undefined),
    ...when("person-assumed", !isYoung(sleeper) && sleeper.sex === undefined),
    ...when("under-not-known", under !== undefined && underM2KPerW(under) === undefined),
    ...when("over-not-known", over !== undefined && overM2KPerW(over) === undefined),
    ...when("hat-assumed", over?.form === "quilt" && kit.hat === undefined),
    ...when("hours-from-low", fromLow),
    ...when("from-the-log", sleeper.learnt !== undefined),
  ];
}

const ALWAYS: readonly WarmthNote[] = [
  "not-when-ill",
  "not-when-wet",
  "not-after-alcohol",
  "not-when-exhausted",
];
