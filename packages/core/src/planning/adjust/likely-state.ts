import { ERROR_NAMES, type HangDeviation } from "../../statics/hang-band.ts";
import type { Evidence } from "./evidence.ts";
import { plus, type HungModel } from "./hung-model.ts";
import { leastSquaresStep } from "./normal-equations.ts";

export interface LikelyState {
  readonly off: HangDeviation;
  readonly misfit: number;
  readonly iterations: number;
}

/**
 * How it most likely hangs, given what was found.
 *
 *   least Σ ((off − moved)/σ)² + Σ ((said(off) − found)/error)²     by Gauss–Newton steps
 *
 * Each thing that may be off is expected where the plan, and the instructions followed since, put it, give or take its
 * own error; each finding pulls with the weight of its own.
 *
 * Shapes   evidence of any length, also none: then all is as moved
 * Error    stops when a step is below 1e-6 standard deviations, or after 12
 * Source   house-convention (handbook/planning.md)
 */
export function likelyState(
  model: HungModel,
  evidence: readonly Evidence[],
  moved: HangDeviation,
): LikelyState {
  let z = new Float64Array(ERROR_NAMES.length);
  let iterations = 0;
  for (; iterations < MOST_STEPS; iterations++) {
    const here = offAt(model, moved, z);
    const come = model.come(here);
    const rows = evidence.map(() => new Float64Array(z.length));
    ERROR_NAMES.forEach((name, index) => {
      const step = SHARE * model.sizes[name];
      const [more, less] = [
        model.come(plus(here, { [name]: step })),
        model.come(plus(here, { [name]: -step })),
      ];
      evidence.forEach(({ said, error }, at) => {
        const row = rows[at];
        if (row !== undefined) row[index] = (said(more) - said(less)) / (2 * SHARE * error);
      });
    });
    const rest = Float64Array.from(evidence, ({ said, found, error }) => (found - said(come)) / error);
    const step = leastSquaresStep(
      rows,
      rest,
      z.map((value) => -value),
    );
    z = z.map((value, index) => value + (step[index] ?? NaN));
    if (Math.max(...step.map(Math.abs)) < 1e-6) break;
  }
  const off = offAt(model, moved, z);
  return { off, misfit: misfitOf(model, evidence, off, z), iterations };
}

const MOST_STEPS = 12;

/** Differences are taken over this share of a standard deviation. */
const SHARE = 0.1;

function offAt({ sizes }: HungModel, moved: HangDeviation, z: Float64Array): HangDeviation {
  const off = { ...moved };
  ERROR_NAMES.forEach((name, index) => (off[name] += (z[index] ?? NaN) * sizes[name]));
  return off;
}

function misfitOf(
  model: HungModel,
  evidence: readonly Evidence[],
  off: HangDeviation,
  z: Float64Array,
): number {
  const come = model.come(off);
  const left = evidence.map(({ said, found, error }) => (found - said(come)) / error);
  return Math.sqrt([...left, ...z].reduce((sum, value) => sum + value * value, 0));
}
