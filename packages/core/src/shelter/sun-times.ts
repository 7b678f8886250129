import type { Basis } from "../outcome/basis.ts";
import { refuseAll, succeed, type Outcome, type Refusal } from "../outcome/outcome.ts";
import { isoInstant, parseDate } from "./civil-time.ts";
import { sunAt } from "./solar-position.ts";

export interface SunInput {
  readonly latDeg: number;
  readonly lonDeg: number;
  /** Civil date, "2027-05-14". */
  readonly date: string;
  readonly elevationM: number;
}

/** Days since 2000-01-01T12:00Z, null where there is none on that day. */
export interface SunDay {
  readonly sunrise: number | null;
  readonly sunset: number | null;
  readonly dawn: number | null;
  readonly dusk: number | null;
  readonly noon: number;
  /** True where the sun is up at noon. */
  readonly up: boolean;
}

export interface Sun {
  /** ISO 8601, UTC, null where there is none. */
  readonly sunrise: string | null;
  readonly sunset: string | null;
  readonly dawn: string | null;
  readonly dusk: string | null;
  readonly basis: Basis;
}

/**
 * Sunrise, sunset and dusk of one civil day, in local mean solar time.
 *
 *   cos H = (cos z − sin φ sin δ)/(cos φ cos δ);  z = 90.833° for rise and set, 96° for dawn and dusk
 *
 * Shapes   a place and a date → instants
 * Units    degrees, metres → ISO 8601 UTC to the second
 * Holds    1900 to 2100; the horizon is level, height above the sea does not move it
 * Error    a minute at middling latitudes, more where the sun grazes the horizon
 * Source   meeus-1998, checked by spa-2008 (handbook/shelter.md)
 */
export function sun(input: SunInput): Outcome<Sun> {
  const failure = refuseAll(faults(input));
  if (failure !== undefined) return failure;
  const day = sunDay(input);
  const told = (instant: number | null) => (instant === null ? null : isoInstant(instant));
  return succeed({
    sunrise: told(day.sunrise),
    sunset: told(day.sunset),
    dawn: told(day.dawn),
    dusk: told(day.dusk),
    basis: BASIS,
  });
}

/** The same as instants, for a place and date known to be usable. */
export function sunDay({ latDeg, lonDeg, date }: Omit<SunInput, "elevationM">): SunDay {
  const midday = (parseDate(date) ?? Number.NaN) - lonDeg / 360;
  const noon = midday - sunAt(midday).equationDays;
  const at = (zenithDeg: number, way: -1 | 1) => crossing(noon, latDeg, zenithDeg, way);
  return {
    sunrise: at(RISE_DEG, -1),
    sunset: at(RISE_DEG, 1),
    dawn: at(DUSK_DEG, -1),
    dusk: at(DUSK_DEG, 1),
    noon,
    up: isUp(noon, latDeg),
  };
}

function isUp(noon: number, latDeg: number): boolean {
  const { declination } = sunAt(noon);
  return Math.cos((latDeg * Math.PI) / 180 - declination) > Math.cos((RISE_DEG * Math.PI) / 180);
}

/** Each step takes the declination and the noon of the instant found before. */
function crossing(noon: number, latDeg: number, zenithDeg: number, way: -1 | 1): number | null {
  const latitude = (latDeg * Math.PI) / 180;
  const upwards = Math.cos((zenithDeg * Math.PI) / 180);
  const noonEquation = sunAt(noon).equationDays;
  let instant = noon;
  for (let step = 0; step < STEPS; step++) {
    const { declination, equationDays } = sunAt(instant);
    const cosine =
      (upwards - Math.sin(latitude) * Math.sin(declination)) / (Math.cos(latitude) * Math.cos(declination));
    if (!(cosine >= -1 && cosine <= 1)) return null;
    instant = noon + noonEquation - equationDays + (way * Math.acos(cosine)) / (2 * Math.PI);
  }
  return instant;
}

const STEPS = 5;
/** Upper rim on a level horizon, the air's bending in it. */
const RISE_DEG = 90.833;
/** Civil twilight. */
const DUSK_DEG = 96;

function faults({ latDeg, lonDeg, date, elevationM }: SunInput): Refusal[] {
  const checks: readonly (readonly [boolean, string, unknown, string])[] = [
    [Math.abs(latDeg) <= 90, "latDeg", latDeg, "−90 to 90 degrees north"],
    [Math.abs(lonDeg) <= 180, "lonDeg", lonDeg, "−180 to 180 degrees east"],
    [parseDate(date) !== undefined, "date", date, "a date from 1900 to 2100, like 2027-05-14"],
    [elevationM >= -500 && elevationM <= 9000, "elevationM", elevationM, "−500 to 9000 m above the sea"],
  ];
  return checks.flatMap(([met, field, got, need]) => (met ? [] : [{ field, got, need }]));
}

const BASIS: Basis = {
  rule: "sun",
  source: "meeus-1998",
  assumes: [
    "a level horizon without hills or trees, and no dip for height",
    "the upper rim at 90.833° from straight up, dusk at 96°",
    "the day runs from midnight to midnight of local mean solar time",
  ],
};
