import type { Night } from "../../plan/camp.ts";

/** The air of one hour at a hammock, as a balance of heat sees it. */
export interface HammockAir {
  readonly airK: number;
  /** At the hammock's height, among the trees. */
  readonly windMS: number;
  readonly humidityRatio: number;
  /** What an upper side without a tarp sees: sky and crowns together. */
  readonly openK: number;
  /** The same below a tarp. */
  readonly tarpK: number;
}

/** The coldest air of a night known by its low alone. */
export function tonightAir(night: Night): HammockAir {
  return hammockAir({
    airK: night.lowK,
    windMS: hammockWindMS(night),
    humidityRatio: night.humidityRatio,
    skyK: night.lowK - CLEAR_SKY_K * (1 - night.cloudRatio),
  });
}

export interface SkyAir extends Pick<HammockAir, "airK" | "windMS" | "humidityRatio"> {
  readonly skyK: number;
}

/** What is seen from below crowns and tarp: each hides its share of the sky and is as warm as the air, the tarp a little colder. */
export function hammockAir({ skyK, ...air }: SkyAir): HammockAir {
  const skyIsColderK = air.airK - skyK;
  return {
    ...air,
    openK: air.airK - SKY_SHARE * skyIsColderK,
    tarpK: air.airK - TARP_SHARE * skyIsColderK,
  };
}

/** Wind at the hammock: a fifth of the open wind at 10 m, brought there by the log law over open country. */
function hammockWindMS({ windMS, windHeightM }: Night): number {
  const ROUGH_M = 0.05;
  return (WOOD_SHARE * windMS * Math.log(10 / ROUGH_M)) / Math.log(Math.max(windHeightM, 0.5) / ROUGH_M);
}

/** Open wind that is left below closed crowns; 0.1 to 0.3. Source: common-practice, from memory. */
const WOOD_SHARE = 0.2;

/** How much colder than the air a clear sky is [K]; 16 to 25 by the laws there are. Source: berdahl-martin-1984. */
const CLEAR_SKY_K = 20;

/** Shares of the sky's cold that reach an upper side, between crowns and below a tarp. Source: sleeper-balance, estimates. */
const SKY_SHARE = 0.3;
const TARP_SHARE = 0.1;
