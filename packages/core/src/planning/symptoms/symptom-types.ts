import type { AsHung, Adjustment, Followed, Move } from "../adjust/adjust-types.ts";
import type { HangInput } from "../../statics/hang-types.ts";

/** What people tell of a night or of a sit. */
export const SYMPTOMS = [
  "slides-to-foot",
  "calf-ridge",
  "shoulder-squeeze",
  "bottoms-out",
  "strap-slips",
  "tips-on-entry",
] as const;

export type Symptom = (typeof SYMPTOMS)[number];

export interface SymptomInput {
  readonly request: HangInput;
  readonly symptom: Symptom;
  /** What was found besides; nothing is needed. */
  readonly measured?: AsHung;
  readonly followed?: readonly Followed[];
  /** Moves that will not go. */
  readonly cannot?: readonly Move[];
}

/** A figure that speaks of the symptom, and between what it should lie where that is known. */
export interface SymptomFigure {
  readonly figure: SymptomFigureKey;
  readonly value: number;
  readonly unit: "m" | "rad" | "1";
  readonly low?: number;
  readonly high?: number;
}

export type SymptomFigureKey =
  // the foot end
  | "foot-raise"
  | "foot-slope"
  // the lie
  | "cloth-over-stature"
  | "strap-angle"
  | "bend"
  | "bend-ridgeline-longer"
  | "bend-flatter"
  | "cloth-pull"
  | "cloth-pull-ridgeline-shorter"
  | "cloth-pull-steeper"
  // the night
  | "creep"
  | "settle"
  | "settle-ten-minutes"
  | "settle-overnight"
  | "drop-found"
  | "low-point-evening"
  | "low-point-morning"
  // the trunk
  | "down-over-inward"
  | "grip"
  | "grip-one-turn-more"
  | "turns-more"
  // the seat
  | "seat-height"
  | "knee-height"
  | "seat-over-knee";

/** What helps besides the one instruction, the most worth first. Words are made in `edge`. */
export type AdviceKey =
  | "lie-diagonally"
  | "longer-hammock"
  | "ridgeline-longer"
  | "ridgeline-shorter"
  | "straps-flatter"
  | "straps-steeper"
  | "re-set-after-ten-minutes"
  | "start-higher"
  | "look-at-knots-and-trees"
  | "turns-more"
  | "above-a-swelling"
  | "draw-tight-first"
  | "sit-in-the-middle"
  | "spread-the-cloth";

export interface SymptomAnswer {
  readonly symptom: Symptom;
  readonly figures: readonly SymptomFigure[];
  readonly advice: readonly AdviceKey[];
  /** The as-hung check with the symptom as weak evidence: its instruction comes first, where there is one. */
  readonly adjustment: Adjustment;
}
