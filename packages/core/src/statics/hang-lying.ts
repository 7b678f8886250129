import { marchLinks, newMarch, startMarch } from "./chain.ts";
import { CLOTH_CELLS } from "./hang-constants.ts";
import type { HangRig } from "./hang-rig.ts";
import { newChainState, solveSlack } from "./solve-chain.ts";

/** The loaded hammock between its two gathers, and what each strap must give it. */
export interface Lying {
  /** Sideways pull in both straps; what each strap carries down; the ridgeline's pull as a vector [N]. */
  readonly alongN: number;
  readonly headDownN: number;
  readonly footDownN: number;
  readonly ridgeAlongN: number;
  readonly ridgeUpN: number;
  /** Foot gather from head gather [m]. */
  readonly gatherDxM: number;
  readonly gatherDzM: number;
  readonly iterations: number;
  readonly converged: boolean;
}

/**
 * The loaded hammock whose straps hang, on the mean, at a given angle, with the foot gather raised.
 *
 * Straps and ridgeline weigh nothing, so trees and straps do not enter: without a taut ridgeline
 *
 *   tan a₁ = V₁/H, tan a₂ = V₂/H, V₁ + V₂ = W, a₁ + a₂ = 2a
 *   ⇒ sin 2a · (H² − V₁V₂) = cos 2a · W H
 *
 * gives H for each V₁, and V₁ follows from the raise (falling in V₁: one root). A taut ridgeline fixes the
 * gathers; its pull then follows from the same equation, which is a quadratic in it.
 *
 * Units    meanAngle [rad], footRaiseM [m] → newtons, metres
 */
export function lyingAt(rig: HangRig, meanAngle: number, footRaiseM: number): Lying {
  const sine = Math.sin(2 * meanAngle);
  const cosine = Math.cos(2 * meanAngle);
  const taut =
    rig.ridgelineM === undefined ? undefined : heldApart(rig, rig.ridgelineM, sine, cosine, footRaiseM);
  return taut ?? hungFree(rig, sine, cosine, footRaiseM);
}

const MOST_STEPS = 100;
const CLOTH_END = CLOTH_CELLS + 1;
const MARCH = newMarch();

/** Without a ridgeline, or with a slack one: V₁ by Newton, kept inside a bracket by bisection. */
function hungFree(rig: HangRig, sine: number, cosine: number, raiseM: number): Lying {
  const { weightN } = rig;
  const closeM = 1e-13 * rig.clothM;
  let [low, high] = [0, weightN];
  let down = weightN / 2;
  let along = 0;
  let missM = Infinity;
  let step = 0;
  for (; step < MOST_STEPS; step++) {
    const other = weightN - down;
    const root = Math.sqrt(cosine * cosine * weightN * weightN + 4 * sine * sine * down * other);
    along = (cosine * weightN + root) / (2 * sine);
    startMarch(MARCH, along, -down);
    marchLinks(rig.lying, MARCH, 1, CLOTH_END);
    missM = MARCH.zM - raiseM;
    if (Math.abs(missM) <= closeM || high - low <= 1e-15 * weightN) break;
    if (missM > 0) low = down;
    else high = down;
    const alongPerDown = (sine * (other - down)) / root;
    const newton = down - missM / (MARCH.xPerUp * alongPerDown - MARCH.zPerUp);
    down = newton > low && newton < high ? newton : (low + high) / 2;
  }
  return {
    alongN: along,
    headDownN: down,
    footDownN: weightN - down,
    ridgeAlongN: 0,
    ridgeUpN: 0,
    gatherDxM: MARCH.xM,
    gatherDzM: MARCH.zM,
    iterations: step,
    converged: Math.abs(missM) <= 1e-10 * rig.clothM,
  };
}

/** With the ridgeline taut; undefined where it would have to push. */
function heldApart(
  rig: HangRig,
  ridgelineM: number,
  sine: number,
  cosine: number,
  raiseM: number,
): Lying | undefined {
  const level = Math.sqrt(ridgelineM * ridgelineM - raiseM * raiseM);
  const cloth = clothBetween(rig, level, raiseM);
  const [downN, otherN] = [-cloth.upN, rig.weightN + cloth.upN];
  const [c, s] = [level / ridgelineM, raiseM / ridgelineM];
  const linear = sine * (2 * cloth.alongN * c - s * (downN - otherN)) - cosine * rig.weightN * c;
  const constant =
    sine * (cloth.alongN * cloth.alongN - downN * otherN) - cosine * rig.weightN * cloth.alongN;
  // sin 2a · T² + linear · T + constant = 0 has a positive root only where the constant is negative.
  if (!(constant < 0)) return undefined;
  const pull = (-linear + Math.sqrt(linear * linear - 4 * sine * constant)) / (2 * sine);
  return {
    alongN: cloth.alongN + pull * c,
    headDownN: downN - pull * s,
    footDownN: otherN + pull * s,
    ridgeAlongN: pull * c,
    ridgeUpN: pull * s,
    gatherDxM: level,
    gatherDzM: raiseM,
    iterations: cloth.iterations,
    converged: cloth.converged,
  };
}

const CLOTH_STATE = newChainState();

/** The cloth alone between fixed gathers; the start is that of a parabola. */
function clothBetween(rig: HangRig, dxM: number, dzM: number) {
  const slackM = rig.clothM - Math.sqrt(dxM * dxM + dzM * dzM);
  const sagM = Math.sqrt(0.375 * dxM * slackM);
  CLOTH_STATE.alongN = (rig.weightN * dxM) / (6 * sagM);
  CLOTH_STATE.upN = -rig.weightN / 2;
  return solveSlack(rig.lying, { firstLink: 1, endLink: CLOTH_END, dxM, dzM }, CLOTH_STATE);
}
