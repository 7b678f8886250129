import type { Basis } from "../outcome/basis.ts";
import { refuseAll, succeed, type Outcome } from "../outcome/outcome.ts";
import { balanceRefusals, type SleeperBalanceInput } from "./balance-input.ts";
import { coldestAir } from "./coldest-air.ts";
import { halves, type Halves } from "./halves.ts";
import { balanceAt } from "./required-insulation.ts";
import { sleepState } from "./sleep-heat.ts";
import { ICE_K } from "./heat-units.ts";

export interface SleeperBalance extends Halves {
  /** Coldest air for comfort, for sleeping through, and to come through at all (never to be planned for) [K]. */
  readonly comfortK: number;
  readonly limitK: number;
  readonly extremeK: number;
  /** How far comfort and limit may be off, both ways [K]. */
  readonly bandK: number;
  /** Heat made in comfort less what goes out in tonight's air: above 0 the body warms, below it cools [W/m²]. */
  readonly residualWM2: number;
  readonly basis: Basis;
}

/**
 * A sleeper between two layers: what goes out above and below, the one resistance that both come to, and the coldest
 * air in which it is enough.
 *
 *   R_c = (T_skin − T_a) / (f q_top + (1 − f) q_bottom),   then R_required(T) = R_c for each state
 *
 * Shapes   one sleeper in, scalars out
 * Units    [m²K/W], [m/s], [K], ratios [1] → [K], [W/m²]
 * Holds    air −60 to 30 °C, wind 0 to 30 m/s, R 0 to 5, people of 16 and over; anything else is refused by field name.
 *          Not for children, illness, wet, alcohol, exhaustion
 * Error    `bandK`: 4 K, and 0.2 K more for each kelvin of comfort below −10 °C. No pair of resistance and temperature
 *          could be read in a first source, so the scale may be off as a whole; differences are better known
 * Source   sleeper-balance (handbook/heat.md)
 */
export function sleeperBalance(input: SleeperBalanceInput): Outcome<SleeperBalance> {
  const failure = refuseAll(balanceRefusals(input));
  return failure ?? succeed({ ...balanceOf(input), basis: BASIS });
}

/** The same of figures known to be in range. */
export function balanceOf(input: SleeperBalanceInput): Omit<SleeperBalance, "basis"> {
  const { night, person } = input;
  const flows = halves(input);
  const comfort = sleepState("comfort", person);
  const airOf = (state: typeof comfort) => coldestAir(state, flows.totalM2KPerW, night.humidityRatio);
  const roots = [comfort, sleepState("limit", person), sleepState("extreme", person)].map(airOf);
  const [comfortK = NaN, limitK = NaN, extremeK = NaN] = roots.map(({ x }) => x);
  return {
    ...flows,
    iterations: flows.iterations + roots.reduce((sum, { iterations }) => sum + iterations, 0),
    comfortK,
    limitK,
    extremeK,
    bandK: bandOf(comfortK),
    residualWM2: residual(input, flows.totalM2KPerW),
  };
}

/** Heat made and not lost, in comfort and tonight's air. */
function residual({ night, person }: SleeperBalanceInput, totalM2KPerW: number): number {
  const state = sleepState("comfort", person);
  const needed = balanceAt(state, night.airK, night.humidityRatio);
  const out = (needed.dryWM2 + needed.sweatWM2) * needed.totalM2KPerW;
  return state.metabolicWM2 - needed.breathWM2 - out / totalM2KPerW;
}

/** Least band, and how it widens in air colder than the charts agree on. Source: iso-23537, handbook/heat.md. */
export const LEAST_BAND_K = 4;
const KNOWN_TO_K = ICE_K - 10;
const WIDENS = 0.2;

export function bandOf(comfortK: number): number {
  return LEAST_BAND_K + WIDENS * Math.max(0, KNOWN_TO_K - comfortK);
}

const BASIS: Basis = {
  rule: "sleeper-balance",
  source: "sleeper-balance",
  assumes: [
    "a healthy grown person, dry, fed and rested",
    "skin at 33 °C, nothing gained or lost over the night",
    "the sky is seen from above alone",
  ],
};
