import type { Basis } from "../outcome/basis.ts";
import { refuse, refuseAll, succeed, type Outcome, type Refusal } from "../outcome/outcome.ts";
import { cableFigures, cableSums, type CableForces } from "./cable-figures.ts";
import { between } from "./between.ts";
import { cableRefusals } from "./cable-input.ts";
import { catenaryShape } from "./catenary.ts";

export interface ElasticCatenaryInput {
  readonly spanM: number;
  /** Without load; may be shorter than the chord. */
  readonly lengthM: number;
  /** Right support above the left one. */
  readonly riseM: number;
  readonly weightNPerM: number;
  readonly eaN: number;
}

export interface ElasticCatenary {
  readonly sagM: number;
  readonly lowM: number;
  readonly horizontalN: number;
  readonly leftN: number;
  readonly rightN: number;
  /** Length under load. */
  readonly stretchedM: number;
  readonly residual: number;
  readonly iterations: number;
  readonly basis: Basis;
}

/**
 * A heavy cable that stretches, hung between two points; weight stays with the material.
 *
 *   d = H L₀ [Δθ/W + 1/EA],  h = τₘ L₀ [2/S + 1/EA],  Δθ = ln((S + W)/(S − W))
 *
 * with τₘ the mean vertical pull and S the sum of the end pulls. Newton in (H, τₘ), halving the step while
 * the miss grows: the miss is the gradient of a convex energy, so there is one answer and it is reached.
 *
 * Shapes   scalars in, scalars out
 * Units    spanM, lengthM, riseM [m], weightNPerM [N/m], eaN [N] → metres, newtons
 * Holds    EA from 1/1000 of the cable's weight to 10¹⁵ times it; length from 1/100 of the chord; anything
 *          else is refused by field name. The stretch is linear: doubling a real cord breaks it first
 * Error    1e-11 relative, save for a cable that is nearly rigid and as long as its chord: there rounding of
 *          the lengths is magnified by 1/strain
 * Source   elastic-catenary (handbook/statics.md)
 */
export function elasticCatenary(input: ElasticCatenaryInput): Outcome<ElasticCatenary> {
  const failure = refuseAll(refusals(input));
  if (failure !== undefined) return failure;
  const solved = solve(input);
  const { forces, residual, iterations } = solved;
  if (!(residual <= REACHED)) return refuse("lengthM", input.lengthM, "a cable whose rest can be found");
  const { sagM, lowM, leftN, rightN, stretchedM } = cableFigures(forces);
  const { horizontalN } = forces;
  return succeed({ sagM, lowM, horizontalN, leftN, rightN, stretchedM, residual, iterations, basis: BASIS });
}

const MOST_STEPS = 2000;
const MOST_HALVINGS = 60;
const ROUNDING = 4e-16;
const REACHED = 1e-11;

interface Solved {
  readonly forces: CableForces;
  readonly residual: number;
  readonly iterations: number;
}

/** The miss at the far support, over span and chord, and its Newton step in (H, τₘ). */
interface Miss {
  readonly size: number;
  readonly stepAlongN: number;
  readonly stepUpN: number;
}

/** From the better of the starts; from the other where rounding stopped the first short of the rest. */
function solve(input: ElasticCatenaryInput): Solved {
  const starts = startingForces(input).map((forces) => ({ forces, size: missOf(input, forces).size }));
  starts.sort((a, b) => a.size - b.size);
  let best: Solved = { forces: shallowForces(input), residual: Infinity, iterations: 0 };
  for (const { forces } of starts) {
    if (best.residual <= REACHED) break;
    const next = solveFrom(input, forces);
    if (next.residual < best.residual) best = next;
  }
  return best;
}

function solveFrom(input: ElasticCatenaryInput, start: CableForces): Solved {
  let forces = start;
  let miss = missOf(input, forces);
  let iterations = 0;
  for (; iterations < MOST_STEPS && miss.size > ROUNDING; iterations++) {
    const next = shortenedStep(input, forces, miss);
    if (next === undefined) break;
    [forces, miss] = next;
  }
  return { forces, residual: miss.size, iterations };
}

/** The longest of the halved steps that lessens the miss; none once rounding rules. */
function shortenedStep(
  input: ElasticCatenaryInput,
  forces: CableForces,
  miss: Miss,
): readonly [CableForces, Miss] | undefined {
  let share = 1;
  for (let halving = 0; halving < MOST_HALVINGS; halving++, share /= 2) {
    const horizontalN = forces.horizontalN - share * miss.stepAlongN;
    if (!(horizontalN > 0)) continue;
    const trial = { ...forces, horizontalN, meanUpN: forces.meanUpN - share * miss.stepUpN };
    const trialMiss = missOf(input, trial);
    if (trialMiss.size < miss.size) return [trial, trialMiss];
  }
  return undefined;
}

function missOf({ spanM, riseM }: ElasticCatenaryInput, forces: CableForces): Miss {
  const { horizontalN: h, meanUpN: m, weightN, lengthM, stretchPerN } = forces;
  const { leftN, rightN, sumN, sumLessWeightN, turn } = cableSums(forces);
  const alongPer = turn / weightN;
  const upPer = 2 / sumN;
  const missAlong = h * lengthM * (alongPer + stretchPerN) - spanM;
  const missUp = m * lengthM * (upPer + stretchPerN) - riseM;
  const sumPerAlong = h * (1 / leftN + 1 / rightN);
  const sumPerUp = (m - weightN / 2) / leftN + (m + weightN / 2) / rightN;
  const alongPerSum = -2 / (sumLessWeightN * (sumN + weightN));
  const upPerSum = -2 / (sumN * sumN);
  const xx = lengthM * (alongPer + stretchPerN + h * alongPerSum * sumPerAlong);
  const xz = lengthM * h * alongPerSum * sumPerUp;
  const zx = lengthM * m * upPerSum * sumPerAlong;
  const zz = lengthM * (upPer + stretchPerN + m * upPerSum * sumPerUp);
  const determinant = xx * zz - xz * zx;
  return {
    size: Math.hypot(missAlong / spanM, missUp / Math.hypot(spanM, riseM)),
    stepAlongN: (zz * missAlong - xz * missUp) / determinant,
    stepUpN: (xx * missUp - zx * missAlong) / determinant,
  };
}

/**
 * As if it did not stretch; as if it stretched by its own hanging weight alone; as a taut, shallow parabola.
 * The first two only where such a cable is longer than its chord.
 */
function startingForces(input: ElasticCatenaryInput): CableForces[] {
  const { spanM, lengthM, riseM, weightNPerM, eaN } = input;
  const hangingN = (weightNPerM * lengthM * Math.abs(riseM)) / Math.hypot(spanM, riseM);
  const rigid = rigidForces(input, lengthM);
  const stretched = rigidForces(input, lengthM * (1 + hangingN / (2 * eaN)));
  return [...rigid, ...stretched, shallowForces(input)];
}

function rigidForces(input: ElasticCatenaryInput, loadedM: number): CableForces[] {
  const { spanM, lengthM, riseM, weightNPerM, eaN } = input;
  const { x, level2M2 } = catenaryShape({ spanM, riseM, lengthM: loadedM });
  if (!(x > 0)) return [];
  const horizontalN = (weightNPerM * spanM) / (2 * x);
  const sumN = (2 * horizontalN * Math.cosh(x) * loadedM) / Math.sqrt(level2M2);
  const meanUpN = (riseM * sumN) / (2 * loadedM);
  return [{ horizontalN, meanUpN, weightN: weightNPerM * lengthM, lengthM, stretchPerN: 1 / eaN }];
}

/** H³/EA − (c/L₀ − 1) H² = (w d)² L₀/24c, along the chord. */
function shallowForces({ spanM, lengthM, riseM, weightNPerM, eaN }: ElasticCatenaryInput): CableForces {
  const chordM = Math.hypot(spanM, riseM);
  const weightN = weightNPerM * lengthM;
  const pullN = shallowPull(eaN, chordM / lengthM - 1, (weightN * spanM) / chordM);
  const [horizontalN, meanUpN] = [(pullN * spanM) / chordM, (pullN * riseM) / chordM];
  return { horizontalN, meanUpN, weightN, lengthM, stretchPerN: 1 / eaN };
}

/** Positive root of T³/EA − strain T² − W²/24 = 0, by Newton from above, where it falls without overshoot. */
function shallowPull(eaN: number, strain: number, acrossN: number): number {
  const constant = (acrossN * acrossN) / 24;
  let pullN = Math.max(0, strain) * eaN + Math.cbrt(constant * eaN);
  for (let step = 0; step < MOST_STEPS; step++) {
    const value = (pullN / eaN - strain) * pullN * pullN - constant;
    const change = value / ((3 * pullN) / eaN - 2 * strain) / pullN;
    pullN -= change;
    if (!(Math.abs(change) > 1e-6 * pullN)) break;
  }
  return pullN;
}

function refusals(input: ElasticCatenaryInput): readonly Refusal[] {
  const { spanM, lengthM, riseM, weightNPerM, eaN } = input;
  const weightN = weightNPerM * lengthM;
  const chordM = Math.hypot(spanM, riseM);
  const short = lengthM < chordM / SHORTEST;
  return [
    ...cableRefusals(input),
    ...(short
      ? [{ field: "lengthM", got: lengthM, need: `at least 1/${SHORTEST} of the straight distance` }]
      : []),
    ...(Number.isFinite(weightN) ? between("eaN", eaN, weightN / 1e3, weightN * 1e15) : []),
  ];
}

const SHORTEST = 100;

const BASIS: Basis = {
  rule: "elastic-catenary",
  source: "elastic-catenary",
  assumes: [
    "the cable is uniform and bends freely",
    "stretch is in proportion to pull",
    "weight stays with the material",
  ],
};
