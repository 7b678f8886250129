import { ERROR_NAMES, type HangDeviation } from "../../statics/hang-band.ts";
import type { Evidence } from "./evidence.ts";
import { AS_PLANNED, plus, type HungModel } from "./hung-model.ts";
import { leastSquaresStep } from "./normal-equations.ts";

/** What was found at one time, and what had been moved from the plan until then. */
export interface Round {
  readonly moved: HangDeviation;
  readonly evidence: readonly Evidence[];
}

export interface LikelyState {
  /** From the plan, after all that was moved. */
  readonly off: HangDeviation;
  /** The same from what was moved, in standard deviations. */
  readonly z: Float64Array;
  readonly misfit: number;
  readonly iterations: number;
}

/**
 * How it most likely hangs, given all that was found, now and before each instruction that was followed.
 *
 *   least Σ (z)² + Σ ((said(moved + z σ) − found)/error)²     by Gauss–Newton steps, halved while they do not help
 *
 * Each thing that may be off is expected where the plan, and the instructions followed since, put it, give or take its
 * own error; each finding pulls with the weight of its own. A seat that comes out right may be due to two opposite
 * faults, so the search starts both from what was moved and from the plan, and the better end counts.
 *
 * Shapes   rounds in order of time, the last is now; evidence of any length, also none: then all is as moved
 * Error    stops when a step is below 1e-6 standard deviations, or after 12
 * Source   house-convention (handbook/planning.md)
 */
export function likelyState(model: HungModel, rounds: readonly Round[]): LikelyState {
  const moved = rounds.at(-1)?.moved ?? AS_PLANNED;
  const back = Float64Array.from(ERROR_NAMES, (name) => -moved[name] / model.sizes[name]);
  const starts = back.some((value) => value !== 0) ? [back.map(() => 0), back] : [back];
  const found = starts.map((start) => descent(model, rounds, start));
  const { z, cost, iterations } = found.reduce((best, next) => (next.cost < best.cost ? next : best));
  return { off: offAt(model, moved, z), z, misfit: Math.sqrt(cost), iterations };
}

const MOST_STEPS = 12;
const MOST_HALVINGS = 6;

/** Differences are taken over this share of a standard deviation. */
const SHARE = 0.1;

interface Descent {
  readonly z: Float64Array;
  readonly cost: number;
  readonly iterations: number;
}

function descent(model: HungModel, rounds: readonly Round[], start: Float64Array): Descent {
  let z = start;
  let cost = costAt(model, rounds, z);
  let iterations = 0;
  for (; iterations < MOST_STEPS; iterations++) {
    const step = stepAt(model, rounds, z);
    const next = halved(model, rounds, z, step, cost);
    if (next === undefined) break;
    ({ z, cost } = next);
    if (Math.max(...step.map(Math.abs)) < 1e-6) break;
  }
  return { z, cost, iterations };
}

/** The step, or the half, quarter … of it that lowers the cost first. */
function halved(
  model: HungModel,
  rounds: readonly Round[],
  z: Float64Array,
  step: Float64Array,
  cost: number,
): { readonly z: Float64Array; readonly cost: number } | undefined {
  for (let halving = 0; halving <= MOST_HALVINGS; halving++) {
    const next = z.map((value, index) => value + (step[index] ?? NaN) / 2 ** halving);
    const nextCost = costAt(model, rounds, next);
    if (nextCost <= cost) return { z: next, cost: nextCost };
  }
  return undefined;
}

function stepAt(model: HungModel, rounds: readonly Round[], z: Float64Array): Float64Array {
  const told = rounds.filter(({ evidence }) => evidence.length > 0);
  const rest = told.flatMap(({ moved, evidence }) => missesAt(model, offAt(model, moved, z), evidence));
  return leastSquaresStep(
    slopesOfAll(model, told, z),
    Float64Array.from(rest),
    z.map((value) => -value),
  );
}

/** All evidence × all that may be off: how each would change, both in standard deviations. */
export function slopesOfAll(model: HungModel, rounds: readonly Round[], z: Float64Array): Float64Array[] {
  return rounds.flatMap(({ moved, evidence }) =>
    evidence.length === 0 ? [] : slopesAt(model, offAt(model, moved, z), evidence),
  );
}

export function slopesAt(
  model: HungModel,
  here: HangDeviation,
  evidence: readonly Evidence[],
): Float64Array[] {
  const rows = evidence.map(() => new Float64Array(ERROR_NAMES.length));
  ERROR_NAMES.forEach((name, index) => {
    const step = SHARE * model.sizes[name];
    const more = missesAt(model, plus(here, { [name]: step }), evidence);
    const less = missesAt(model, plus(here, { [name]: -step }), evidence);
    rows.forEach((row, at) => (row[index] = ((less[at] ?? NaN) - (more[at] ?? NaN)) / (2 * SHARE)));
  });
  return rows;
}

function missesAt(model: HungModel, off: HangDeviation, evidence: readonly Evidence[]): number[] {
  const come = model.come(off);
  return evidence.map(({ said, found, error }) => (found - said(come)) / error);
}

function costAt(model: HungModel, rounds: readonly Round[], z: Float64Array): number {
  const misses = rounds.flatMap(({ moved, evidence }) =>
    evidence.length === 0 ? [] : missesAt(model, offAt(model, moved, z), evidence),
  );
  return [...misses, ...z].reduce((sum, value) => sum + value * value, 0);
}

function offAt({ sizes }: HungModel, moved: HangDeviation, z: Float64Array): HangDeviation {
  const off = { ...moved };
  ERROR_NAMES.forEach((name, index) => (off[name] += (z[index] ?? NaN) * sizes[name]));
  return off;
}
