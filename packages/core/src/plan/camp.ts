import type { Obstacle, GroundXY } from "../site/obstacle.ts";
import type { Looked, Tree, TreeCondition } from "../site/tree.ts";
import type { KitItem } from "./kit.ts";
import type { LearntWarmth } from "./log-types.ts";
import type { HouseRules } from "./house-rules.ts";
import type { Canopy, NightHour, SetUp, ThunderForecast, ThunderRule } from "./night-types.ts";

/**
 * A camp as the engine sees it: SI units, every default filled in.
 * The saved form, its refusals and the filling in of defaults live in `edge/format`.
 */
export interface Camp {
  readonly name: string;
  /** Civil date of the night, "2027-05-14". */
  readonly date?: string;
  readonly place?: CampPlace;
  readonly ground?: Ground;
  readonly rules: HouseRules;
  readonly sleepers: readonly Sleeper[];
  readonly groups: readonly Group[];
  readonly kit: readonly KitItem[];
  /** Berths that are kept as they are; absent: none. */
  readonly pins?: readonly Pin[];
  readonly night?: Night;
  /** Time and hands for setting up; absent: as in the table of defaults. */
  readonly setUp?: Partial<SetUp>;
  readonly defaultsUsed: readonly DefaultUsed[];
}

export interface DefaultUsed {
  /** Key in the table of defaults; the field as the camp file spells it, with the ids it was used for. */
  readonly field: string;
  readonly value: number | string | boolean;
  readonly for: readonly string[];
}

export interface CampPlace {
  readonly latDeg: number;
  readonly lonDeg: number;
  readonly elevationM?: number;
  readonly timezone?: string;
}

export type PositionSource = "taped" | "stepped" | "gps";

export interface Ground {
  readonly trees: readonly Tree[];
  readonly pairs: readonly StatedPair[];
  readonly obstacles: readonly Obstacle[];
  /** Fall of the whole site where trees carry no elevation: rise per run, and the bearing that goes down [rad]. */
  readonly slope?: { readonly riseRatio: number; readonly downhillRad: number };
  readonly source: PositionSource;
  /** How far off a position is usually, east or north [m]: each axis by itself. */
  readonly positionErrorM: number;
  /** Look for places that serve though every position is off by so much; negative: that may serve somewhere [m]. */
  readonly offM?: number;
  /** The camp lies in a hollow or valley bottom, where cold air gathers; absent: nobody said so. */
  readonly hollow?: boolean;
  /** Trees all round, or open ground; absent: wood, which is what a map of stems is. */
  readonly canopy?: Canopy;
  /** The place on the globe that positions count from; absent: nobody knows it. */
  readonly origin?: { readonly latDeg: number; readonly lonDeg: number };
  readonly meetingPoint?: Spot;
  readonly muster?: Spot;
  readonly fallback?: Spot;
}

/** A named spot; `at` is absent where only words are known ("the barn, nine minutes"). */
export interface Spot {
  readonly at?: GroundXY;
  readonly note?: string;
}

/** Two trees known by tag and distance alone, without a map. */
export interface StatedPair {
  readonly id: string;
  readonly trees: readonly [string, string];
  /** Level distance centre to centre [m]; from `steps` × the stepper's calibrated step where stepped. */
  readonly spanM: number;
  readonly stepped: boolean;
  readonly bearingRad?: number;
  /** Ground at the second tree below the first [m]; absent: not known. */
  readonly fallM?: number;
  readonly dbhM: readonly [number, number];
  /** True where the trunks' diameters are the default and nobody measured them. */
  readonly dbhAssumed: boolean;
  readonly lookedAt?: Looked;
  /** What is known of the health of the two trees; absent: as the map says, else nobody has looked. */
  readonly conditions?: readonly [TreeCondition, TreeCondition];
  /** False where a rule or the leader keeps this pair out; absent: may be used. */
  readonly use?: boolean;
  /** Ids of pairs that cannot be used together with this one. */
  readonly tooNear: readonly string[];
}

export interface Sleeper {
  readonly id: string;
  readonly name: string;
  readonly massKg: number;
  readonly statureM: number;
  readonly ageYears?: number;
  readonly sex?: "f" | "m";
  /** The hand of the side the head lies on. */
  readonly hand: "left" | "right";
  /** Highest point this person can set a strap at [m]. */
  readonly reachM: number;
  /** One of this person's own steps [m]. */
  readonly stepM: number;
  readonly sleeps: "cold" | "usual" | "warm";
  /** Sleeps in a warm hat where no bag's hood is; absent: taken for granted, and said. */
  readonly hat?: boolean;
  /** What the log has taught about this sleeper; absent: nothing. */
  readonly learnt?: LearntWarmth;
  readonly group?: string;
  readonly leads: boolean;
  /** Never slept in a hammock: given an easy berth; absent: has. */
  readonly beginner?: boolean;
  readonly near: readonly string[];
  readonly apart: readonly string[];
  /** Item ids kept for this sleeper. */
  readonly kit: readonly string[];
}

/** A berth that somebody chose: this sleeper between these two trees, whatever else moves. */
export interface Pin {
  readonly sleeper: string;
  /** Ids or tags of two trees; or else the id of a stated pair. */
  readonly trees?: readonly [string, string];
  readonly pair?: string;
  /** Which of the two trees is the head; absent: as the ground says. */
  readonly head?: string;
}

export interface Group {
  readonly id: string;
  readonly withinM: number;
  readonly zone?: string;
}

export interface Night {
  readonly lowK: number;
  readonly highK?: number;
  /** Open ground at `windHeightM`. */
  readonly windMS: number;
  readonly gustMS: number;
  readonly windHeightM: number;
  /** Where the wind comes from, clockwise from north [rad]. */
  readonly windFromRad?: number;
  readonly rainMmH: number;
  readonly humidityRatio: number;
  readonly cloudRatio: number;
  readonly stationElevationM?: number;
  readonly stopGustMS?: number;
  /** The forecast hour by hour, in order of time; what an hour does not say is as for the whole night. */
  readonly hours?: readonly NightHour[];
  /** Absent: nobody has looked. */
  readonly thunder?: ThunderForecast;
  /** Absent: as in the table of defaults. */
  readonly thunderRule?: ThunderRule;
}
