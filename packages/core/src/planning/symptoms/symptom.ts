import { refuseAll, succeed, type Outcome } from "../../outcome/outcome.ts";
import { checked, roundsOf } from "../adjust/adjust.ts";
import { AS_PLANNED, hungModel, plus } from "../adjust/hung-model.ts";
import { measuredRefusals } from "../adjust/measured-refusals.ts";
import { BOTTOMS_OUT } from "./bottoms-out.ts";
import { CALF_RIDGE } from "./calf-ridge.ts";
import { SHOULDER_SQUEEZE } from "./shoulder-squeeze.ts";
import { SLIDES_TO_FOOT } from "./slides-to-foot.ts";
import { STRAP_SLIPS } from "./strap-slips.ts";
import type { SymptomRule } from "./symptom-case.ts";
import type { Symptom, SymptomAnswer, SymptomInput } from "./symptom-types.ts";
import { TIPS_ON_ENTRY } from "./tips-on-entry.ts";

/**
 * What people tell of a hang, answered by a computation: figures that speak of it, the one instruction where the hang
 * is likely off, and what helps besides. The symptom counts as weak evidence beside whatever was measured.
 *
 * Shapes   one request, one symptom → figures, advice, the as-hung check
 * Units    SI; instructions in whole centimetres
 * Holds    as `adjust`
 * Error    as `adjust`; each symptom's own file says what its figures rest on
 * Source   common-practice (handbook/planning.md); figures hang-chain, capstan
 */
export function symptom(input: SymptomInput): Outcome<SymptomAnswer> {
  const { request, measured = {}, followed = [] } = input;
  const failure = refuseAll(measuredRefusals(measured, followed));
  if (failure !== undefined) return failure;
  const built = hungModel(request);
  if (!built.ok) return built;
  const model = built.value;
  const rule = RULES[input.symptom];
  const from = plus(AS_PLANNED, rule.moved?.(model) ?? {});
  const rounds = roundsOf(model, { ...rule.tells, ...measured }, followed, from);
  const { adjustment, off } = checked(model, rounds, input);
  const found = rule.look({ model, measured, adjustment, off });
  return succeed({ symptom: input.symptom, ...found, adjustment });
}

const RULES: Readonly<Record<Symptom, SymptomRule>> = {
  "slides-to-foot": SLIDES_TO_FOOT,
  "calf-ridge": CALF_RIDGE,
  "shoulder-squeeze": SHOULDER_SQUEEZE,
  "bottoms-out": BOTTOMS_OUT,
  "strap-slips": STRAP_SLIPS,
  "tips-on-entry": TIPS_ON_ENTRY,
};
