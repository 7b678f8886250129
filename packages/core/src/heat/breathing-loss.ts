import type { Basis } from "../outcome/basis.ts";
import { refuseAll, succeed, type Outcome } from "../outcome/outcome.ts";
import { ICE_K } from "./heat-units.ts";
import { vapourPressurePa } from "./vapour-pressure.ts";
import { within } from "./within.ts";

export interface BreathingLossInput {
  readonly metabolicWM2: number;
  readonly airK: number;
  readonly humidityRatio: number;
  readonly breath: Breath;
}

/** Breath leaves at 34 °C and 5.87 kPa in rooms, and cooler the colder the air outdoors. */
export type Breath = "room" | "cold";

export interface BreathingLoss {
  readonly dryWM2: number;
  readonly moistWM2: number;
  readonly lossWM2: number;
  readonly basis: Basis;
}

/**
 * Heat that leaves with the breath.
 *
 *   0.0014 M (T_ex − T_a) + 0.0173 M (p_ex − p_a),   p in kPa
 *   room: T_ex = 34 °C, p_ex = 5.87 kPa;   cold: T_ex = 29 + 0.2 T_a, p_ex saturated at T_ex
 *
 * Shapes   scalars in, scalars out
 * Units    metabolicWM2 [W/m²], airK [K], humidityRatio [1] → [W/m²]
 * Holds    10 to 500 W/m², −60 to 50 °C, 0 to 1; anything else is refused by field name
 * Error    a tenth of the loss; of a sleeper 4 to 6 W/m² in all
 * Source   iso-7730 (room), iso-11079 (cold); handbook/heat.md
 */
export function breathingLoss(input: BreathingLossInput): Outcome<BreathingLoss> {
  const { metabolicWM2, airK, humidityRatio, breath } = input;
  const failure = refuseAll([
    ...within("metabolicWM2", metabolicWM2, 10, 500),
    ...within("airK", airK, ICE_K - 60, ICE_K + 50),
    ...within("humidityRatio", humidityRatio, 0, 1),
  ]);
  if (failure !== undefined) return failure;
  const { exhaledK, exhaledPa } = breath === "room" ? ROOM : coldBreath(airK);
  const dryWM2 = 0.0014 * metabolicWM2 * (exhaledK - airK);
  const moistWM2 = 1.73e-5 * metabolicWM2 * (exhaledPa - humidityRatio * vapourPressurePa(airK));
  return succeed({ dryWM2, moistWM2, lossWM2: dryWM2 + moistWM2, basis: BASES[breath] });
}

/** The cold form, of figures known to be in range [W/m²]. */
export function coldBreathLoss(metabolicWM2: number, airK: number, airPa: number): number {
  const { exhaledK, exhaledPa } = coldBreath(airK);
  return metabolicWM2 * (0.0014 * (exhaledK - airK) + 1.73e-5 * (exhaledPa - airPa));
}

const ROOM = { exhaledK: ICE_K + 34, exhaledPa: 5_870 };

function coldBreath(airK: number): { readonly exhaledK: number; readonly exhaledPa: number } {
  const exhaledK = ICE_K + 29 + 0.2 * (airK - ICE_K);
  return { exhaledK, exhaledPa: vapourPressurePa(exhaledK) };
}

const BASES: Readonly<Record<Breath, Basis>> = {
  room: { rule: "breathing-loss", source: "iso-7730", assumes: ["breath leaves at 34 °C, saturated"] },
  cold: {
    rule: "breathing-loss",
    source: "iso-11079",
    assumes: ["breath leaves cooler in cold air, saturated"],
  },
};
