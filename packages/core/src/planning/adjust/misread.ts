import { ERROR_NAMES } from "../../statics/hang-band.ts";
import type { NextStep } from "./adjust-types.ts";
import type { LikelyState, Round } from "./likely-state.ts";

/** From this misfit on something was misread; about 1 to 3 where nothing was. Source: house-convention. */
const MISREAD = 5;

/**
 * Whether what was found fits together well enough to change anything by it. Trees that stand far from where the plan
 * has them contradict nothing as long as the rest fits: that asks for a new plan.
 *
 *   misfit² without the span's own share = misfit² − z_span²
 *
 * Source   house-convention (handbook/planning.md)
 */
export function misread(
  { misfit, z }: Pick<LikelyState, "misfit" | "z">,
  rounds: readonly Round[],
): Extract<NextStep, "measure-again" | "plan-again"> | undefined {
  if (misfit <= MISREAD) return undefined;
  const isSpanFound = rounds.some(({ evidence }) => evidence.some(({ of }) => of === "spanM"));
  const ofSpan = z[ERROR_NAMES.indexOf("spanM")] ?? 0;
  return isSpanFound && misfit ** 2 - ofSpan ** 2 <= MISREAD ** 2 ? "plan-again" : "measure-again";
}
