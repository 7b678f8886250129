import { ICE_K } from "./heat-units.ts";

/** How a sleeper is taken to lie there: heat made, skin kept, and what the body may cool by. */
export interface SleepState {
  readonly metabolicWM2: number;
  readonly skinK: number;
  /** Heat taken from the body's own store [W/m²]. */
  readonly storeWM2: number;
  /** Share of the skin that is wet. */
  readonly wetnessRatio: number;
}

export type SleepStateKey = "comfort" | "limit" | "extreme";

/** The same in comfort and in limit [K]. Source: iso-23537, from memory; trials tell of 32 to 34 °C (lin-2013). */
export const SKIN_K = ICE_K + 33;

/**
 * The three states of the bag standard. Comfort: the standard woman relaxed, asleep. Limit: the standard man curled up,
 * its heat from memory. Extreme: the woman shivering a little, with 40 Wh/m² gone from her body in six hours.
 * Source: iso-8996 (40 W/m² asleep), iso-23537 (limit from memory), iso-11079 (40 Wh/m², wetness 0.06).
 */
export const SLEEP_STATES: Readonly<Record<SleepStateKey, SleepState>> = {
  comfort: { metabolicWM2: 40, skinK: SKIN_K, storeWM2: 0, wetnessRatio: 0.06 },
  limit: { metabolicWM2: 47.5, skinK: SKIN_K, storeWM2: 0, wetnessRatio: 0.06 },
  extreme: { metabolicWM2: 56, skinK: ICE_K + 30, storeWM2: 40 / 6, wetnessRatio: 0.06 },
};
