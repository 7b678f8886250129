/**
 * Force on the Beaufort scale of a wind at 10 m over open ground.
 *
 * Shapes   scalar in, a whole number 0 to 12 out
 * Units    windMS [m/s]
 * Holds    wind ≥ 0
 * Error    a wind is rounded to 0.1 m/s first, as the scale is printed
 * Source   beaufort (handbook/shelter.md)
 */
export function beaufort(windMS: number): number {
  const rounded = Math.round(windMS * 10) / 10;
  return LEAST_MS.filter((least) => rounded >= least).length;
}

/** Least speed of force 1, 2, … 12 [m/s]. */
const LEAST_MS = [0.3, 1.6, 3.4, 5.5, 8, 10.8, 13.9, 17.2, 20.8, 24.5, 28.5, 32.7] as const;
