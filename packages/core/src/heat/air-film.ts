import { ICE_K } from "./heat-units.ts";

/** Air as a film sees it. */
export interface Air {
  /** [m²/s] */
  readonly kinematicM2S: number;
  /** [W/mK] */
  readonly conductivityWMK: number;
  readonly prandtl: number;
}

/**
 * Air at one atmosphere.
 *
 *   ν = 1.338e-5 (T/273.15)^1.75,   k = 0.0241 (T/273.15)^0.85,   Pr = 0.71
 *
 * Units    airK [K]
 * Holds    −60 to 50 °C near sea level; at 2000 m films are about 8 % thinner in effect
 * Error    1 %
 * Source   air-properties (handbook/heat.md)
 */
export function airAt(airK: number): Air {
  const ratio = airK / ICE_K;
  return { kinematicM2S: 1.338e-5 * ratio ** 1.75, conductivityWMK: 0.0241 * ratio ** 0.85, prandtl: 0.71 };
}
