import type { LearntWarmth } from "./log-types.ts";

/** What of a thing to lie on decides how warm it keeps. What nobody states stands in the table of defaults. */
export interface UnderWarmth {
  /** Resistance of the layer alone, flat and lofted, without air about it [m²K/W]. */
  readonly insulationM2KPerW?: number;
  /** The lowest temperature its maker gives it [K]; used where no resistance is known. */
  readonly limitK?: number;
  /** Share of the back, shoulders to calves, that it covers. */
  readonly coveredRatio?: number;
  readonly placement?: UnderPlacement;
  /** Share of what it covers where it hangs off the cloth and outside air moves between: the cold stripe. 0 is snug. */
  readonly gapRatio?: number;
  /** Air that its outer cloth lets through at 100 Pa, per area [m/s]: 0.001 to 0.008 windproof, 0.05 usual, 0.1 open. */
  readonly permeabilityMS?: number;
  /** What is left of its loft, after nights of damp or long storing; 1 as new. */
  readonly loftLeftRatio?: number;
}

/** Where an under layer lies: on the cloth below the back, between two layers of cloth, or hung below all cloth. */
export type UnderPlacement = "on-cloth" | "between-layers" | "hung-below";

/** What of a bag or quilt decides how warm it keeps. */
export interface OverWarmth {
  /** Resistance of the upper side alone, without air about it [m²K/W]. */
  readonly insulationM2KPerW?: number;
  /** Comfort and limit on its label [K]. */
  readonly comfortK?: number;
  readonly limitK?: number;
  /** Thickness of the upper side, shaken out [m], and what it is filled with: used where nothing else is known. */
  readonly loftM?: number;
  readonly fill?: Fill;
  readonly permeabilityMS?: number;
  readonly loftLeftRatio?: number;
}

export type Fill = "down" | "polyester" | "foam";

/** The two halves of a sleeper's warmth: what is under them and what is over them. */
export type WarmthHalf = "under" | "over";

/** Told of each half by itself; the weaker half rules. */
export type Enough = "enough" | "borderline" | "not-enough";

/**
 * How warm one berth is tonight. A grown person's is computed as a balance of heat; under 16 no balance is valid, so
 * a rule about the kit stands in its place and nothing in it is a temperature.
 */
export type BerthWarmth = BalanceWarmth | YouthWarmth;

interface WarmthCommon {
  readonly under: HalfWarmth;
  readonly over: HalfWarmth;
  /** The half that rules. */
  readonly weaker: WarmthHalf;
  /** The one change that helps most; absent where both halves are enough or none helps. */
  readonly helps?: WarmthHelp;
  /** Where the answer is not valid, and what was taken for granted. */
  readonly notes: readonly WarmthNote[];
}

export interface HalfWarmth {
  readonly enough: Enough;
  /** Id of the kit line that makes this half; absent: nothing. */
  readonly item?: string;
  /** Tonight's coldest air above this half's comfort, nothing learnt in it: what a log keeps [K]. Never under 16. */
  readonly marginK?: number;
}

export interface BalanceWarmth extends WarmthCommon {
  readonly by: "balance";
  /** Coldest air in which this sleeper is comfortable, or just sleeps through, in this kit and wind [K]. */
  readonly comfortK: number;
  readonly limitK: number;
  /** How far either may be off, both ways [K]; never less than 4, or less than 2.6 with a log of nights. */
  readonly bandK: number;
  /** What the log has taught of each half; in comfort, limit and verdicts already. */
  readonly learnt?: Extract<LearntWarmth, { readonly by: "nights" }>;
  /** Heat that goes out above and below in the coldest hour, per area of that half [W/m²]. */
  readonly topWM2: number;
  readonly bottomWM2: number;
  /** Skin to air, both halves together, air about them included [m²K/W]. */
  readonly totalM2KPerW: number;
  /** From evening to morning; at least one. */
  readonly hours: readonly WarmthHour[];
}

/** One hour of the night as this sleeper has it. */
export interface WarmthHour {
  /** As the hours of the night's clock, ISO 8601 UTC; "23:00" where no date is known. */
  readonly at: string;
  readonly airK: number;
  /** Wind at the hammock [m/s]. */
  readonly windMS: number;
  readonly under: HalfHour;
  readonly over: HalfHour;
  /** True of one hour alone, the coldest for this sleeper. */
  readonly coldest: boolean;
}

export interface HalfHour {
  /** Resistance, skin to air, that this half must have for comfort in this hour [m²K/W]. */
  readonly needM2KPerW: number;
  /** Resistance that it has in this hour's wind [m²K/W]. */
  readonly haveM2KPerW: number;
  /** Heat that goes out through it, per area [W/m²]. */
  readonly lossWM2: number;
}

/** Under 16: both halves are to be rated well below the low, a spare is named, and a grown person looks in by night. */
export interface YouthWarmth extends WarmthCommon {
  readonly by: "youth-rule";
  /** Id of the kit line kept as this sleeper's spare under layer; absent where none is left. */
  readonly spare?: string;
  /** Id of the grown person who looks in; absent where the camp has none. */
  readonly checkedBy?: string;
  /** When: the beginning of the coldest stretch, written as the hours are. */
  readonly checkAt: string;
}

/** One thing to change, and what it gains. Under 16 the gain is left out. */
export interface WarmthHelp {
  readonly change: WarmthChange;
  readonly half: WarmthHalf;
  /** How much colder it may then be [K]. */
  readonly gainK?: number;
}

export type WarmthChange =
  | "add-mat"
  | "add-underblanket"
  | "close-gap"
  | "cover-more"
  | "wind-side-down"
  | "add-quilt"
  | "warmer-bag"
  | "wear-hat"
  | "dry-it";

export type WarmthNote =
  // where no balance is valid
  | "not-when-ill"
  | "not-when-wet"
  | "not-after-alcohol"
  | "not-when-exhausted"
  | "not-for-children"
  // what was taken for granted
  | "age-not-given"
  | "person-assumed"
  | "under-not-known"
  | "over-not-known"
  | "hat-assumed"
  | "colder-than-known"
  | "hours-from-low"
  // what nights before have taught is in it
  | "from-the-log";
