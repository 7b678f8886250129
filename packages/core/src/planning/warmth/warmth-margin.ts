import { coldestAir } from "../../heat/coldest-air.ts";
import { halves, type HalvesInput } from "../../heat/halves.ts";
import type { LearntHalf } from "../../heat/learnt-offset.ts";
import { balanceAt } from "../../heat/required-insulation.ts";
import { GROWN_YEARS } from "../../heat/resting-heat.ts";
import { sleepState, STANDARD_WOMAN, type SleepingPerson } from "../../heat/sleep-heat.ts";
import { SKIN_K, type SleepState } from "../../heat/sleep-states.ts";
import { bandOf, LEAST_BAND_K } from "../../heat/sleeper-balance.ts";
import type { Night, Sleeper } from "../../plan/camp.ts";
import { DEFAULTS } from "../../plan/defaults.ts";
import type { Hammock, OverInsulation, Tarp, UnderInsulation } from "../../plan/kit.ts";
import type { WarmthHalf } from "../../plan/warmth-types.ts";
import { balancedK, kitHalves, type WarmKit } from "./kit-halves.ts";
import { tonightAir, type HammockAir } from "./tonight-air.ts";

/** How well one half does tonight [K]. */
export interface HalfMargin {
  /** Better than what is asked; from 0 it is enough. */
  readonly marginK: number;
  /** Above where it is not enough: below 0 the sleeper wakes of cold, or this half is cold by itself. */
  readonly floorK: number;
  /** Above comfort alone, nothing asked and nothing learnt: what a log keeps. */
  readonly reckonedK: number;
}

export type HalfMargins = Readonly<Record<WarmthHalf, HalfMargin>>;

/**
 * By how much the weaker half of a sleeper's warmth is better than what is asked for tonight: what the store deals by.
 *
 *   min over halves of  min(low − comfort(R) − asked, low − (33 °C − 60 W/m² · R_half) − asked, low − limit(R) − 0.78 band) − δ
 *
 * R is that of both halves with the other at least as good as it must be, so that a warm half helps a thin one, and a
 * thin one is never held against the other. δ and band are what the log has taught, else 0 and the balance's own band. So
 * what is enough is comfortable with something over, and nine times in ten the sleeper does not wake of cold.
 *
 * Shapes   one sleeper and what they lie between in, scalar out
 * Units    [K]; from 0 it is enough
 * Holds    people of 16 and over by their own balance; younger ones as the standard woman with more asked of both
 *          halves, as no balance is valid for them: it only orders, and no degree of it is ever shown
 * Error    that of `sleeperBalance`, 4 K; differences between two items are better known
 * Source   sleeper-balance (handbook/heat.md)
 */
export function warmthMargin(
  sleeper: Sleeper,
  night: Night,
  under?: UnderInsulation,
  over?: OverInsulation,
  tarp?: Tarp,
  hammock?: Pick<Hammock, "layers">,
): number {
  const margins = halfMargins(sleeper, tonightAir(night), warmKit(sleeper, { under, over, tarp, hammock }));
  return Math.min(margins.under.marginK, margins.over.marginK);
}

/** The same for each half by itself, in any air. */
export function halfMargins(sleeper: Sleeper, air: HammockAir, kit: WarmKit): HalfMargins {
  return marginsOf(sleeper, air, kitHalves(kit, air));
}

/** The same of two halves that are known. */
export function marginsOf(sleeper: Sleeper, air: HammockAir, input: HalvesInput): HalfMargins {
  const { topM2KPerW, bottomM2KPerW } = halves(input);
  const person = balancedAs(sleeper);
  const comfort = sleepState("comfort", person);
  const limit = isYoung(sleeper) ? undefined : sleepState("limit", person);
  const otherAirK = balancedK(air.airK) - askedK(sleeper);
  const neededM2KPerW = balanceAt(comfort, otherAirK, air.humidityRatio).totalM2KPerW;
  const half = (key: WarmthHalf, own: number, other: number, share: number): HalfMargin => {
    const totalM2KPerW = 1 / (share / own + (1 - share) / Math.max(other, neededM2KPerW));
    const of = (state: SleepState) => coldestAir(state, totalM2KPerW, air.humidityRatio).x;
    const comfortK = of(comfort);
    const coldK = air.airK - (SKIN_K - COLD_BACK_W_M2 * own);
    const reckonedK = Math.min(air.airK - comfortK, coldK);
    if (limit === undefined)
      return { marginK: reckonedK - youthAskedK(sleeper, key), floorK: reckonedK, reckonedK };
    const { offsetK, bandK } = learntHalf(sleeper, key);
    const limitK = air.airK - of(limit);
    const widenedK = bandOf(comfortK) - LEAST_BAND_K + bandK;
    return {
      marginK: Math.min(reckonedK - ASKED_K, limitK - BAND_SHARE * widenedK) - offsetK,
      floorK: Math.min(limitK, coldK) - offsetK,
      reckonedK,
    };
  };
  return {
    under: half("under", bottomM2KPerW, topM2KPerW, 1 - input.topShareRatio),
    over: half("over", topM2KPerW, bottomM2KPerW, input.topShareRatio),
  };
}

/** What the log says of one half of a grown sleeper; without a log the balance as it is, with its own band. */
export function learntHalf({ learnt }: Sleeper, half: WarmthHalf): Omit<LearntHalf, "nights"> {
  return learnt?.by === "nights" ? learnt[half] : { offsetK: 0, bandK: LEAST_BAND_K };
}

/** Of a child more is asked of a half that was cool once. */
function youthAskedK(sleeper: Sleeper, half: WarmthHalf): number {
  const { learnt } = sleeper;
  const isMore = learnt?.by === "youth-rule" && learnt[half] === "warmer-than-the-rule";
  return askedK(sleeper) + (isMore ? YOUTH_WARMER_K : 0);
}

const COLD_BACK_W_M2 = DEFAULTS["warmth.cold_back_w_m2"].value;

interface Items {
  readonly under: UnderInsulation | undefined;
  readonly over: OverInsulation | undefined;
  readonly tarp: Tarp | undefined;
  readonly hammock: Pick<Hammock, "layers"> | undefined;
}

/** What a sleeper lies between, their own hat with it; without those that are not there. */
export function warmKit({ hat }: Sleeper, { under, over, tarp, hammock }: Items): WarmKit {
  return {
    ...(under === undefined ? {} : { under }),
    ...(over === undefined ? {} : { over }),
    ...(tarp === undefined ? {} : { tarp }),
    ...(hammock === undefined ? {} : { hammock }),
    ...(hat === undefined ? {} : { hat }),
  };
}

/** No balance is valid for this sleeper; somebody whose age nobody told is taken as grown. */
export function isYoung({ ageYears }: Sleeper): boolean {
  return ageYears !== undefined && ageYears < GROWN_YEARS;
}

/** How much colder than the low each half must be good for [K]. */
export function askedK(sleeper: Sleeper): number {
  return isYoung(sleeper) ? YOUTH_ASKED_K : ASKED_K;
}

const ASKED_K = DEFAULTS["warmth.margin_k"].value;
const BAND_SHARE = DEFAULTS["warmth.band_share"].value;
const YOUTH_ASKED_K = DEFAULTS["warmth.youth_margin_k"].value;
const YOUTH_WARMER_K = DEFAULTS["warmth.youth_warmer_k"].value;

/** Whom a sleeper is reckoned as: themselves where grown, else the standard woman. What nobody told is taken cold. */
export function balancedAs(sleeper: Sleeper): SleepingPerson {
  if (isYoung(sleeper)) return { ...STANDARD_WOMAN, sleeps: sleeper.sleeps };
  const { massKg, statureM, ageYears = DEFAULTS["sleepers[].age"].value, sex = "f", sleeps } = sleeper;
  return {
    massKg: Math.min(Math.max(massKg, 20), 300),
    statureM: Math.min(Math.max(statureM, 1), 2.5),
    ageYears: Math.min(ageYears, 110),
    sex,
    sleeps,
  };
}
