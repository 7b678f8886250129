import { worstFirst, worstVerdict } from "../../outcome/finding.ts";
import { refuseAll, succeed, type Outcome } from "../../outcome/outcome.ts";
import type { HangDeviation } from "../../statics/hang-band.ts";
import type { HangLimits } from "../../statics/hang-types.ts";
import type {
  AdjustInput,
  Adjustment,
  AsHung,
  AsHungOff,
  Doubt,
  Followed,
  HangState,
  Move,
  OffQuantity,
} from "./adjust-types.ts";
import { evidenceOf } from "./evidence.ts";
import { stateBand } from "./state-band.ts";
import { stateFindings } from "./state-findings.ts";
import { AS_PLANNED, hungModel, moveOf, plus, type HungModel } from "./hung-model.ts";
import { likelyState, type Round } from "./likely-state.ts";
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
export function adjust({ request, measured, followed = [], cannot = [] }: AdjustInput): Outcome<Adjustment> {
  const failure = refuseAll(measuredRefusals(measured, followed));
  if (failure !== undefined) return failure;
  const built = hungModel(request);
  if (!built.ok) return built;
  return succeed(checked(built.value, roundsOf(built.value, measured, followed), cannot).adjustment);
}

/** What was found, time by time, with what had been moved until then. */
export function roundsOf(
  model: HungModel,
  measured: AsHung,
  followed: readonly Followed[],
  from: HangDeviation = AS_PLANNED,
): readonly Round[] {
  const rounds: Round[] = [];
  let moved = from;
  for (const one of followed) {
    rounds.push({ moved, evidence: evidenceOf(one.measured ?? {}, model) });
    moved = plus(moved, moveOf(one));
  }
  return [...rounds, { moved, evidence: evidenceOf(measured, model) }];
}

/** The check itself, and how it most likely hangs as deviations from the plan. */
export function checked(model: HungModel, rounds: readonly Round[], cannot: readonly Move[] = []): Checked {
  const likely = likelyState(model, rounds);
  const { off, misfit, iterations } = likely;
  const { state } = model.come(off);
  const band = stateBand(model, rounds, likely);
  const { next, instruction } = oneInstruction(model, off, cannot);
  const after = instruction === undefined ? off : plus(off, moveOf(instruction));
  const findings = stateFindings(state, model.request.limits).sort(worstFirst);
  const adjustment = {
    state,
    band,
    doubts: doubtsOf(state, band, model.request.limits),
    off: whatIsOff(model.planned.state, state),
    next,
    ...(instruction === undefined ? {} : { instruction }),
    predicted: model.come(after).state,
    verdict: worstVerdict(findings.map(({ verdict }) => verdict)),
    findings,
    misfit,
    iterations,
  };
  return { adjustment, off };
}

export interface Checked {
  readonly adjustment: Adjustment;
  readonly off: HangDeviation;
}

function doubtsOf(
  state: HangState,
  band: Adjustment["band"],
  { angleMin, angleMax }: HangLimits,
): readonly Doubt[] {
  return (["head", "foot"] as const).flatMap((end): Doubt[] => {
    const [low, high] = band[`${end}.angle`];
    const isKept = state[end].angle >= angleMin && state[end].angle <= angleMax;
    return isKept && (low < angleMin || high > angleMax) ? [`${end}.angle`] : [];
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
