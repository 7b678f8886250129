import type { Basis } from "../outcome/basis.ts";
import { refuse, succeed, type Outcome } from "../outcome/outcome.ts";

export interface DropSpeedInput {
  readonly diameterM: number;
}

export interface DropSpeed {
  readonly speedMS: number;
  readonly basis: Basis;
}

/**
 * How fast a drop of water falls through still air.
 *
 *   straight lines between the 26 measured speeds
 *
 * Shapes   scalar in, scalar out
 * Units    diameterM [m] → speedMS [m/s]
 * Holds    0.1 to 6.5 mm, the measured range; larger drops break up. Air at 20 °C and 1013 hPa
 * Error    exact at the rows, which are printed to 0.01 m/s; between them below 0.5 %
 * Source   gunn-kinzer-1949 (handbook/shelter.md)
 */
export function dropSpeed({ diameterM }: DropSpeedInput): Outcome<DropSpeed> {
  if (!(diameterM >= SMALLEST_M * (1 - SLACK) && diameterM <= LARGEST_M * (1 + SLACK))) {
    return refuse("diameterM", diameterM, "0.1 to 6.5 mm, in metres");
  }
  return succeed({ speedMS: fallSpeedMS(diameterM * MM), basis: BASIS });
}

/**
 * The same for every diameter in millimetres: below the measured range as the square of the diameter (Stokes), above
 * it as the largest drop.
 */
export function fallSpeedMS(diameterMm: number): number {
  const first = MEASURED[0];
  if (diameterMm <= first[0]) return first[1] * (Math.max(0, diameterMm) / first[0]) ** 2;
  let below: readonly [number, number] = first;
  for (const row of MEASURED) {
    if (diameterMm <= row[0]) {
      const share = (diameterMm - below[0]) / (row[0] - below[0]);
      return share >= 0 ? below[1] + share * (row[1] - below[1]) : row[1];
    }
    below = row;
  }
  return below[1];
}

const MM = 1000;
const SLACK = 1e-9;
const SMALLEST_M = 1e-4;
const LARGEST_M = 6.5e-3;

/** Diameter [mm], speed [m/s]. Source: gunn-kinzer-1949, table 2. */
const MEASURED: readonly [readonly [number, number], ...(readonly [number, number])[]] = [
  [0.1, 0.27],
  [0.2, 0.72],
  [0.3, 1.17],
  [0.4, 1.62],
  [0.5, 2.06],
  [0.6, 2.47],
  [0.7, 2.87],
  [0.8, 3.27],
  [0.9, 3.67],
  [1, 4.03],
  [1.2, 4.64],
  [1.4, 5.17],
  [1.6, 5.65],
  [1.8, 6.09],
  [2, 6.49],
  [2.4, 7.27],
  [2.8, 7.82],
  [3.2, 8.26],
  [3.6, 8.6],
  [4, 8.83],
  [4.4, 8.98],
  [4.8, 9.07],
  [5.2, 9.12],
  [5.6, 9.16],
  [6, 9.17],
  [6.5, 9.18],
];

const BASIS: Basis = {
  rule: "drop-speed",
  source: "gunn-kinzer-1949",
  assumes: ["still air at 20 °C and sea level", "the drop has fallen far enough to keep its speed"],
};
