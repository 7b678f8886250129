import type { Camp, DefaultUsed, Night } from "../../plan/camp.ts";
import { DEFAULTS, type DefaultKey } from "../../plan/defaults.ts";
import type { NightClock, SetUpOrder } from "../../plan/night-types.ts";
import { beaufort } from "../../shelter/beaufort.ts";
import { coldPoolK, lapseK } from "../../shelter/lapse.ts";
import { arriveBy, setUpOf } from "./arrive-by.ts";
import { nightFindings } from "./night-findings.ts";
import { nightHours } from "./night-hours.ts";
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
  const order = orderOf(night);
  const kind = sun?.told?.kind;
  const clock: NightClock = {
    ...(sun?.told === undefined ? {} : { sun: sun.told }),
    hours,
    lowK: Math.min(night.lowK + addedK, ...hours.map(({ airK }) => airK)),
    ...added,
    ...(sun?.darkAt === undefined ? {} : { arriveBy: arriveBy(sun.darkAt, berths, setUp) }),
    order,
    steps: SET_UP_STEPS[order],
    windForce: beaufort(night.windMS),
    gustForce: beaufort(Math.max(night.gustMS, ...hours.map(({ gustMS }) => gustMS))),
    findings: nightFindings({
      night,
      hours,
      coldPoolK: added.coldPoolK,
      ...(kind === undefined ? {} : { kind }),
    }),
  };
  const used = [
    ...(clock.arriveBy === undefined ? [] : silent),
    ...(night.highK === undefined && night.hours === undefined && hours.length > 0 ? ["night.high_c"] : []),
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

/** Roof first where rain is forecast at any hour. */
function orderOf({ rainMmH, hours = [] }: Night): SetUpOrder {
  return rainMmH > 0 || hours.some((hour) => (hour.rainMmH ?? 0) > 0) ? "foul" : "fair";
}
