import { breathingLoss } from "./breathing-loss.ts";
import { CLO_M2K_PER_W, ICE_K } from "./heat-units.ts";
import { vapourPressurePa } from "./vapour-pressure.ts";

/** One row of the validation table of ISO 7730. */
export interface PmvCase {
  readonly air_c: number;
  readonly radiant_c: number;
  readonly wind_m_s: number;
  readonly humidity: number;
  readonly met: number;
  readonly clo: number;
}

/**
 * Predicted mean vote of ISO 7730, its breath taken from the model under test: the published votes are off where the
 * breath or the pressure of vapour is. The films are the standard's own, from memory.
 */
export function predictedVote({ air_c, radiant_c, wind_m_s, humidity, met, clo }: PmvCase): number {
  const made = met * 58.15;
  const airPa = humidity * vapourPressurePa(ICE_K + air_c);
  const breath = breathingLoss({
    metabolicWM2: made,
    airK: ICE_K + air_c,
    humidityRatio: humidity,
    breath: "room",
  });
  if (!breath.ok) return NaN;
  const worn = clo * CLO_M2K_PER_W;
  const area = worn <= 0.078 ? 1 + 1.29 * worn : 1.05 + 0.645 * worn;
  const outer = (clothC: number) => {
    const air =
      Math.max(2.38 * Math.abs(clothC - air_c) ** 0.25, 12.1 * Math.sqrt(wind_m_s)) * (clothC - air_c);
    return area * (3.96e-8 * ((clothC + 273) ** 4 - (radiant_c + 273) ** 4) + air);
  };
  let [low, high] = [air_c - 30, 45];
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (middle + worn * outer(middle) > 35.7 - 0.028 * made) high = middle;
    else low = middle;
  }
  const skin = 3.05e-3 * (5733 - 6.99 * made - airPa) + 0.42 * (made - 58.15);
  return (0.303 * Math.exp(-0.036 * made) + 0.028) * (made - skin - breath.value.lossWM2 - outer(low));
}
