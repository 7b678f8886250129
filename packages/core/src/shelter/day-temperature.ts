export interface DayTemperatureInput {
  /** Lowest of the morning after, highest of the day. */
  readonly lowK: number;
  readonly highK: number;
  /** Hours of the local day; sunrise before sunset. */
  readonly sunriseH: number;
  readonly sunsetH: number;
}

/**
 * Air temperature at an hour of the day, from its low and its high.
 *
 *   day, from r + c to s:  T = T_n + (T_x − T_n) sin(π (t − r − c)/(Y + 2a)),  Y = s − r
 *   night, n hours after s: T = T_n + (T_s − T_n) (e^(−b n/Z) − e^(−b))/(1 − e^(−b)),  Z = 24 − Y + c
 *
 * The night of the source leaves e^(−b) of the fall above the low at dawn; here it is stretched so that it comes down
 * to the low, which the forecast promises.
 *
 * Shapes   two temperatures and two hours → a function of the hour (any number; 26 is two in the morning)
 * Units    K, hours
 * Holds    sunrise < sunset, both in 0 to 24; low ≤ high
 * Error    1 to 2 K on fair days; fronts are not in it
 * Source   parton-logan-1981, a = 1.86 h, b = 2.20, c = −0.17 h (handbook/shelter.md)
 */
export function dayTemperature(input: DayTemperatureInput): (hour: number) => number {
  return dayCurve(input, true);
}

/** `toLow` false: the night as the source has it. */
export function dayCurve(
  { lowK, highK, sunriseH, sunsetH }: DayTemperatureInput,
  toLow: boolean,
): (hour: number) => number {
  const dayH = sunsetH - sunriseH;
  const nightH = 24 - dayH + (toLow ? LOW_AFTER_SUNRISE_H : 0);
  const sunK = (hour: number) =>
    lowK +
    (highK - lowK) *
      Math.sin((Math.PI * (hour - sunriseH - LOW_AFTER_SUNRISE_H)) / (dayH + 2 * HIGH_AFTER_NOON_H));
  const residue = toLow ? Math.exp(-DECAY) : 0;
  return (hour) => {
    const day = (((hour - sunriseH - LOW_AFTER_SUNRISE_H) % 24) + 24) % 24;
    const clock = day + sunriseH + LOW_AFTER_SUNRISE_H;
    if (clock <= sunsetH) return sunK(clock);
    const left = (Math.exp((-DECAY * (clock - sunsetH)) / nightH) - residue) / (1 - residue);
    return lowK + (sunK(sunsetH) - lowK) * left;
  };
}

/** Source: parton-logan-1981, air at 1.5 m. */
const HIGH_AFTER_NOON_H = 1.86;
const DECAY = 2.2;
const LOW_AFTER_SUNRISE_H = -0.17;
