import { byRule, compare, kept, type Finding } from "../../outcome/finding.ts";
import type { Night } from "../../plan/camp.ts";
import type { ClockHour, SunKind } from "../../plan/night-types.ts";

export interface NightCase {
  readonly night: Night;
  readonly hours: readonly ClockHour[];
  /** The hardest of the night, in the open. */
  readonly gustMS: number;
  /** Hours of the forecast where none of them is of this night; else 0. */
  readonly hoursElsewhere: number;
  readonly coldPoolK: number;
  readonly kind?: SunKind;
}

/** What is to be said of the night itself: gust against the stop line, hollow, dew, thunder, light. */
export function nightFindings(found: NightCase): Finding[] {
  const { night, hours, gustMS, hoursElsewhere, coldPoolK, kind } = found;
  return [
    ...(night.stopGustMS === undefined ? [] : [gust(gustMS, night.stopGustMS)]),
    ...(hoursElsewhere > 0 ? [elsewhere(hoursElsewhere)] : []),
    ...(kind === undefined || kind === "night" ? [] : [noDark(kind)]),
    ...(coldPoolK < 0 ? [coldPool(-coldPoolK)] : []),
    ...(hours.length === 0 ? [] : [condensation(hours)]),
    ...(night.thunder === undefined ? [] : [thunder(THUNDER[night.thunder])]),
  ];
}

/** What every finding of the night is: about the whole camp, and no more than so much. */
const OF_THE_CAMP = { subject: "camp", sense: "at-most" } as const;

/** The gust in the open, which the crowns feel, against the leader's own stop line. */
function gust(demand: number, limit: number): Finding {
  return compare({
    rule: "night.gust",
    source: "camp-file",
    ...OF_THE_CAMP,
    demand,
    limit,
    unit: "m/s",
  });
}

/** A forecast hour by hour of another night says nothing of this one. */
function elsewhere(demand: number): Finding {
  return kept(
    {
      rule: "night.hours-elsewhere",
      source: "camp-file",
      ...OF_THE_CAMP,
      demand,
      limit: 0,
      unit: "1",
    },
    "look-again",
  );
}

function coldPool(demand: number): Finding {
  return kept(
    {
      rule: "night.cold-pool",
      source: "cold-pool",
      ...OF_THE_CAMP,
      demand,
      limit: 1,
      unit: "K",
    },
    "look-again",
  );
}

/** Hours in which dew is likely or certain under a tarp. Not a fault: it says to leave an end open. */
function condensation(hours: readonly ClockHour[]): Finding {
  const demand = hours.filter((hour) => hour.condensation !== "unlikely").length;
  return byRule(
    {
      rule: "night.condensation",
      source: "berdahl-martin-1984",
      ...OF_THE_CAMP,
      demand,
      limit: hours.length,
      unit: "1",
    },
    "clear",
  );
}

const THUNDER = { none: 0, possible: 1, likely: 2 } as const;

/** 0 none, 1 possible, 2 likely. */
function thunder(demand: number): Finding {
  return kept(
    {
      rule: "night.thunder",
      source: "thunder-30-30",
      ...OF_THE_CAMP,
      demand,
      limit: 0,
      unit: "1",
    },
    "look-again",
  );
}

/** Told, no fault: 1 where the sun does not rise, 0 where it does not get dark. */
function noDark(kind: SunKind): Finding {
  return byRule(
    {
      rule: "night.no-dark",
      source: "meeus-1998",
      ...OF_THE_CAMP,
      demand: kind === "no-day" ? 1 : 0,
      limit: 0,
      unit: "1",
    },
    kind === "no-day" ? "look-again" : "clear",
  );
}
