import {
  asHungCheck,
  findBerthRequest,
  type AdviceKey,
  type AsHungCheck,
  type Camp,
  type Finding,
  type HangInput,
  type Instruction,
  type PlannedBerth,
  type Refusal,
} from "@nightspan/core";
import { allTold, type SpotState } from "./spot-state.ts";

type Check = AsHungCheck<Finding>;

/** What to do now: never more than one thing. */
export type SpotAnswer =
  | {
      readonly kind: "change";
      readonly instruction: Instruction;
      readonly after: Check;
      readonly check: Check;
    }
  | { readonly kind: "advice"; readonly advice: AdviceKey; readonly check: Check }
  | { readonly kind: "leave-it" | "hang-anew" | "stuck" | "misread"; readonly check: Check }
  | { readonly kind: "refused"; readonly refusals: readonly Refusal[] };

/**
 * What the as-hung check says of a berth as it was found. A move that would not go is not said again: the check tells
 * the next best, until none is left.
 */
export function spotAnswer(camp: Camp, berth: PlannedBerth, state: SpotState): SpotAnswer {
  const before = answered.get(state);
  if (before?.berth === berth) return before.answer;
  const answer = workedOut(camp, berth, state);
  answered.set(state, { berth, answer });
  return answer;
}

/** A page is drawn more often than something is pressed. */
const answered = new WeakMap<SpotState, { readonly berth: PlannedBerth; readonly answer: SpotAnswer }>();

function workedOut(camp: Camp, berth: PlannedBerth, state: SpotState): SpotAnswer {
  const request = berth.request ?? findBerthRequest(camp, berth);
  if (request === undefined) return { kind: "refused", refusals: [] };
  const ask = asking(berth, request);
  const now = ask(state);
  if (!now.ok) return { kind: "refused", refusals: now.refusals };
  const check = now.value;
  const { next, instruction } = check.adjustment;
  if (next !== "change" && next !== "leave-it" && next !== "hang-anew") return { kind: "misread", check };
  if (instruction !== undefined) return change(ask, state, check, instruction);
  const advice = check.symptom?.advice[state.advised];
  if (advice !== undefined) return { kind: "advice", advice, check };
  const refused = state.refused.length > 0;
  if (next === "hang-anew" && !refused) return { kind: "hang-anew", check };
  return { kind: state.symptom === undefined && !refused ? "leave-it" : "stuck", check };
}

type Ask = ReturnType<typeof asking>;

function asking(berth: PlannedBerth, request: HangInput) {
  return ({ found, followed, refused, symptom, trusted }: SpotState) =>
    asHungCheck(
      { request, hang: berth.hang, findings: berth.findings },
      { measured: found, followed, cannot: refused, trusted, ...(symptom === undefined ? {} : { symptom }) },
    );
}

/** The move, and how it would hang after it, before anything is found anew. */
function change(ask: Ask, state: SpotState, check: Check, instruction: Instruction): SpotAnswer {
  const followed = [...state.followed, { ...instruction, measured: allTold(state) }];
  const after = ask({ ...state, found: {}, followed });
  return after.ok ? { kind: "change", instruction, after: after.value, check } : { kind: "stuck", check };
}
