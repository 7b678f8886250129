import type { Basis } from "../outcome/basis.ts";
import { refuse, refuseAll, succeed, type Outcome } from "../outcome/outcome.ts";
import { coldBreathLoss } from "./breathing-loss.ts";
import { ICE_K } from "./heat-units.ts";
import type { SleepState } from "./sleep-states.ts";
import { vapourPressurePa } from "./vapour-pressure.ts";
import { within } from "./within.ts";

export interface RequiredInsulationInput extends Omit<SleepState, "storeWM2"> {
  readonly airK: number;
  readonly humidityRatio: number;
}

export interface RequiredInsulation {
  /** Skin to air, all of it: what is worn or lain in and the air about it. */
  readonly totalM2KPerW: number;
  readonly breathWM2: number;
  readonly sweatWM2: number;
  /** Through the insulation. */
  readonly dryWM2: number;
  readonly basis: Basis;
}

/**
 * Insulation from skin to air, boundary layer included, that keeps a body in balance.
 *
 *   M = breath + sweat + (T_skin − T_a) / R,   sweat = w (p_skin − p_a) / (R · 0.06/0.38)
 *   R = [T_skin − T_a + w (p_skin − p_a) / (0.06/0.38)] / (M − breath)
 *
 * Shapes   scalars in, scalars out
 * Units    metabolicWM2 [W/m²], skinK, airK [K], ratios [1] → [m²K/W], [W/m²]
 * Holds    20 to 500 W/m², skin 15 to 40 °C, air −60 to 40 °C and below the skin, ratios 0 to 1; anything else is
 *          refused by field name
 * Error    equals the total insulation of ISO 11079 within 1 %: that writes sweat over IREQ + Ia, this over R
 * Source   iso-11079 (handbook/heat.md)
 */
export function requiredInsulation(input: RequiredInsulationInput): Outcome<RequiredInsulation> {
  const { metabolicWM2, skinK, airK, humidityRatio, wetnessRatio } = input;
  const failure = refuseAll([
    ...within("metabolicWM2", metabolicWM2, 20, 500),
    ...within("skinK", skinK, ICE_K + 15, ICE_K + 40),
    ...within("airK", airK, ICE_K - 60, ICE_K + 40),
    ...within("humidityRatio", humidityRatio, 0, 1),
    ...within("wetnessRatio", wetnessRatio, 0, 1),
  ]);
  if (failure !== undefined) return failure;
  if (!(airK < skinK)) return refuse("airK", airK, "below the skin's temperature");
  const balance = balanceAt({ ...input, storeWM2: 0 }, airK, humidityRatio);
  return succeed({ ...balance, basis: BASIS });
}

/** The same of a state, of figures known to be in range. */
export function balanceAt(
  state: SleepState,
  airK: number,
  humidityRatio: number,
): Omit<RequiredInsulation, "basis"> {
  const airPa = humidityRatio * vapourPressurePa(airK);
  const breathWM2 = coldBreathLoss(state.metabolicWM2, airK, airPa);
  const drivesK = state.skinK - airK;
  const sweatK = (state.wetnessRatio * (vapourPressurePa(state.skinK) - airPa)) / VAPOUR_PA_PER_K;
  const totalM2KPerW = (drivesK + sweatK) / (state.metabolicWM2 + state.storeWM2 - breathWM2);
  return { totalM2KPerW, breathWM2, sweatWM2: sweatK / totalM2KPerW, dryWM2: drivesK / totalM2KPerW };
}

/** Vapour pressure that counts as one kelvin of temperature [Pa/K]: 0.06 clothing vapour, 0.38 its index. Source: iso-11079. */
const VAPOUR_PA_PER_K = 1000 * (0.06 / 0.38);

const BASIS: Basis = {
  rule: "required-insulation",
  source: "iso-11079",
  assumes: ["a body in balance, nothing stored or lost over time", "vapour passes as through usual clothes"],
};
