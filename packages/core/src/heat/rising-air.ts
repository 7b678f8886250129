/**
 * Heat from a level cylinder to air that rises of itself, as a Nusselt number.
 *
 *   Nu = {0.60 + 0.387 Ra^⅙ / [1 + (0.559/Pr)^(9/16)]^(8/27)}²
 *
 * Units    Rayleigh and Prandtl numbers [1] → Nusselt number [1]
 * Holds    Ra to 10¹²
 * Error    20 % of measurements on smooth cylinders
 * Source   churchill-chu-1975 (handbook/heat.md)
 */
export function risingAirNusselt(rayleigh: number, prandtl: number): number {
  return nusseltOf(rayleigh, prandtlPart(prandtl));
}

/** The same with what the Prandtl number divides by at hand, for many surfaces in one air. */
export function nusseltOf(rayleigh: number, part: number): number {
  const root = 0.6 + (0.387 * Math.cbrt(Math.sqrt(rayleigh))) / part;
  return root * root;
}

/** What the Prandtl number divides the rising part by. */
export function prandtlPart(prandtl: number): number {
  return (1 + (0.559 / prandtl) ** (9 / 16)) ** (8 / 27);
}
