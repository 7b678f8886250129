import type { Finding, Verdict } from "../../outcome/finding.ts";
import type { Radians } from "../../quantity/angle.ts";
import type { BandRange, HangInput } from "../../statics/hang-types.ts";

/** What was found where it hangs: any of it, by one person alone or with a helper. */
export interface AsHung {
  readonly spanM?: number;
  readonly head?: AsHungStrap;
  readonly foot?: AsHungStrap;
  /** How the ridgeline feels between finger and thumb, lying. Weak evidence. */
  readonly ridgeline?: "slack" | "bends" | "tight";
  readonly seatHeightM?: number;
  readonly footRaiseM?: number;
  /** Which way the sleeper slides. Weak evidence. */
  readonly slides?: "to-foot" | "to-head" | "no";
  /** Knees forced straight: the hang is too droopy. Weak evidence. */
  readonly knees?: "strained" | "easy";
  /** Shoulders squeezed: the straps are too flat. Weak evidence. */
  readonly shoulders?: "squeezed" | "easy";
  /** How one comes to sit, where nobody measured the seat. Weak evidence. */
  readonly sits?: "too-low" | "too-high" | "well";
}

export interface AsHungStrap {
  readonly strapHeightM?: number;
  readonly angle?: Radians;
}

export interface AdjustInput {
  /** The berth's hang as it was asked for. */
  readonly request: HangInput;
  readonly measured: AsHung;
  /** Instructions already followed since the plan, in order. */
  readonly followed?: readonly Followed[];
  /** Moves that will not go: the knot is jammed, a branch is in the way, the sling is at its end. Then the next best is told. */
  readonly cannot?: readonly Move[];
  /** What was found is taken as it is, although it does not fit together: it was measured again. */
  readonly trusted?: boolean;
}

/** An instruction that was followed, with what had been found before it: that still tells of how it hangs. */
export interface Followed extends Instruction {
  readonly measured?: AsHung;
}

/** A way to change one end. */
export type Move = Pick<Instruction, "end" | "action">;

/** One thing to change. `cm` is a whole number of centimetres, at least 1. */
export interface Instruction {
  readonly end: "head" | "foot";
  /** The adjuster is let out or taken in; the strap on the trunk is raised or lowered. */
  readonly action: "let-out" | "take-in" | "raise" | "lower";
  readonly cm: number;
}

/** How it most likely hangs. Heights from each tree's own ground. */
export interface HangState {
  readonly spanM: number;
  readonly head: StrapState;
  readonly foot: StrapState;
  readonly seatHeightM: number;
  readonly lowPointM: number;
  readonly footRaiseM: number;
}

export interface StrapState {
  readonly strapHeightM: number;
  /** Bark to hammock end, loaded [m]. */
  readonly strapLengthM: number;
  readonly angle: Radians;
  readonly pullN: number;
}

export type OffQuantity =
  | "spanM"
  | "head.strapHeightM"
  | "foot.strapHeightM"
  | "head.strapLengthM"
  | "foot.strapLengthM"
  | "seatHeightM"
  | "footRaiseM";

/** What is other than planned by more than it matters. */
export interface AsHungOff {
  readonly quantity: OffQuantity;
  readonly planned: number;
  readonly found: number;
}

/**
 * What to do: follow the instruction, leave it as it is, take it down and hang it anew as planned, measure again what
 * does not fit together, plan again for trees that stand far from where the plan has them, or measure the angles of the
 * straps before anything more is moved.
 */
export type NextStep =
  "change" | "leave-it" | "hang-anew" | "measure-again" | "plan-again" | "measure-angles";

/** What is told with how unsure it is. */
export type UnsureQuantity = "head.angle" | "foot.angle" | "seatHeightM" | "footRaiseM";

/** What is likely within its limits and may well not be: to be measured next. */
export type Doubt = UnsureQuantity;

export interface Adjustment {
  readonly state: HangState;
  /** How unsure that is: the central 90 % for what was found, and what may be off unfound. */
  readonly band: Readonly<Record<UnsureQuantity, BandRange>>;
  readonly doubts: readonly Doubt[];
  readonly off: readonly AsHungOff[];
  readonly next: NextStep;
  /** Absent where nothing needs changing, or where no one change makes it better. */
  readonly instruction?: Instruction;
  /** How it should hang after the instruction; as it hangs now where there is none. */
  readonly predicted: HangState;
  /** Of how it hangs now, by the limits of the hang alone. */
  readonly verdict: Verdict;
  readonly findings: readonly Finding[];
  /** √ of the sum of squares left over, in standard deviations: far above 3, something was misread. */
  readonly misfit: number;
  readonly iterations: number;
}
