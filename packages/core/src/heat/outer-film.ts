import { GRAVITY_M_S2 } from "../quantity/constants.ts";
import { airAt } from "./air-film.ts";
import { crossFlowNusselt } from "./cross-flow.ts";
import { nusseltOf, prandtlPart } from "./rising-air.ts";

/** What lies round a sleeper: air, its wind, and the temperature that is seen there. */
export interface Surroundings {
  readonly airK: number;
  readonly windMS: number;
  readonly radiantK: number;
}

/** Heat from an outer surface to what lies round it [W/m²], by the temperature of the surface [K]. */
export type OuterFilm = (surfaceK: number) => number;

/** Width of a sleeper across the wind [m]. Source: common-practice, a breadth of shoulders. */
export const SLEEPER_WIDTH_M = 0.55;

/** Emissivity of cloth. Source: iso-11079 writes 0.95, sheets of nylon lie at 0.9; common-practice. */
export const CLOTH_EMISSIVITY = 0.9;

/** Stefan's and Boltzmann's constant [W/m²K⁴]. Source: si-units. */
export const RADIATION_W_M2K4 = 5.670374e-8;

/**
 * Heat from the outside of a bag, quilt or underblanket: wind across a cylinder and air that rises of itself, joined by
 * cubes, and radiation.
 *
 *   q(T_s) = (h_wind³ + h_rising³)^⅓ (T_s − T_a) + ε σ (T_s⁴ − T_r⁴)
 *
 * Shapes   surroundings in, a function of one scalar out
 * Units    [K], [m/s] → [W/m²]
 * Holds    −60 to 40 °C, wind 0 to 30 m/s; rises with the surface's temperature, and with wind wherever the surface is
 *          warmer than the air
 * Error    20 %, of a resistance that is a tenth of the whole where the insulation is good
 * Source   churchill-bernstein-1977, churchill-chu-1975 (handbook/heat.md)
 */
export function outerFilm({ airK, windMS, radiantK }: Surroundings): OuterFilm {
  const { kinematicM2S, conductivityWMK, prandtl } = airAt(airK);
  const perNusselt = conductivityWMK / SLEEPER_WIDTH_M;
  const reynolds = (windMS * SLEEPER_WIDTH_M) / kinematicM2S;
  const windWM2K = windMS > 0 ? perNusselt * crossFlowNusselt(reynolds, prandtl) : 0;
  const windCubed = windWM2K * windWM2K * windWM2K;
  const part = prandtlPart(prandtl);
  const rayleighPerK = (GRAVITY_M_S2 * SLEEPER_WIDTH_M ** 3 * prandtl) / (airK * kinematicM2S ** 2);
  const seen = CLOTH_EMISSIVITY * RADIATION_W_M2K4;
  const seenWM2 = seen * radiantK ** 4;
  return (surfaceK) => {
    const warmerK = surfaceK - airK;
    const rising = perNusselt * nusseltOf(rayleighPerK * Math.abs(warmerK), part);
    const squared = surfaceK * surfaceK;
    return Math.cbrt(windCubed + rising * rising * rising) * warmerK + seen * squared * squared - seenWM2;
  };
}
