import type { Night } from "../../plan/camp.ts";
import type { Canopy } from "../../plan/night-types.ts";
import { dewPointKOf } from "../../shelter/dew-point.ts";
import { clothTemperatureK, skyTemperatureK } from "../../shelter/sky-temperature.ts";
import { windAtHeight } from "../../shelter/wind-profile.ts";

/** The air of one hour at a hammock, as a balance of heat sees it. */
export interface HammockAir {
  readonly airK: number;
  /** At the hammock's height. */
  readonly windMS: number;
  readonly humidityRatio: number;
  /** What an upper side sees: sky and crowns, or a tarp below them. */
  readonly openK: number;
  readonly tarpK: number;
}

/** The coldest air of a night known by its low alone. */
export function tonightAir(night: Night, canopy: Canopy = "wood"): HammockAir {
  return airAtLow(night, night.lowK, canopy);
}

/** The same night at another temperature. */
export function airAtLow(night: Night, airK: number, canopy: Canopy): HammockAir {
  const humidityRatio = Math.min(Math.max(night.humidityRatio, LEAST_HUMIDITY), 1);
  return hammockAir(
    {
      airK,
      humidityRatio,
      windMS: windAtHeight({
        windMS: night.windMS,
        fromM: night.windHeightM,
        heightM: HAMMOCK_M,
        surrounding: canopy,
      }),
      skyK: skyTemperatureK(airK, dewPointKOf(airK, humidityRatio), night.cloudRatio),
    },
    canopy,
  );
}

export interface SkyAir extends Pick<HammockAir, "airK" | "windMS" | "humidityRatio"> {
  readonly skyK: number;
}

/** What is seen from below crowns and tarp: crowns are as warm as the air, the tarp's cloth a little colder. */
export function hammockAir({ skyK, ...air }: SkyAir, canopy: Canopy): HammockAir {
  const share = SKY_SHARE[canopy];
  const openK = mix(share, skyK, air.airK);
  const clothK = clothTemperatureK(air.airK, skyK, air.windMS, share);
  return { ...air, openK, tarpK: mix(TARP_SHARE, clothK, openK) };
}

function mix(share: number, a: number, b: number): number {
  return share * a + (1 - share) * b;
}

/** Height of a hammock [m]; the driest air the dew point is taken of. Source: house-convention. */
const HAMMOCK_M = 1;
const LEAST_HUMIDITY = 0.05;

/** Share of what an upper side sees that is sky, and tarp. Source: sleeper-balance, estimates. */
const SKY_SHARE: Readonly<Record<Canopy, number>> = { wood: 0.3, open: 0.9 };
const TARP_SHARE = 0.9;
