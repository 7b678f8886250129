import type { Camp } from "../../plan/camp.ts";
import { findNightClock } from "../shelter/night-clock.ts";
import { nightAirs } from "./night-airs.ts";
import type { HammockAir } from "./tonight-air.ts";

/**
 * The coldest air of a camp's night: what the store deals by and what berths are judged by, so that both speak of the same
 * night. Nothing without a night.
 */
export function coldestAirOf(camp: Camp): HammockAir | undefined {
  const { night, sleepers } = camp;
  if (night === undefined) return undefined;
  return nightAirs(camp, night, findNightClock(camp, sleepers.length)?.clock).coldest.air;
}
