import { worstFirst, worstVerdict } from "../../outcome/finding.ts";
import { refuseAll, succeed, type Outcome } from "../../outcome/outcome.ts";
import type { HangDeviation } from "../../statics/hang-band.ts";
import type {
  AdjustInput,
  Adjustment,
  AsHung,
  AsHungOff,
  Followed,
  HangState,
  OffQuantity,
} from "./adjust-types.ts";
import { anglesFirst } from "./angles-first.ts";
import { doubtsOf } from "./doubts.ts";
import { evidenceOf } from "./evidence.ts";
import { stateBand } from "./state-band.ts";
import { stateFindings } from "./state-findings.ts";
import { AS_PLANNED, hungModel, moveOf, plus, type HungModel } from "./hung-model.ts";
import { likelyState, type LikelyState, type Round } from "./likely-state.ts";
import { measuredRefusals } from "./measured-refusals.ts";
import { misread } from "./misread.ts";
import { oneInstruction, type Told } from "./one-instruction.ts";

/**
 * The as-hung check: from what was found on the spot, how it most likely hangs, what is off, and one thing to change.
 *
 * Shapes   one berth's request, any subset of measurements → one state, one instruction or none
 * Units    SI; instructions in whole centimetres
 * Holds    a request that hangs; measurements that a person could have taken. None at all: the plan, nothing to change
 * Error    as far as the measurements go: with a `misfit` above 5 something was misread, and nothing is to be changed
 * Source   house-convention (handbook/planning.md); forward model hang-chain
 */
export function adjust({ request, measured, followed = [], ...wishes }: AdjustInput): Outcome<Adjustment> {
  const failure = refuseAll(measuredRefusals(measured, followed));
  if (failure !== undefined) return failure;
  const built = hungModel(request);
  if (!built.ok) return built;
  return succeed(checked(built.value, roundsOf(built.value, measured, followed), wishes).adjustment);
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
export function checked(model: HungModel, rounds: readonly Round[], wishes: Wishes = {}): Checked {
  const likely = likelyState(model, rounds);
  const { off, misfit, iterations } = likely;
  const { limits } = model.request;
  const { evidence: found = [] } = rounds.at(-1) ?? {};
  const { state } = model.come(off);
  const band = stateBand(model, rounds, likely);
  const { next, instruction } = toldNext(model, rounds, { likely, band }, wishes);
  const after = instruction === undefined ? off : plus(off, moveOf(instruction));
  const findings = stateFindings(state, limits).sort(worstFirst);
  const adjustment = {
    state,
    band,
    doubts: doubtsOf(state, band, limits, found),
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

/** What cannot or need not be said again. */
type Wishes = Pick<AdjustInput, "cannot" | "trusted">;

/** No change is told by what does not fit together, unless it was measured again and is so all the same. */
function toldNext(
  model: HungModel,
  rounds: readonly Round[],
  { likely, band }: Likely,
  { cannot, trusted = false }: Wishes,
): Told {
  const next = trusted ? undefined : misread(likely, rounds);
  if (next !== undefined) return { next };
  const told = oneInstruction(model, likely.off, cannot);
  const isAsked = !trusted && anglesFirst(told, rounds, band, model.request.limits);
  return isAsked ? { next: "measure-angles" } : told;
}

interface Likely {
  readonly likely: LikelyState;
  readonly band: Adjustment["band"];
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
