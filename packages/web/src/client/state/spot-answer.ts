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
  type Verdict,
} from "@nightspan/core";
import { allTold, type Move, type SpotState } from "./spot-state.ts";

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
 * What the as-hung check says of a berth as it was found. A move that would not go is not said again: another is
 * looked for, after which the check itself would leave the hang as it is.
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
  const { misfit, next, instruction } = check.adjustment;
  if (misfit > MISREAD && !state.trusted) return { kind: "misread", check };
  if (instruction !== undefined) return change(ask, state, check, instruction);
  const advice = check.symptom?.advice[state.advised];
  if (advice !== undefined) return { kind: "advice", advice, check };
  if (next === "hang-anew") return { kind: "hang-anew", check };
  return { kind: state.symptom === undefined ? "leave-it" : "stuck", check };
}

/** Misfit is about 1 to 3 where nothing was misread; well above that, something was. */
const MISREAD = 5;

type Ask = ReturnType<typeof asking>;

function asking(berth: PlannedBerth, request: HangInput) {
  return ({ found, followed, symptom }: SpotState) =>
    asHungCheck(
      { request, hang: berth.hang, findings: berth.findings },
      { measured: found, followed, ...(symptom === undefined ? {} : { symptom }) },
    );
}

function change(ask: Ask, state: SpotState, check: Check, first: Instruction): SpotAnswer {
  const instruction = isRefused(state, first) ? otherMove(ask, state, check.adjustment.verdict) : first;
  const after = instruction === undefined ? undefined : following(ask, state, instruction);
  if (instruction === undefined || after === undefined) return { kind: "stuck", check };
  return { kind: "change", instruction, after, check };
}

/** How it would hang after a move, before anything is found anew. */
function following(ask: Ask, state: SpotState, instruction: Instruction): Check | undefined {
  const followed = [...state.followed, { ...instruction, measured: allTold(state) }];
  const after = ask({ ...state, found: {}, followed });
  return after.ok ? after.value : undefined;
}

const TRIED_CM = [5, 10, 15, 20, 30] as const;
/** The adjuster before the strap on the trunk. */
const ACTIONS = ["take-in", "let-out", "raise", "lower"] as const;

/**
 * The least move that will go and after which nothing more is asked for; where there is none, the least that takes a
 * hang past its limits back within them.
 */
function otherMove(ask: Ask, state: SpotState, now: Verdict): Instruction | undefined {
  let within: Instruction | undefined;
  for (const move of openMoves(state)) {
    const { next, verdict } = following(ask, state, move)?.adjustment ?? PAST_LIMITS;
    if (verdict === "do-not-hang") continue;
    if (next === "leave-it") return move;
    if (now === "do-not-hang") within ??= move;
  }
  return within;
}

const PAST_LIMITS = { next: "change", verdict: "do-not-hang" } as const;

/** Moves that were not refused, the least first. */
function openMoves(state: SpotState): readonly Instruction[] {
  const moves = ACTIONS.flatMap((action) => (["head", "foot"] as const).map((end) => ({ end, action })));
  const open = moves.filter((move) => !isRefused(state, move));
  return TRIED_CM.flatMap((cm) => open.map((move) => ({ ...move, cm })));
}

function isRefused({ refused }: SpotState, { end, action }: Move): boolean {
  return refused.some((one) => one.end === end && one.action === action);
}
