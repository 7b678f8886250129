/**
 * What wind leaves of an insulation by blowing through and under its cloth.
 *
 *   f = 0.54 e^(−0.15 v) p^0.075 − 0.06 ln p + 0.5, at most 1;   v from 0.4 to 18 m/s, p from 1 to 1000 l/m²s
 *
 * Below 0.4 m/s it goes straight to 1 at no wind, so that still air leaves the insulation as it was measured.
 *
 * Units    windMS [m/s], permeabilityMS [m/s] (0.001 is 1 l/m²s) → [1]
 * Holds    0 to 30 m/s and any permeability; what lies outside the formula's range is taken at its edge
 * Error    fitted to clothes that are worn; for quilts and underblankets an analogy
 * Source   iso-11079 (handbook/heat.md)
 */
export function windThroughRatio(windMS: number, permeabilityMS: number): number {
  const litres = clamp(1000 * permeabilityMS, 1, 1000);
  if (windMS >= CALMEST_MS) return atWind(Math.min(windMS, STRONGEST_MS), litres);
  return 1 - (1 - atWind(CALMEST_MS, litres)) * (windMS / CALMEST_MS);
}

const CALMEST_MS = 0.4;
const STRONGEST_MS = 18;

function atWind(windMS: number, litres: number): number {
  return Math.min(1, 0.54 * Math.exp(-0.15 * windMS) * litres ** 0.075 - 0.06 * Math.log(litres) + 0.5);
}

function clamp(value: number, low: number, high: number): number {
  return Math.min(Math.max(value, low), high);
}
