/** What one change alone would do to how many people have a berth. */
export interface Counterfactual {
  readonly change: ChangeKey;
  /** The trees, the obstacle or the kinds of kit that it is about, by id. */
  readonly about: readonly string[];
  /** What is changed, from and to, entry by entry; empty where something is there or not. */
  readonly from: readonly number[];
  readonly to: readonly number[];
  readonly unit: "m" | "1";
  readonly placed: number;
  /** More than without the change. */
  readonly gained: number;
  /** Whether with this change no layout places more. */
  readonly proven: boolean;
  /** False where only somebody who answers for it may change it: then it is told as information, never as advice. */
  readonly advice: boolean;
}

export type ChangeKey =
  | "hammocks-per-tree"
  | "strip-width"
  | "span-window"
  | "kit-more"
  | "line-more"
  | "kind-more"
  | "reach"
  | "setback"
  | "spokes"
  | "species"
  | "trunk-least"
  | "doubtful-sound"
  | "dead-gone"
  | "limb-down";

/**
 * What limits how many have a berth: trees and tangles of pairs that between them touch every pair that would serve
 * somebody without a berth. `most` added over them is how many lie there now, so nobody else can.
 */
export interface Bottleneck {
  readonly knots: readonly Knot[];
  /** Every tree of a knot that has more pairs than it can carry, sorted. */
  readonly trees: readonly string[];
  /** People who have a berth in these knots. */
  readonly most: number;
}

/** Pairs of which only so many can be used at once. */
export interface Knot {
  /** The one tree that they share, else all their trees, sorted. */
  readonly trees: readonly string[];
  readonly pairs: readonly (readonly [string, string])[];
  /** Most of them that can be used at once. */
  readonly most: number;
  readonly why: "tree" | "strips" | "part";
}
