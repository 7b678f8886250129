export interface WornWind {
  readonly windMS: number;
  readonly walkMS: number;
}

/**
 * What wind and walking leave of the air about a body, and of all it wears, as fractions of what still air leaves.
 *
 *   air:  exp(−0.533 (v − 0.15) + 0.069 (v − 0.15)² − 0.462 w + 0.201 w²)
 *   worn: exp(−0.281 (v − 0.15) + 0.044 (v − 0.15)² − 0.492 w + 0.176 w²)
 *
 * Units    windMS, walkMS [m/s] → [1]
 * Holds    v 0.15 to 3.5 m/s, w 0 to 1.2 m/s; beyond them the value of the edge
 * Error    5 % for clothes of 0.6 to 1.4 clo; told beside `windThroughRatio`, which goes further
 * Source   iso-9920 (handbook/heat.md)
 */
export function wornWindRatio({ windMS, walkMS }: WornWind, of: "air" | "worn"): number {
  const v = Math.min(Math.max(windMS, 0.15), 3.5) - 0.15;
  const w = Math.min(Math.max(walkMS, 0), 1.2);
  const power =
    of === "air"
      ? -0.533 * v + 0.069 * v ** 2 - 0.462 * w + 0.201 * w ** 2
      : -0.281 * v + 0.044 * v ** 2 - 0.492 * w + 0.176 * w ** 2;
  return Math.exp(power);
}
