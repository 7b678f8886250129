import { bracketedRoot } from "../numeric/bracketed-root.ts";
import { ICE_K } from "./heat-units.ts";
import { outerFilm } from "./outer-film.ts";
import { balanceAt } from "./required-insulation.ts";
import { SKIN_K, SLEEP_STATES, type SleepStateKey } from "./sleep-states.ts";

/**
 * Insulation of one layer from the lowest temperature that its maker gives it, taken as what it must be for the standard
 * person if the other half were as good.
 *
 *   R = R_required(T_label) − (T_skin − T_label − q R) / q,   q = (T_skin − T_label) / R_required
 *
 * The second term is the air outside, found from the flow that passes through it.
 *
 * Units    labelK [K] → [m²K/W]
 * Holds    −40 to 25 °C, else the edge; never below 0
 * Error    no standard says how such labels are made: ± 6 K
 * Source   sleeper-balance (handbook/heat.md)
 */
export function layerM2KPerW(labelK: number, of: Exclude<SleepStateKey, "extreme">): number {
  const airK = Math.min(Math.max(labelK, ICE_K - 40), ICE_K + 25);
  const total = balanceAt(SLEEP_STATES[of], airK, 0.5).totalM2KPerW;
  const flowWM2 = (SKIN_K - airK) / total;
  return Math.max(0, (SKIN_K - surfaceFor(flowWM2, airK)) / flowWM2);
}

/** Temperature at which a surface in still air gives off so much [K]. */
function surfaceFor(flowWM2: number, airK: number): number {
  const film = outerFilm({ airK, radiantK: airK, windMS: STILL_MS });
  if (film(SKIN_K) <= flowWM2) return SKIN_K;
  return bracketedRoot((surfaceK) => film(surfaceK) - flowWM2, airK, SKIN_K, PRECISION).x;
}

const PRECISION = 1e-12;
const STILL_MS = 0.3;
