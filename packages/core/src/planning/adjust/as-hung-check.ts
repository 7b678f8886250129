import { worstVerdict, type Verdict } from "../../outcome/finding.ts";
import { succeed, type Outcome } from "../../outcome/outcome.ts";
import type { HangInput } from "../../statics/hang-types.ts";
import { symptom } from "../symptoms/symptom.ts";
import type { Symptom, SymptomAnswer } from "../symptoms/symptom-types.ts";
import { adjust } from "./adjust.ts";
import type { AdjustInput, Adjustment } from "./adjust-types.ts";
import {
  standingFindings,
  type PlannedFinding,
  type PlannedPulls,
  type Standing,
} from "./standing-findings.ts";

/** A planned berth as the check needs it; one of a saved plan serves as well. */
export interface CheckedBerth<F extends PlannedFinding> {
  readonly request: HangInput;
  readonly hang: PlannedPulls;
  readonly findings: readonly F[];
}

/** What one person or two found on the spot. */
export interface FoundOnTheSpot extends Omit<AdjustInput, "request"> {
  readonly symptom?: Symptom;
}

export interface AsHungCheck<F extends PlannedFinding> {
  readonly adjustment: Adjustment;
  /** Where a symptom was told. */
  readonly symptom?: Omit<SymptomAnswer, "adjustment">;
  /** What the plan found of trees, surroundings and strength, as it is now. */
  readonly standing: readonly Standing<F>[];
  /** Of the berth as it hangs now: of the hang and of all that stands. */
  readonly verdict: Verdict;
  readonly treesLookedAt: { readonly done: number; readonly of: number };
}

/**
 * The whole check of one berth on the spot: how it hangs, one thing to change, what a symptom means, and the verdict of
 * the berth as it hangs now. A berth whose trees nobody looked at is never clear, however well it hangs; nor is one
 * whose straps, seat or foot end may well be past their limits.
 *
 * Shapes   one planned berth, any subset of measurements → one check
 * Units    SI
 * Holds    as `adjust`
 * Source   as `adjust` and `symptom`
 */
export function asHungCheck<F extends PlannedFinding>(
  { request, hang, findings }: CheckedBerth<F>,
  found: FoundOnTheSpot,
): Outcome<AsHungCheck<F>> {
  const answer = answerOf(request, found);
  if (!answer.ok) return answer;
  const { adjustment, told } = answer.value;
  const standing = standingFindings(findings, hang, adjustment.state);
  const looks = standing.filter(({ finding }) => finding.rule === "tree.looked-at");
  return succeed({
    adjustment,
    ...(told === undefined ? {} : { symptom: told }),
    standing,
    verdict: worstVerdict([
      adjustment.verdict,
      doubted(adjustment),
      ...standing.map(({ verdict }) => verdict),
    ]),
    treesLookedAt: {
      done: looks.filter(({ verdict }) => verdict === "clear").length,
      of: looks.length,
    },
  });
}

/** Steps that say nothing against what was found. */
const SURE: readonly Adjustment["next"][] = ["change", "leave-it", "hang-anew"];

function doubted({ doubts, next }: Adjustment): Verdict {
  return doubts.length > 0 || !SURE.includes(next) ? "look-again" : "clear";
}

interface Answer {
  readonly adjustment: Adjustment;
  readonly told?: Omit<SymptomAnswer, "adjustment">;
}

function answerOf(request: HangInput, { symptom: name, ...found }: FoundOnTheSpot): Outcome<Answer> {
  if (name === undefined) {
    const plain = adjust({ request, ...found });
    return plain.ok ? succeed({ adjustment: plain.value }) : plain;
  }
  const answered = symptom({ request, symptom: name, ...found });
  if (!answered.ok) return answered;
  const { adjustment, ...told } = answered.value;
  return succeed({ adjustment, told });
}
