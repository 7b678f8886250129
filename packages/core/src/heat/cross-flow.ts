/**
 * Heat from a cylinder across a wind, as a Nusselt number.
 *
 *   Nu = 0.3 + 0.62 Re^½ Pr^⅓ / [1 + (0.4/Pr)^⅔]^¼ · [1 + (Re/282000)^⅝]^⅘
 *
 * Units    Reynolds and Prandtl numbers [1] → Nusselt number [1]
 * Holds    Re · Pr above 0.2, to Re 10⁷; at no wind it gives its own floor, 0.3
 * Error    20 % of measurements on smooth cylinders; a sleeper is none
 * Source   churchill-bernstein-1977 (handbook/heat.md)
 */
export function crossFlowNusselt(reynolds: number, prandtl: number): number {
  const laminar =
    (0.62 * Math.sqrt(reynolds) * Math.cbrt(prandtl)) / (1 + (0.4 / prandtl) ** (2 / 3)) ** 0.25;
  return 0.3 + laminar * (1 + (reynolds / 282_000) ** 0.625) ** 0.8;
}
