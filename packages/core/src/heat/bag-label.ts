import type { Basis } from "../outcome/basis.ts";
import { refuse, refuseAll, succeed, type Outcome } from "../outcome/outcome.ts";
import { bracketedRoot } from "../numeric/bracketed-root.ts";
import { coldestAir } from "./coldest-air.ts";
import { halfFlow } from "./half-flow.ts";
import { ICE_K } from "./heat-units.ts";
import { outerFilm } from "./outer-film.ts";
import { PRESSED_RATIO, type Filling } from "./pressed-insulation.ts";
import { balanceAt } from "./required-insulation.ts";
import { SKIN_K, SLEEP_STATES, type SleepStateKey } from "./sleep-states.ts";
import { within } from "./within.ts";

export interface BagLabelInput {
  readonly labelK: number;
  /** Which of the label's temperatures it is. */
  readonly of: Exclude<SleepStateKey, "extreme">;
  readonly filling: Filling;
}

export interface BagLabel {
  /** Upper side of the bag alone, without the air about it [m²K/W]. */
  readonly topM2KPerW: number;
  /** Skin to air as the manikin lay: upper side, pressed under side, mat [m²K/W]. */
  readonly totalM2KPerW: number;
  readonly residual: number;
  readonly iterations: number;
  readonly basis: Basis;
}

/**
 * Insulation of the upper side of a bag from the temperature on its label: the standard person in the standard test,
 * read backwards.
 *
 *   R_required(T_label) = (T_skin − T_a) / (0.7 q_top(R) + 0.3 (T_skin − T_a) / (p R + 0.85))
 *
 * Shapes   scalars in, scalars out
 * Units    labelK [K] → [m²K/W]
 * Holds    −40 to 25 °C; a label that no upper side can explain beside the mat is refused
 * Error    the shares of the skin are estimates, and labels of one bag differ by 10 % of insulation between laboratories
 *          (kuklane-dejke-2010): 3 to 4 K
 * Source   iso-23537, sleeper-balance (handbook/heat.md)
 */
export function bagLabel({ labelK, of, filling }: BagLabelInput): Outcome<BagLabel> {
  const failure = refuseAll(within("labelK", labelK, ICE_K - 40, ICE_K + 25));
  if (failure !== undefined) return failure;
  const wanted = balanceAt(SLEEP_STATES[of], labelK, TEST_HUMIDITY).totalM2KPerW;
  const amiss = (topM2KPerW: number) => testedM2KPerW(topM2KPerW, filling, labelK) - wanted;
  const root = bracketedRoot(amiss, 0, MOST_M2K_PER_W);
  if (!root.converged) return refuse("labelK", labelK, "a label that a bag on the standard mat can have");
  return succeed({
    topM2KPerW: root.x,
    totalM2KPerW: wanted,
    residual: amiss(root.x),
    iterations: root.iterations,
    basis: BASIS,
  });
}

/** The other way: the label that an upper side comes to [K]. */
export function labelOfBag(topM2KPerW: number, of: BagLabelInput["of"], filling: Filling): number {
  const state = SLEEP_STATES[of];
  const amiss = (labelK: number) =>
    coldestAir(state, testedM2KPerW(topM2KPerW, filling, labelK), TEST_HUMIDITY).x - labelK;
  return bracketedRoot(amiss, ICE_K - 60, ICE_K + 32).x;
}

/** Skin to air of a bag in the standard test. */
function testedM2KPerW(topM2KPerW: number, filling: Filling, airK: number): number {
  const around = { airK, radiantK: airK, windMS: TEST_WIND_MS };
  const top = halfFlow(topM2KPerW, SKIN_K, outerFilm(around), around).flowWM2;
  const bottom = (SKIN_K - airK) / (topM2KPerW * PRESSED_RATIO[filling] + TEST_MAT_M2K_PER_W);
  return (SKIN_K - airK) / (TEST_TOP_SHARE * top + (1 - TEST_TOP_SHARE) * bottom);
}

/** The standard test: mat, air and share of the skin that faces up. Source: iso-23537 (mat); shares are an estimate. */
const TEST_MAT_M2K_PER_W = 0.85;
const TEST_WIND_MS = 0.3;
const TEST_HUMIDITY = 0.5;
const TEST_TOP_SHARE = 0.7;
const MOST_M2K_PER_W = 8;

const BASIS: Basis = {
  rule: "bag-label",
  source: "iso-23537",
  assumes: ["the label was measured by the standard test", "seven tenths of the heat go up on flat ground"],
};
