import { bracketedRoot } from "../numeric/bracketed-root.ts";
import type { OuterFilm, Surroundings } from "./outer-film.ts";

export interface HalfFlow {
  /** Through the insulation and out [W/m²]. */
  readonly flowWM2: number;
  /** Outside of the insulation [K]. */
  readonly surfaceK: number;
  readonly iterations: number;
}

/**
 * Heat through one half of a sleeper's insulation: what comes through it is what leaves its outside.
 *
 *   (T_skin − T_s) / R = q(T_s)
 *
 * Shapes   scalars and one function in, scalars out
 * Units    insulationM2KPerW [m²K/W], [K] → [W/m²]
 * Holds    R from 0, skin warmer than air and than what is seen; one root, as the left falls and the right rises
 * Error    rounding; what the film itself is off by stands there
 * Source   sleeper-balance (handbook/heat.md)
 */
export function halfFlow(
  insulationM2KPerW: number,
  skinK: number,
  film: OuterFilm,
  { airK, radiantK }: Pick<Surroundings, "airK" | "radiantK">,
): HalfFlow {
  if (insulationM2KPerW < LEAST_M2K_PER_W) return { flowWM2: film(skinK), surfaceK: skinK, iterations: 0 };
  const amiss = (surfaceK: number) => film(surfaceK) - (skinK - surfaceK) / insulationM2KPerW;
  const { x: surfaceK, iterations } = bracketedRoot(amiss, Math.min(airK, radiantK), skinK, PRECISION);
  return { flowWM2: film(surfaceK), surfaceK, iterations };
}

/** Less than this is none: a thousandth of a sheet of paper. Source: house-convention. */
const LEAST_M2K_PER_W = 1e-6;

/** Of a surface's temperature [1]. */
const PRECISION = 1e-12;
