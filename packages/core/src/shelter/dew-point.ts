import type { Basis } from "../outcome/basis.ts";
import { refuseAll, succeed, type Outcome } from "../outcome/outcome.ts";

export interface DewPointInput {
  readonly airK: number;
  /** Relative humidity over water, above 0 and up to 1. */
  readonly humidityRatio: number;
}

export interface DewPoint {
  readonly dewPointK: number;
  readonly basis: Basis;
}

/**
 * Temperature at which air of this humidity begins to leave dew.
 *
 *   γ = ln h + a t/(b + t),  dew point = b γ/(a − γ);  a = 17.62, b = 243.12 °C, over water also below 0 °C
 *
 * Shapes   scalars in, scalar out
 * Units    airK [K], humidityRatio [1] → dewPointK [K]
 * Holds    −45 to 60 °C, humidity above 0 and up to 1
 * Error    0.02 K against a public psychrometric library between 0 and 30 °C; frost points lie up to 2 K higher
 * Source   magnus-wmo-8 (handbook/shelter.md)
 */
export function dewPoint({ airK, humidityRatio }: DewPointInput): Outcome<DewPoint> {
  const failure = refuseAll([
    ...(airK >= COLDEST_K && airK <= WARMEST_K
      ? []
      : [{ field: "airK", got: airK, need: "air from −45 to 60 °C, in kelvins" }]),
    ...(humidityRatio > 0 && humidityRatio <= 1
      ? []
      : [{ field: "humidityRatio", got: humidityRatio, need: "more than 0 and at most 1" }]),
  ]);
  if (failure !== undefined) return failure;
  return succeed({ dewPointK: dewPointKOf(airK, humidityRatio), basis: BASIS });
}

/** The same without a guard, for air and humidity known to be usable. */
export function dewPointKOf(airK: number, humidityRatio: number): number {
  const celsius = airK - ICE_K;
  const gamma = Math.log(humidityRatio) + (A * celsius) / (B + celsius);
  return ICE_K + (B * gamma) / (A - gamma);
}

/** Humidity of air that keeps its dew point while its temperature changes; 1 where dew falls. */
export function humidityAt(airK: number, dewPointK: number): number {
  const exponent = (kelvin: number) => (A * (kelvin - ICE_K)) / (B + kelvin - ICE_K);
  return Math.min(1, Math.exp(exponent(dewPointK) - exponent(airK)));
}

/** Source: magnus-wmo-8. */
const A = 17.62;
const B = 243.12;
/** 0 °C [K], exact by definition. */
const ICE_K = 273.15;
const COLDEST_K = 228.15;
const WARMEST_K = 333.15;

const BASIS: Basis = {
  rule: "dew-point",
  source: "magnus-wmo-8",
  assumes: ["saturation over water, also below 0 °C", "air at about sea level"],
};
