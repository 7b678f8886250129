import type { Finding } from "../outcome/finding.ts";

/** How worn a line is, as whoever keeps the store says it. */
export type WearState = "new" | "good" | "worn";

/**
 * One look at a line, or at one numbered piece of it.
 * A piece quarantined or retired is never dealt; a pass brings a quarantined one back; retired is for good.
 */
export interface Inspection {
  readonly by: string;
  /** Civil date, "2027-05-14". */
  readonly on: string;
  readonly finding: string;
  readonly action: InspectionAction;
  /** Number of the one piece that is meant; absent: the whole line. */
  readonly number?: string;
}

export type InspectionAction = "pass" | "quarantine" | "retire";

/** What lines are cut from. */
export type CutMaterial =
  /** Tree straps and tied webbing. */
  | "webbing"
  /** Low-stretch cord: ridgelines of hammocks and of tarps. */
  | "ridge-cord"
  | "guy-cord"
  /** Loops for friction hitches, drip lines. */
  | "thin-cord";

/** What a length is cut for. */
export type CutPurpose = "strap" | "ridgeline" | "tarp-ridge" | "guy" | "hitch-loop" | "drip-line";

/** Lengths alike that are wanted for a plan. */
export interface CutPiece {
  readonly material: CutMaterial;
  readonly purpose: CutPurpose;
  /** Cut length, knots and tails within it, in whole centimetres [m]. */
  readonly lengthM: number;
  readonly count: number;
  /** Of `lengthM`: what knots, wraps and tails take up [m]. */
  readonly allowanceM: number;
  /** Ids of the berths that the pieces are for, one an entry. */
  readonly berths: readonly string[];
  /** Of webbing [m]. */
  readonly widthM?: number;
}

/** One way to cut one spool, so many times. */
export interface CutPattern {
  /** Line of the store; absent for spools to buy. */
  readonly item?: string;
  readonly stockM: number;
  readonly times: number;
  readonly cuts: readonly { readonly lengthM: number; readonly count: number }[];
  /** What is left of each spool [m]. */
  readonly restM: number;
}

/** All cuts from one material (of webbing: of one width). */
export interface MaterialCuts {
  readonly material: CutMaterial;
  readonly widthM?: number;
  readonly pieces: readonly CutPiece[];
  readonly patterns: readonly CutPattern[];
  /** Spools to buy, over and above what is on hand. */
  readonly toBuy: readonly { readonly lengthM: number; readonly count: number }[];
  /** Length of all spools begun, and what all pieces add up to [m]. */
  readonly usedM: number;
  readonly piecesM: number;
  /** Length to buy, and the proven least of it [m]; the proven fewest spools begun where no more than that is bought. */
  readonly boughtM: number;
  readonly leastBoughtM: number;
  readonly leastSpools: number;
  /** True where no other way buys less, or with that begins fewer spools, or with those less length. */
  readonly proven: boolean;
}

/** The cord cut list of a plan. */
export interface CutList {
  readonly materials: readonly MaterialCuts[];
}

export type Carrier = "own" | "berth" | "group" | "spare";

/** One line of the packing list; a packed and a returned box stands beside it on paper. */
export interface PackingLine {
  readonly carrier: Carrier;
  /** Line of the store; absent where it is the assumed item, or no item of the store. */
  readonly item?: string;
  readonly what: PackedThing;
  readonly count: number;
  /** Numbers of the pieces, where the store marks them. */
  readonly numbers?: readonly string[];
  /** Of all of the line; absent where nobody weighed it [kg]. */
  readonly massKg?: number;
}

/** What a packing line is, where the words are made from. */
export type PackedThing =
  | "hammock"
  | "suspension"
  | "tarp"
  | "under"
  | "over"
  | "strap-webbing"
  | "ridgeline"
  | "tarp-ridgeline"
  | "guy-line"
  | "hitch-loop"
  | "drip-line"
  | "peg"
  | "light"
  | "connector"
  | "cord"
  | "other";

/** What one sleeper carries. */
export interface SleeperPacking {
  readonly sleeper: string;
  readonly berth?: string;
  /** "own" and "berth" lines. */
  readonly lines: readonly PackingLine[];
  /** Of the lines that were weighed [kg]. */
  readonly massKg: number;
  /** Lines whose mass nobody knows. */
  readonly unweighed: number;
  /** massKg / body mass. For the planner's own screen as one bar; never printed, shared or put on a card. */
  readonly ofBodyRatio: number;
}

/** What a group carries between its members. */
export interface GroupPacking {
  /** Absent for people of no group. */
  readonly group?: string;
  /** "group" and "spare" lines. */
  readonly lines: readonly PackingLine[];
  readonly massKg: number;
  readonly unweighed: number;
}

export interface PackingList {
  readonly sleepers: readonly SleeperPacking[];
  readonly groups: readonly GroupPacking[];
  /** Carried for the whole camp: spares and what serves everybody. */
  readonly shared: readonly PackingLine[];
}

export type DealtKind = "hammock" | "suspension" | "tarp" | "under" | "over";

/** How the store was dealt. */
export interface Dealing {
  readonly dealt: readonly SleeperDeal[];
  readonly shortages: readonly KitShortage[];
  /** Spare under layers put by, one for every six sleepers: item and count. */
  readonly spareUnder: readonly { readonly item: string; readonly count: number }[];
  /** Spare under layers that ought to be put by, and are not there. */
  readonly spareUnderLacking: number;
  /** Places on the ground or under a roof to keep free, one for every six sleepers. */
  readonly groundPlaces: number;
  /** Least warmth margin over those dealt under and over; absent where it was not computed [K]. */
  readonly leastMarginK?: number;
  /** Mass of all that was dealt, where weighed [kg]. */
  readonly massKg: number;
  /** All of `provenOf`. */
  readonly proven: boolean;
  readonly provenOf: DealingProof;
}

/** What is proven of how warm layers were dealt, by the margin of each half. */
export interface DealingProof {
  /** No dealing leaves fewer people below what is asked, nor fewer under 16, then under 18, of as many. */
  readonly below: boolean;
  /** Of those, none has a larger least margin. */
  readonly leastMargin: boolean;
  /** Of those, none comes nearer for who is below, nor with as near carries less. */
  readonly order: boolean;
}

/** Who got what. */
export interface SleeperDeal {
  readonly sleeper: string;
  readonly items: readonly DealtItem[];
  /** Warmth of the weaker half against tonight's low; absent where it was not computed [K]. */
  readonly marginK?: number;
}

export interface DealtItem {
  readonly kind: DealtKind;
  readonly item: string;
  /** Which piece, where the store marks them. */
  readonly number?: string;
  readonly pinned: boolean;
}

/** Too few things of a kind that serve some people. */
export interface KitShortage {
  readonly kind: DealtKind;
  /** Who goes without. */
  readonly lacking: readonly string[];
  /** People who compete for too few items, more of them than `pieces`: the fewest found. */
  readonly competing: readonly string[];
  /** Whether no fewer people have too few items between them. */
  readonly isFewest: boolean;
  /** Lines that serve any of them, and how many pieces these have between them. */
  readonly items: readonly string[];
  readonly pieces: number;
  /** What to borrow or buy so that nobody of `lacking` goes without. */
  readonly borrow: readonly BorrowWish[];
  readonly because: readonly Finding[];
}

/** Something to borrow or buy: the least that serves. */
export interface BorrowWish {
  readonly kind: DealtKind;
  readonly count: number;
  readonly for: readonly string[];
  /** Of a hammock: a maker's greatest user weight of at least so much [kg]. For the planner's own screen. */
  readonly maxUserKg?: number;
  /** Of a hammock: cloth of at least so much; of a tarp: its ridge [m]. */
  readonly lengthM?: number;
  /** Of a strap: at least so wide [m]. */
  readonly strapWidthM?: number;
  /** Of insulation: comfort or limit at or below this air [K]; absent where it is for anybody under 16. */
  readonly airK?: number;
}
