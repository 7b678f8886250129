import { worstFirst, worstVerdict } from "../../outcome/finding.ts";
import { succeed, type Outcome } from "../../outcome/outcome.ts";
import type { AdjustInput, Adjustment, HangState, AsHungOff, OffQuantity } from "./adjust-types.ts";
import { evidenceOf } from "./evidence.ts";
import { stateFindings } from "./state-findings.ts";
import { AS_PLANNED, hungModel, moveOf, plus } from "./hung-model.ts";
import { likelyState } from "./likely-state.ts";
import { measuredRefusals } from "./measured-refusals.ts";
import { oneInstruction } from "./one-instruction.ts";

/**
 * The as-hung check: from what was found on the spot, how it most likely hangs, what is off, and one thing to change.
 *
 * Shapes   one berth's request, any subset of measurements → one state, one instruction or none
 * Units    SI; instructions in whole centimetres
 * Holds    a request that hangs; measurements that a person could have taken. None at all: the plan, nothing to change
 * Error    as far as the measurements go: `misfit` far above 3 says that something was misread
 * Source   house-convention (handbook/planning.md); forward model hang-chain
 */
export function adjust({ request, measured, followed = [] }: AdjustInput): Outcome<Adjustment> {
  const refusals = measuredRefusals(measured);
  if (refusals.length > 0) return { ok: false, refusals };
  const built = hungModel(request);
  if (!built.ok) return built;
  const model = built.value;
  const moved = followed.reduce((off, one) => plus(off, moveOf(one)), AS_PLANNED);
  const { off, misfit, iterations } = likelyState(model, evidenceOf(measured, model), moved);
  const { state } = model.come(off);
  const instruction = oneInstruction(model, request.limits, off);
  const after = instruction === undefined ? off : plus(off, moveOf(instruction));
  const findings = stateFindings(state, request.limits).sort(worstFirst);
  return succeed({
    state,
    off: whatIsOff(model.planned.state, state),
    ...(instruction === undefined ? {} : { instruction }),
    predicted: model.come(after).state,
    verdict: worstVerdict(findings.map(({ verdict }) => verdict)),
    findings,
    misfit,
    iterations,
  });
}

function whatIsOff(planned: HangState, found: HangState): AsHungOff[] {
  return OFF.flatMap(({ quantity, of, matters }) => {
    const [was, is] = [of(planned), of(found)];
    return Math.abs(is - was) > matters ? [{ quantity, planned: was, found: is }] : [];
  });
}

/** What may be off, and from how much on it is told [m]. Source: common-practice. */
const OFF: readonly {
  readonly quantity: OffQuantity;
  readonly of: (state: HangState) => number;
  readonly matters: number;
}[] = [
  { quantity: "spanM", of: ({ spanM }) => spanM, matters: 0.05 },
  { quantity: "head.strapHeightM", of: ({ head }) => head.strapHeightM, matters: 0.05 },
  { quantity: "foot.strapHeightM", of: ({ foot }) => foot.strapHeightM, matters: 0.05 },
  { quantity: "head.strapLengthM", of: ({ head }) => head.strapLengthM, matters: 0.05 },
  { quantity: "foot.strapLengthM", of: ({ foot }) => foot.strapLengthM, matters: 0.05 },
  { quantity: "seatHeightM", of: ({ seatHeightM }) => seatHeightM, matters: 0.05 },
  { quantity: "footRaiseM", of: ({ footRaiseM }) => footRaiseM, matters: 0.05 },
];
