import type { Basis } from "../outcome/basis.ts";
import { refuseAll, succeed, type Outcome, type Refusal } from "../outcome/outcome.ts";
import { fallingRain, speedAtShare } from "./falling-rain.ts";

export interface RainReachInput {
  /** At the height of the gap. */
  readonly windMS: number;
  readonly rainMmH: number;
  /** Upright gap below the edge. */
  readonly gapM: number;
}

export interface RainReach {
  /** Half the water stays within it; 5 % and 95 % of it within the others. */
  readonly reachM: number;
  readonly reachP05M: number;
  readonly reachP95M: number;
  readonly basis: Basis;
}

/**
 * How far rain drifts in under an edge.
 *
 *   reach = gap × wind / fall speed
 *
 * Shapes   scalars in, scalars out
 * Units    windMS [m/s], rainMmH [mm/h], gapM [m] → metres
 * Holds    wind ≥ 0, gap ≥ 0, rain > 0; gap or wind 0 gives 0
 * Error    table of speeds: below 0.5 %. Steady even wind; gusts, lulls and eddies at the edge are not in it
 * Source   rain-shade with best-1950 and gunn-kinzer-1949 (handbook/shelter.md)
 */
export function rainReach({ windMS, rainMmH, gapM }: RainReachInput): Outcome<RainReach> {
  const failure = refuseAll([
    ...notNegative("windMS", windMS, "a wind of 0 or more, in m/s"),
    ...(rainMmH > 0 && rainMmH <= MOST_RAIN
      ? []
      : [{ field: "rainMmH", got: rainMmH, need: "more than 0 and at most 400 mm/h" }]),
    ...notNegative("gapM", gapM, "a gap of 0 or more, in metres"),
  ]);
  if (failure !== undefined) return failure;
  const rain = fallingRain(rainMmH);
  const within = (share: number) => (gapM * windMS) / speedAtShare(rain, 1 - share);
  return succeed({ reachM: within(0.5), reachP05M: within(0.05), reachP95M: within(0.95), basis: BASIS });
}

/** Heavier rain has not been measured to follow these sizes. */
const MOST_RAIN = 400;

function notNegative(field: string, got: number, need: string): Refusal[] {
  return got >= 0 && got < Infinity ? [] : [{ field, got, need }];
}

const BASIS: Basis = {
  rule: "rain-reach",
  source: "best-1950",
  assumes: [
    "drop sizes after Best (1950), speeds after Gunn and Kinzer (1949)",
    "water is weighted as it falls through a level plane",
    "the wind is even and steady from the edge to where the drop lands",
  ],
};
