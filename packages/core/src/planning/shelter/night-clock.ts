import type { Camp, DefaultUsed, Night } from "../../plan/camp.ts";
import { DEFAULTS, type DefaultKey } from "../../plan/defaults.ts";
import type { NightClock, NightHour, SetUpOrder } from "../../plan/night-types.ts";
import { beaufort } from "../../shelter/beaufort.ts";
import { coldPoolK, lapseK } from "../../shelter/lapse.ts";
import { arriveBy, setUpOf } from "./arrive-by.ts";
import { nightFindings } from "./night-findings.ts";
import { nightHours } from "./night-hours.ts";
import { hoursTonight } from "./hours-tonight.ts";
import { findNightSun } from "./night-sun.ts";
import { SET_UP_STEPS } from "./set-up-steps.ts";

export interface ClockedNight {
  readonly clock: NightClock;
  readonly defaultsUsed: readonly DefaultUsed[];
}

/** The night of a camp by the clock, with `berths` to set up; nothing where the camp says nothing of the night. */
export function findNightClock(camp: Camp, berths: number): ClockedNight | undefined {
  const { night } = camp;
  if (night === undefined) return undefined;
  const added = { lapseK: lapseOf(camp, night), coldPoolK: poolOf(camp, night) };
  const addedK = added.lapseK + added.coldPoolK;
  const sun = findNightSun(camp);
  const hours = sun === undefined ? [] : nightHours({ camp, night, sun, addedK });
  const { setUp, silent } = setUpOf(camp);
  const tonight = hoursTonight(camp);
  const gustMS = mostGust(night, tonight);
  const order = orderOf(night, tonight);
  const kind = sun?.told?.kind;
  const clock: NightClock = {
    ...(sun?.told === undefined ? {} : { sun: sun.told }),
    hours,
    lowK: Math.min(night.lowK, ...tonight.map(({ airK }) => airK)) + addedK,
    ...added,
    ...(sun?.darkAt === undefined ? {} : { arriveBy: arriveBy(sun.darkAt, berths, setUp) }),
    order,
    steps: SET_UP_STEPS[order],
    windForce: beaufort(night.windMS),
    gustForce: beaufort(gustMS),
    findings: nightFindings({
      night,
      hours,
      gustMS,
      hoursElsewhere: tonight.length === 0 ? (night.hours?.length ?? 0) : 0,
      coldPoolK: added.coldPoolK,
      ...(kind === undefined ? {} : { kind }),
    }),
  };
  const used = [
    ...(clock.arriveBy === undefined ? [] : silent),
    ...(night.highK === undefined && tonight.length === 0 && hours.length > 0 ? ["night.high_c"] : []),
  ];
  return {
    clock,
    defaultsUsed: used.filter(isDefault).map((field) => ({ field, value: DEFAULTS[field].value, for: [] })),
  };
}

function isDefault(field: string): field is DefaultKey {
  return Object.hasOwn(DEFAULTS, field);
}

function lapseOf({ place }: Camp, { stationElevationM }: Night): number {
  const campM = place?.elevationM;
  return campM === undefined || stationElevationM === undefined ? 0 : lapseK(campM, stationElevationM);
}

function poolOf({ ground }: Camp, night: Night): number {
  return ground?.hollow === true ? coldPoolK(night.cloudRatio, night.windMS) : 0;
}

/** Roof first where rain is forecast at any hour, and where thunder leaves it in doubt. */
function orderOf({ rainMmH, thunder = "none" }: Night, hours: readonly NightHour[]): SetUpOrder {
  const isRainy = rainMmH > 0 || hours.some((hour) => (hour.rainMmH ?? 0) > 0);
  return isRainy || thunder !== "none" ? "foul" : "fair";
}

/** The hardest gust in the open at any hour of the night [m/s]. */
function mostGust(night: Night, hours: readonly NightHour[]): number {
  return Math.max(night.gustMS, ...hours.map(({ windMS = 0, gustMS = 0 }) => Math.max(windMS, gustMS)));
}
