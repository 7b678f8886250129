import { ICE_K } from "./heat-units.ts";

/**
 * Pressure of water vapour over water at saturation, as the balances of heat write it.
 *
 *   ln(p / 133.3 Pa) = 18.6686 − 4030.183 / (t + 235),   t in °C
 *
 * Units    airK [K] → [Pa]
 * Holds    −60 to 50 °C; also below 0 °C over water, as the standards do
 * Error    0.4 % of tabled values above 0 °C
 * Source   iso-11079 (handbook/heat.md)
 */
export function vapourPressurePa(airK: number): number {
  return 133.3 * Math.exp(18.6686 - 4030.183 / (airK - ICE_K + 235));
}
