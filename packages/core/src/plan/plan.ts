import type { Finding, Verdict } from "../outcome/finding.ts";
import type { Hang, HangInput, OkRange } from "../statics/hang-types.ts";
import type { HangAlternatives } from "./alternative-types.ts";
import type { DefaultUsed } from "./camp.ts";
import type { CautionKey } from "./cautions.ts";
import type { Bottleneck, Counterfactual } from "./explanation.ts";
import type { DealtAnew } from "./dealt-anew-types.ts";
import type { NightClock, TimelineEntry } from "./night-types.ts";
import type { BerthTarp } from "./tarp-types.ts";
import type { BerthWarmth } from "./warmth-types.ts";
import type { Buddy, SpareBerth } from "./spare-types.ts";
import type { StoreFit } from "./fit-types.ts";
import type { CutList, Dealing, PackingList } from "./store-types.ts";

/** Parts of the work a plan may have done. A part that was not computed stands in `notChecked`. */
export type PlanPart =
  "site" | "hang" | "strength" | "trunk" | "tarp" | "rain" | "warmth" | "night" | "cuts" | "packing";

export interface Plan {
  readonly campName: string;
  readonly engine: string;
  readonly verdict: Verdict;
  readonly treesLookedAt: TreesLookedAt;
  readonly checked: readonly PlanPart[];
  readonly notChecked: readonly PlanPart[];
  readonly asked: number;
  readonly placed: number;
  /** No layout of the trees as surveyed places more, however the kit is dealt. */
  readonly bound: number;
  /** Weighted objective of the chosen berths [m]; its proven lower bound; (cost − bound)/max(cost, 1e-4). */
  readonly cost: number;
  readonly lowerBound: number;
  readonly gap: number;
  readonly method: string;
  /** What the cost is made of: every term that has a weight, or that something was amiss in. */
  readonly costTerms?: readonly PlanCostTerm[];
  /** How many would have a berth were positions off; absent where they were taped as well as usual. */
  readonly robust?: RobustCount;
  readonly berths: readonly PlannedBerth[];
  /** Berths that are kept free, in the order of the map; absent where the house asks for none. */
  readonly spares?: readonly SpareBerth[];
  readonly unplaced: readonly Unplaced[];
  /** What one change alone would do, where not everybody has a berth; absent where nobody asked. */
  readonly counterfactuals?: readonly Counterfactual[];
  /** What limits how many have a berth, where it is the ground and could be shown. */
  readonly bottleneck?: Bottleneck;
  readonly supply: Supply;
  /** Half width that each berth on the map keeps, where the widest tarp dealt takes more than the house asks [m]. */
  readonly keptHalfWidthM?: number;
  /** How the store was dealt; absent where the camp lists no kit that could be. */
  readonly dealing?: Dealing;
  /** Who has other kit than at first, so that more have a berth; absent where the first dealing was kept. */
  readonly dealtAnew?: DealtAnew;
  /** Lengths to cut for the berths, and from which spools. */
  readonly cuts?: CutList;
  /** What to pack, and who carries it. */
  readonly packing?: PackingList;
  /** People fitted out from the store; only of a camp without ground. */
  readonly fit?: StoreFit;
  /** Pins that were not kept; absent where none is. */
  readonly pinsRefused?: readonly RefusedPin[];
  /** The night by the clock; absent where the camp says nothing of the night. */
  readonly nightClock?: NightClock;
  /** What happens when, in order of time; absent where nobody knows the date or the place. */
  readonly timeline?: readonly TimelineEntry[];
  readonly defaultsUsed: readonly DefaultUsed[];
  /** What is about the camp as a whole; each berth carries its own. */
  readonly findings: readonly Finding[];
  /** What stands on every plan whatever was computed. */
  readonly cautions: readonly CautionKey[];
}

/** One term of the cost: weight × measure, added over the berths [m]. */
export interface PlanCostTerm {
  readonly name: "span" | "wind" | "slope" | "walk" | "spread" | "far" | "wish";
  readonly weight: number;
  readonly measure: number;
  readonly cost: number;
}

/** What an error of the survey does to the number who have a berth. */
export interface RobustCount {
  /** By how much any position on the map may be off, east and north each [m]. */
  readonly errorM: number;
  /** At berths that serve wherever all really stands within that error: at least so many. */
  readonly placed: number;
  /** Nowhere that all may stand within that error could more have a berth. */
  readonly most: number;
  /** Berths of this plan keep room for the error; so many would have one without; absent: no room is kept. */
  readonly asSurveyed?: number;
}

/** Trees that carry berths: how many somebody looked at, who and when. */
export interface TreesLookedAt {
  readonly done: number;
  readonly of: number;
  readonly by: readonly string[];
  readonly on?: string;
}

export interface PlannedBerth {
  /** "1", "2", … in the order of the map, west to east within rows from the north; stable for one plan. */
  readonly id: string;
  readonly sleeper: string;
  /** Who lies nearest of those whom the sleeper wishes near, else of all; absent where nobody knows how near they lie. */
  readonly buddy?: Buddy;
  readonly headTree: string;
  readonly footTree: string;
  readonly spanM: number;
  /** Head to foot, clockwise from north [rad]; absent where nobody knows. */
  readonly bearingRad?: number;
  /** Id of the stated pair this berth uses, where there is no map. */
  readonly pair?: string;
  /** Whether the heights of both trees' ground are known; if not, the foot strap is told from level. */
  readonly groundKnown: boolean;
  /** True where the trees' positions are stepped or from GPS: step the span out before use. */
  readonly stepItOut: boolean;
  readonly hang: Hang;
  /** What the hang was asked for, so that it can be put right on the spot without the camp. */
  readonly request?: HangInput;
  /** Spans at which this kit and sleeper could hang between two such trees, and what ends them [m]. */
  readonly spanWindow?: OkRange;
  readonly kit: BerthKit;
  /** How the tarp is pitched and what it keeps off; absent where the berth has none or it was not computed. */
  readonly tarp?: BerthTarp;
  /** Whether what is under and over the sleeper is enough tonight; absent where the night is not known. */
  readonly warmth?: BerthWarmth;
  /** Id of the sleeper who can reach the marks; the sleeper's own id unless a taller one must help. */
  readonly setBy: string;
  /** What else could be done where the straps' lengths made the angle give way; absent where they did not. */
  readonly alternatives?: HangAlternatives;
  readonly verdict: Verdict;
  readonly findings: readonly Finding[];
}

export interface BerthKit {
  readonly hammock?: string;
  readonly suspension?: string;
  readonly tarp?: string;
  readonly under?: string;
  readonly over?: string;
}

export interface Unplaced {
  readonly sleeper: string;
  readonly because: readonly Finding[];
  /** Pairs that nearly serve, the nearest first and no more than a person reads; absent where nobody asked. */
  readonly pairs?: readonly FailedPair[];
  /** Pairs that fail too and are not told one by one; absent where all are told. */
  readonly pairsLeft?: number;
  /** What else could be done at pairs where straps came out too long or too short; absent where none did. */
  readonly alternatives?: readonly HangAlternatives[];
}

/** A pair of trees that does not serve somebody, and why. */
export interface FailedPair {
  readonly trees: readonly [string, string];
  readonly spanM: number;
  readonly because: readonly Finding[];
  readonly alternatives?: HangAlternatives;
}

/** A pin that could not be kept, and why. */
export interface RefusedPin {
  readonly sleeper: string;
  readonly trees: readonly [string, string];
  readonly because: readonly Finding[];
  readonly alternatives?: HangAlternatives;
}

/** From stems to berths, and what was lost on the way. */
export interface Supply {
  readonly trees: number;
  readonly usable: number;
  /** Pairs of usable trees whose span lies in the house rules. */
  readonly pairs: number;
  readonly blockedBy: Readonly<Record<BlockedBy, number>>;
  /** Berths left for the search (each pair counted once). */
  readonly berths: number;
}

export type BlockedBy = "stem" | "dead-tree" | "overhead" | "obstacle" | "hang";
