/**
 * How much colder it is above the place of the forecast.
 *
 *   ΔT = −6.5 K per km
 *
 * Shapes   scalars in, scalar out
 * Units    metres above the sea → K, to be added to the forecast
 * Holds    days and windy or cloudy nights; on clear calm nights hollows are colder than slopes (`COLD_POOL_K`)
 * Error    the mean of the standard atmosphere; single nights from +10 (an inversion) to −10 K per km
 * Source   iso-2533 (handbook/shelter.md)
 */
export function lapseK(campElevationM: number, stationElevationM: number): number {
  return -LAPSE_K_PER_M * (campElevationM - stationElevationM);
}

/** Source: iso-2533. */
const LAPSE_K_PER_M = 0.0065;

/**
 * What a hollow may be colder than the forecast on a night like this one: 5 K where it is clear and calm, less by cloud
 * and wind, nothing from 3 m/s in the open on or under a closed sky.
 *
 * Shapes   scalars in, scalar out, ≤ 0
 * Units    cloudRatio [1], windMS in the open [m/s] → K, to be added to the forecast
 * Error    3 to 8 K are told; some sink-holes 26 K
 * Source   cold-pool (handbook/shelter.md)
 */
export function coldPoolK(cloudRatio: number, windMS: number): number {
  const calm = Math.max(0, 1 - windMS / POOL_STIRRED_MS);
  return -POOL_K * (1 - cloudRatio) * calm;
}

const POOL_K = 5;
const POOL_STIRRED_MS = 3;
