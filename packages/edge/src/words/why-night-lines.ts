import type { BerthTarp, BerthWarmth, PlannedBerth, StoreFit, WetRates } from "@nightspan/core";

/** The figures behind one berth's plain answers: water by the hour, its rose, degrees with their band, heat above and below. */
export function whyNightLines({ tarp, warmth }: PlannedBerth): readonly string[] {
  return [...(tarp === undefined ? [] : wetLines(tarp)), ...(warmth === undefined ? [] : heatLines(warmth))];
}

/** The air that each "enough" of people fitted out from the store is of. */
export function whyFitLines(fit: Pick<StoreFit, "airK"> | undefined): readonly string[] {
  return fit?.airK === undefined
    ? []
    : [`Warmth is judged by the hardest air at the hammocks: ${celsius(fit.airK)}.`];
}

function wetLines({ item, wet, canopyDrip, rose, options, windMS, gustMS }: BerthTarp): readonly string[] {
  const wind = `wind ${windMS.toFixed(1)}\u00a0m/s at the tarp, ${gustMS.toFixed(1)}\u00a0m/s in the gust`;
  return [
    `${item}: ${litres(wet)} in tonight's rain, ${wind}.`,
    `Drip from the leaves after rain: ${litres(canopyDrip)}.`,
    ...(rose === undefined || rose.length === 0
      ? []
      : [`As pitched by a longer search, by where the wind comes from: ${eightPoints(rose)}.`]),
    ...(options === undefined || options.length < 2
      ? []
      : [`Pitches that no other beats in every respect: ${options.length}; this is one of them.`]),
  ];
}

function litres({ hammockM3S, sleeperM3S, underM3S }: WetRates): string {
  return `${perHour(hammockM3S)} on the hammock, ${perHour(sleeperM3S)} on the sleeper, ${perHour(underM3S)} on the under layer`;
}

function perHour(valueM3S: number): string {
  const millilitres = valueM3S * 3.6e9;
  return millilitres < 1000
    ? `${millilitres.toFixed(1)}\u00a0mL/h`
    : `${(millilitres / 1000).toFixed(1)}\u00a0L/h`;
}

const POINTS = ["N", "NE", "E", "SE", "S", "SW", "W", "NW"] as const;

type Rose = NonNullable<BerthTarp["rose"]>;

/** All the water that arrives with the wind from each of eight points, by the spoke that is nearest to it. */
function eightPoints(rose: Rose): string {
  return POINTS.map((point, index) => {
    const [first, ...rest] = rose;
    if (first === undefined) return "";
    const off = ({ windFromRad }: Rose[number]) =>
      Math.abs(Math.cos(windFromRad - (index * Math.PI) / 4) - 1);
    const { wet } = rest.reduce((best, next) => (off(next) < off(best) ? next : best), first);
    return `${point} ${perHour(wet.hammockM3S + wet.sleeperM3S + wet.underM3S)}`;
  }).join(", ");
}

/** Nothing of this is told of anybody under 16, for whom no balance holds. */
function heatLines(warmth: BerthWarmth): readonly string[] {
  if (warmth.by !== "balance") return [];
  const { comfortK, limitK, bandK, topWM2, bottomWM2, totalM2KPerW } = warmth;
  const band = `± ${bandK.toFixed(0)}\u00a0°C`;
  return [
    `Comfort down to ${celsius(comfortK)} ${band}, limit ${celsius(limitK)} ${band}.`,
    `Heat lost in the coldest hour: ${topWM2.toFixed(0)}\u00a0W/m² above, ${bottomWM2.toFixed(0)}\u00a0W/m² below; ${totalM2KPerW.toFixed(2)}\u00a0m²K/W all in all.`,
  ];
}

function celsius(kelvin: number): string {
  return `${(kelvin - 273.15).toFixed(0).replace("-", "\u2212")}\u00a0°C`;
}
