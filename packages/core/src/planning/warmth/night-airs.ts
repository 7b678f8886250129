import { halves } from "../../heat/halves.ts";
import type { Camp, Night } from "../../plan/camp.ts";
import type { Canopy, NightClock } from "../../plan/night-types.ts";
import { DEFAULTS } from "../../plan/defaults.ts";
import { dayTemperature } from "../../shelter/day-temperature.ts";
import { balancedK } from "./kit-halves.ts";
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
  /** The hour that takes most heat from a usual sleeper; of those nearly as cold as the low; at the low. */
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
  const airK = Math.min(coldest.air.airK, clock?.lowK ?? night.lowK);
  const lowest = { ...coldest, air: { ...coldest.air, airK } };
  return { hours: known, coldest: hardest(known, lowest), fromLow: hours.length === 0 };
}

/**
 * A windier hour that is a little warmer may take more heat than the coldest one: its wind and sky count, at the lowest
 * air, so that no kit is judged less carefully than by the coldest hour.
 */
function hardest(hours: readonly AirHour[], lowest: AirHour): AirHour {
  let most = { hour: lowest, lossWM2: usualLoss(lowest.air) };
  for (const { at, air } of hours) {
    const warmerK = air.airK - lowest.air.airK;
    if (warmerK > NEARLY_AS_COLD_K) continue;
    const lossWM2 = usualLoss(air);
    const asCold = { ...air, airK: lowest.air.airK, openK: air.openK - warmerK, tarpK: air.tarpK - warmerK };
    if (lossWM2 > most.lossWM2) most = { hour: { at, air: asCold }, lossWM2 };
  }
  return most.hour;
}

/** Hours that are warmer by more are never taken for the hardest [K]. Source: house-convention. */
const NEARLY_AS_COLD_K = 2;

/** What a sleeper in middling kit of usual cloth loses, under a tarp [W/m²]. */
function usualLoss({ airK, windMS, humidityRatio, tarpK }: HammockAir): number {
  const cooled = balancedK(airK);
  const { topWM2, bottomWM2 } = halves({
    night: { airK: cooled, windMS, humidityRatio, radiantK: Math.min(tarpK, cooled) },
    top: {
      insulationM2KPerW: USUAL_M2K_PER_W,
      permeabilityMS: DEFAULTS["kit[].permeability_over"].value / 1000,
    },
    bottom: {
      insulationM2KPerW: USUAL_M2K_PER_W,
      permeabilityMS: DEFAULTS["kit[].permeability_under"].value / 1000,
      coveredRatio: 1,
    },
    topShareRatio: TOP_SHARE,
  });
  return TOP_SHARE * topWM2 + (1 - TOP_SHARE) * bottomWM2;
}

const TOP_SHARE = DEFAULTS["warmth.top_share"].value;
/** A three-season bag. Source: common-practice. */
const USUAL_M2K_PER_W = 0.8;

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
