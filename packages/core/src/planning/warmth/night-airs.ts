import type { Camp, Night } from "../../plan/camp.ts";
import type { Canopy, NightClock } from "../../plan/night-types.ts";
import { dayTemperature } from "../../shelter/day-temperature.ts";
import { airAtLow, hammockAir, type HammockAir } from "./tonight-air.ts";

/** One hour of the night as a sleeper has it. */
export interface AirHour {
  /** As in the night's clock; "23:00" where there is none. */
  readonly at: string;
  readonly air: HammockAir;
}

/** The night as warmth sees it. */
export interface NightAirs {
  readonly hours: readonly AirHour[];
  /** The coldest hour, and the low of the whole night in its wind and sky. */
  readonly coldest: AirHour;
  /** True where the hours were made from low and high alone. */
  readonly fromLow: boolean;
}

/** From evening to morning, by the night's clock where there is one, else from low and high. */
export function nightAirs({ ground }: Camp, night: Night, clock?: NightClock): NightAirs {
  const canopy = ground?.canopy ?? "wood";
  const hours =
    clock === undefined ? [] : clock.hours.map((hour) => ({ at: hour.at, air: hammockAir(hour, canopy) }));
  const known = hours.length > 0 ? hours : plainHours(night, canopy);
  const [first, ...rest] = known;
  if (first === undefined) throw new Error("a night has hours");
  const coldest = rest.reduce((least, hour) => (hour.air.airK < least.air.airK ? hour : least), first);
  const lowK = Math.min(coldest.air.airK, clock?.lowK ?? night.lowK);
  return {
    hours: known,
    coldest: { ...coldest, air: { ...coldest.air, airK: lowK } },
    fromLow: hours.length === 0,
  };
}

/** Six in the evening to nine in the morning, the sun up from six to six. */
function plainHours(night: Night, canopy: Canopy): readonly AirHour[] {
  const highK = Math.max(night.highK ?? night.lowK + USUAL_RISE_K, night.lowK);
  const at = dayTemperature({ lowK: night.lowK, highK, sunriseH: 6, sunsetH: 18 });
  return Array.from({ length: 16 }, (_, hour) => {
    const clock = String((18 + hour) % 24).padStart(2, "0");
    return { at: `${clock}:00`, air: airAtLow(night, at(18 + hour), canopy) };
  });
}

/** From low to high where the high is not told [K]. Source: house-convention. */
const USUAL_RISE_K = 8;
