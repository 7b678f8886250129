import type { Finding } from "../outcome/finding.ts";
import type { DealtKind } from "./store-types.ts";

/** People fitted out from the store where there is no ground: the third way in. */
export interface StoreFit {
  /** Low of the trip that warmth was judged by; absent: no night was given [K]. */
  readonly lowK?: number;
  /** Coldest air at the hammocks, which every margin is of: cold pool and height are in it [K]. */
  readonly airK?: number;
  /** Spans and girths that a suspension should serve [m]. */
  readonly spansM: readonly [number, number];
  readonly girthsM: readonly [number, number];
  readonly people: readonly PersonFit[];
}

export interface PersonFit {
  readonly sleeper: string;
  /** In the order of choosing: hammock, suspension, tarp, under, over. */
  readonly parts: readonly FitPart[];
  /** Small things that go with it, always. */
  readonly small: readonly { readonly what: SmallThing; readonly count: number; readonly item?: string }[];
  readonly slip: IssueSlip;
}

export type SmallThing = "drip-line" | "peg" | "light" | "guy-line" | "ridgeline" | "hitch-loop";

export interface FitPart {
  readonly kind: DealtKind;
  /** The better first, at most two. Each fits the first choices of the parts before it. */
  readonly choices: readonly FitChoice[];
  /** Items that would do more than is needed, and in what. */
  readonly overkill: readonly Overkill[];
  /** Why nothing of the store serves; empty where something does. */
  readonly lacking: readonly Finding[];
}

export interface FitChoice {
  readonly item: string;
  readonly number?: string;
  /** Why this one: each comparison that spoke for it or against it. */
  readonly reasons: readonly Finding[];
  /** Warmth of this layer against the low, where both are known [K]. */
  readonly marginK?: number;
}

/** More than is needed: in load, cloth, length, warmth or cover; by how much more. */
export interface Overkill {
  readonly item: string;
  readonly in: "load" | "cloth" | "reach" | "warmth" | "cover";
  readonly needed: number;
  readonly has: number;
  readonly unit: "kg" | "m" | "K";
}

/** What is handed over and comes back. "Hang it once at home" stands on it. */
export interface IssueSlip {
  readonly sleeper: string;
  readonly items: readonly SlipLine[];
  /** Civil date of issue and of return; absent where the camp names no day. */
  readonly outOn?: string;
  readonly backOn?: string;
}

export interface SlipLine {
  readonly kind: DealtKind | SmallThing;
  readonly count: number;
  readonly item?: string;
  readonly number?: string;
  /** Civil date of the last inspection of that piece or line, and by whom. */
  readonly lastInspected?: { readonly by: string; readonly on: string };
}
