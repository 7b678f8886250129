import type { Felt, LearntHalf } from "../heat/learnt-offset.ts";

/** What disturbed a night, beside cold. */
export type Trouble = "wet" | "slid" | "noise" | "light" | "insects" | "cramped" | "wind" | "other";

/** How a night was: what the log keeps, and what the next plan learns from. */
export interface LoggedNight {
  /** Name of the camp, and civil date of its night. */
  readonly camp: string;
  readonly date: string;
  /** Coldest air that the plan reckoned with, and what a thermometer at the hammocks said [K]. */
  readonly plannedLowK?: number;
  readonly measuredLowK?: number;
  readonly sleepers: readonly LoggedSleeper[];
  readonly note?: string;
}

export interface LoggedSleeper {
  /** Id of the sleeper, the same from camp to camp. */
  readonly sleeper: string;
  readonly under?: LoggedHalf;
  readonly over?: LoggedHalf;
  /** When cold woke the sleeper, local time such as "03:30". */
  readonly wokeAt?: string;
  readonly trouble?: readonly Trouble[];
  /** Not a night like others: it is kept, and nothing is learnt from it. */
  readonly leaveOut?: boolean;
  readonly note?: string;
}

export interface LoggedHalf {
  readonly felt: Felt;
  /** Tonight's air above this half's comfort as the plan reckoned it, nothing learnt in it [K]; never of anybody under 16. */
  readonly marginK?: number;
  /** Id of the kit line that it was. */
  readonly item?: string;
}

/**
 * What the log has taught about one sleeper. Of grown people by how many kelvins they sleep colder than reckoned; under 16
 * no degree at all, but whether a half is to be warmer than the rule asks.
 */
export type LearntWarmth =
  | { readonly by: "nights"; readonly under: LearntHalf; readonly over: LearntHalf }
  | { readonly by: "youth-rule"; readonly under: LearntRule; readonly over: LearntRule };

/** One word for a half of somebody under 16. */
export type LearntRule = "as-the-rule" | "warmer-than-the-rule";
