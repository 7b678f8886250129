import type { Camp, Night } from "../../plan/camp.ts";
import type { Canopy, ClockHour, CondensationRisk, NightHour } from "../../plan/night-types.ts";
import { isoInstant, parseDate, parseInstant } from "../../shelter/civil-time.ts";
import { dayTemperature } from "../../shelter/day-temperature.ts";
import { dewPointKOf, humidityAt } from "../../shelter/dew-point.ts";
import { clothTemperatureK, skyTemperatureK } from "../../shelter/sky-temperature.ts";
import { windAtHeight } from "../../shelter/wind-profile.ts";
import { hoursTonight } from "./hours-tonight.ts";
import type { NightSun } from "./night-sun.ts";

export interface NightHoursInput {
  readonly camp: Camp;
  readonly night: Night;
  readonly sun: NightSun;
  /** Added to every temperature of the forecast: height above the station, and the hollow [K]. */
  readonly addedK: number;
}

/**
 * The night hour by hour as it comes to be at the berths: from two hours before sunset to one after sunrise, on the hour.
 * The forecast's own hours where it has them, straight between them; else the run from its low and its high. The dew point
 * stays what the humidity makes it in the coldest air.
 */
export function nightHours({ camp, night, sun, addedK }: NightHoursInput): ClockHour[] {
  const canopy = camp.ground?.canopy ?? "wood";
  const stated = hoursTonight(camp).flatMap((hour) => {
    const instant = parseInstant(hour.at);
    return instant === undefined ? [] : [{ instant, hour }];
  });
  const airAt = stated.length > 0 ? between(stated) : fromLowAndHigh(night, sun, camp);
  const dewPointK = dewPointKOf(night.lowK + addedK, Math.max(LEAST_HUMIDITY, night.humidityRatio));
  return wholeHours(sun).map((instant) => {
    const said = nearest(stated, instant);
    return clockHour({ instant, airK: airAt(instant) + addedK, dewPointK, said, night, canopy });
  });
}

const LEAST_HUMIDITY = 0.05;

interface StatedHour {
  readonly instant: number;
  readonly hour: NightHour;
}

/** Whole hours UTC of the night [days]. */
function wholeHours({ from, to }: NightSun): number[] {
  const first = Math.floor(from * 24 + 1e-6);
  const count = Math.max(1, Math.ceil(to * 24 - 1e-6) - first + 1);
  return Array.from({ length: Math.min(count, MOST_HOURS) }, (_, index) => (first + index) / 24);
}

const MOST_HOURS = 30;

function between(stated: readonly StatedHour[]): (instant: number) => number {
  return (instant) => {
    const after = stated.find((one) => one.instant >= instant);
    const before = stated.findLast((one) => one.instant <= instant);
    if (before === undefined || after === undefined || after.instant === before.instant)
      return (before ?? after)?.hour.airK ?? Number.NaN;
    const share = (instant - before.instant) / (after.instant - before.instant);
    return before.hour.airK + share * (after.hour.airK - before.hour.airK);
  };
}

/** The hour of the forecast that began last, no more than an hour and a half off. */
function nearest(stated: readonly StatedHour[], instant: number): NightHour | undefined {
  const began = stated.findLast((one) => one.instant <= instant + 1e-6) ?? stated[0];
  return began !== undefined && Math.abs(began.instant - instant) <= 1.5 / 24 ? began.hour : undefined;
}

/** Hours are counted in local mean solar time, in which the sun is highest about noon. */
function fromLowAndHigh(night: Night, sun: NightSun, camp: Camp): (instant: number) => number {
  const highK = Math.max(night.lowK, night.highK ?? night.lowK + USUAL_RISE_K);
  const at = dayTemperature({ lowK: night.lowK, highK, sunriseH: sun.sunriseH, sunsetH: sun.sunsetH });
  const noon = (parseDate(camp.date ?? "") ?? 0) - (camp.place?.lonDeg ?? 0) / 360;
  return (instant) => at(12 + (instant - noon) * 24);
}

/** From low to high where the high is not told [K]. Source: house-convention. */
const USUAL_RISE_K = 8;

interface HourParts {
  readonly instant: number;
  readonly airK: number;
  readonly dewPointK: number;
  readonly said: NightHour | undefined;
  readonly night: Night;
  readonly canopy: Canopy;
}

function clockHour({ instant, airK, dewPointK: nightDewK, said, night, canopy }: HourParts): ClockHour {
  const openMS = said?.windMS ?? night.windMS;
  const dewPointK = Math.min(nightDewK, airK);
  const windMS = windAtHeight({
    windMS: openMS,
    fromM: night.windHeightM,
    heightM: HAMMOCK_M,
    surrounding: canopy,
  });
  const skyK = skyTemperatureK(airK, dewPointK, night.cloudRatio);
  const clothK = clothTemperatureK(airK, skyK, windMS, SKY_SHARE[canopy]);
  return {
    at: isoInstant(instant),
    airK,
    dewPointK,
    humidityRatio: humidityAt(airK, dewPointK),
    condensation: risk(clothK - dewPointK),
    clothK,
    windMS,
    gustMS: Math.max(openMS, said?.gustMS ?? night.gustMS),
    rainMmH: said?.rainMmH ?? night.rainMmH,
    skyK,
  };
}

const HAMMOCK_M = 1;
/** Share of the sky that a tarp sees past crowns. Estimates. */
const SKY_SHARE: Readonly<Record<Canopy, number>> = { wood: 0.3, open: 0.9 };

/** By how far the cloth is above the dew point; breath lifts the dew point under a tarp by a degree or two. */
function risk(aboveK: number): CondensationRisk {
  if (aboveK <= 0) return "certain";
  return aboveK < BREATH_K ? "likely" : "unlikely";
}

const BREATH_K = 1.5;
