import type { Finding } from "../outcome/finding.ts";

/** One hour of a forecast, open ground at the station's height above ground. */
export interface NightHour {
  /** Instant, ISO 8601 UTC: "2027-05-14T21:00Z". */
  readonly at: string;
  readonly airK: number;
  readonly windMS?: number;
  readonly gustMS?: number;
  readonly rainMmH?: number;
}

/** How likely thunder is, as forecast. */
export type ThunderForecast = "none" | "possible" | "likely";

/** The leader's own thunder rule. */
export interface ThunderRule {
  /** Leave the trees where thunder follows lightning within this [s]. */
  readonly flashToBangS: number;
  /** Wait so long after the last thunder [s]. */
  readonly waitS: number;
}

/** What surrounds the camp, for the wind at the berths' height. */
export type Canopy = "wood" | "open";

/** How long it takes to set up, and who can. */
export interface SetUp {
  /** One berth by one helper who knows how [s]. */
  readonly perBerthS: number;
  /** How many can set up a berth by themselves. */
  readonly helpers: number;
  /** Looking at all trees of the camp before anybody ties [s]. */
  readonly treeCheckS: number;
  readonly marginS: number;
}

/**
 * "night": the sun sets and it gets dark. "no-dusk": it sets and does not get dark (civil twilight all night).
 * "no-night": it does not set. "no-day": it does not rise.
 */
export type SunKind = "night" | "no-dusk" | "no-night" | "no-day";

/** Sun of the civil date of the camp and of the morning after; ISO 8601 UTC, null where there is none. */
export interface SunTimes {
  readonly kind: SunKind;
  /** Of the camp's date. */
  readonly sunset: string | null;
  readonly dusk: string | null;
  /** Of the morning after. */
  readonly dawn: string | null;
  readonly sunrise: string | null;
}

export type CondensationRisk = "unlikely" | "likely" | "certain";

/** One hour of the night as it comes to be at the berths. */
export interface ClockHour {
  readonly at: string;
  /** At the camp's height and in its hollow. */
  readonly airK: number;
  readonly dewPointK: number;
  readonly humidityRatio: number;
  /** Under the tarp: the cloth cools below the air where the sky is clear. */
  readonly condensation: CondensationRisk;
  /** Estimated cloth temperature of a tarp under this sky. */
  readonly clothK: number;
  /** Mean wind at the hammocks' height, under the canopy there is [m/s]. */
  readonly windMS: number;
  /** Gust in the open, which the crowns feel [m/s]. */
  readonly gustMS: number;
  readonly rainMmH: number;
  /** What a surface facing up radiates to without tarp or crowns. */
  readonly skyK: number;
}

/** Latest arrival and what it is made of. */
export interface ArriveBy {
  /** ISO 8601 UTC. */
  readonly at: string;
  /** Dusk, or sunset where it does not get dark. */
  readonly darkAt: string;
  readonly perBerthS: number;
  readonly berths: number;
  readonly helpers: number;
  readonly treeCheckS: number;
  readonly marginS: number;
}

export type SetUpOrder = "fair" | "foul";

/** Steps of the set-up, in the order of `NightClock.steps`. Words are made in `edge`. */
export type SetUpStep =
  | "look-up"
  | "look-at-trunk"
  | "look-down"
  | "pace-span"
  | "tarp-ridge"
  | "windward-side"
  | "straps"
  | "hammock"
  | "sit-test"
  | "adjust"
  | "insulation"
  | "tarp-staged"
  | "lee-side"
  | "drip-lines"
  | "storage-line";

/** The night of the camp by the clock. */
export interface NightClock {
  /** Absent where place or date are not known. */
  readonly sun?: SunTimes;
  /** From before dusk to after sunrise; six in the evening to nine next morning, local mean solar time, without a sun. */
  readonly hours: readonly ClockHour[];
  /** Lowest air at the camp, after height difference and hollow [K]; what was added to the forecast low for each. */
  readonly lowK: number;
  readonly lapseK: number;
  readonly coldPoolK: number;
  readonly arriveBy?: ArriveBy;
  readonly order: SetUpOrder;
  readonly steps: readonly SetUpStep[];
  /** Force on the Beaufort scale of the forecast wind and gust in the open. */
  readonly windForce: number;
  readonly gustForce: number;
  readonly findings: readonly Finding[];
}

/** What happens when. Words are made in `edge`. */
export type TimelineKey =
  | "arrive-by"
  | "trees-looked-at"
  | "berths-set-up"
  | "sunset"
  | "dusk-check"
  | "dusk"
  | "rain-begins"
  | "rain-ends"
  | "gust-most"
  | "condensation"
  | "coldest"
  | "dawn"
  | "sunrise";

export interface TimelineEntry {
  /** ISO 8601 UTC. */
  readonly at: string;
  readonly what: TimelineKey;
}
