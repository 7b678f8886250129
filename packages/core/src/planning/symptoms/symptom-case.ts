import type { HangDeviation } from "../../statics/hang-band.ts";
import type { Adjustment, AsHung } from "../adjust/adjust-types.ts";
import type { HungModel } from "../adjust/hung-model.ts";
import type { AdviceKey, SymptomFigure } from "./symptom-types.ts";

/** What a symptom is looked at with. */
export interface SymptomCase {
  readonly model: HungModel;
  readonly measured: AsHung;
  readonly adjustment: Adjustment;
  /** How it most likely hangs, from the plan. */
  readonly off: HangDeviation;
}

export interface SymptomFound {
  readonly figures: readonly SymptomFigure[];
  readonly advice: readonly AdviceKey[];
}

/** How one symptom is looked into. */
export interface SymptomRule {
  /** What the symptom says of the hang, where nobody measured it. */
  readonly tells: AsHung;
  /** What has moved by itself when the symptom shows. */
  readonly moved?: (model: HungModel) => Partial<HangDeviation>;
  readonly look: (symptom: SymptomCase) => SymptomFound;
}
