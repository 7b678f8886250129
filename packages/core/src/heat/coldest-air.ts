import { bracketedRoot, type Root } from "../numeric/bracketed-root.ts";
import { ICE_K } from "./heat-units.ts";
import { balanceAt } from "./required-insulation.ts";
import type { SleepState } from "./sleep-states.ts";

/**
 * Coldest air in which an insulation keeps a sleeper in a state.
 *
 *   R_required(T) = R
 *
 * Shapes   a state and two scalars in, a root out
 * Units    totalM2KPerW [m²K/W], skin to air → [K]
 * Holds    any R that serves somewhere from −120 to 32 °C; what it needs falls as the air warms, so there is one root.
 *          Warmer than it: 32 °C; colder: −120 °C
 * Error    1e-9 K of the model's own; the model's band is told by `sleeperBalance`
 * Source   sleeper-balance (handbook/heat.md)
 */
export function coldestAir(state: SleepState, totalM2KPerW: number, humidityRatio: number): Root {
  const short = (airK: number) => balanceAt(state, airK, humidityRatio).totalM2KPerW - totalM2KPerW;
  const warmestK = Math.min(WARMEST_K, state.skinK - 1);
  if (short(warmestK) >= 0) return { x: warmestK, iterations: 0, converged: true };
  if (short(COLDEST_K) <= 0) return { x: COLDEST_K, iterations: 0, converged: true };
  return bracketedRoot(short, COLDEST_K, warmestK, PRECISION);
}

const WARMEST_K = ICE_K + 32;
const COLDEST_K = ICE_K - 120;
const PRECISION = 1e-13;
