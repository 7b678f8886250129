import type { Camp } from "../../plan/camp.ts";
import type { SunKind, SunTimes } from "../../plan/night-types.ts";
import { dateLater, isoInstant, parseDate } from "../../shelter/civil-time.ts";
import { sunDay, type SunDay } from "../../shelter/sun-times.ts";
import { dateLongitudeDeg } from "./date-longitude.ts";

/** The sun of one night, in instants (days since 2000-01-01T12:00Z). */
export interface NightSun {
  /** Absent where place or date are not known. */
  readonly told?: SunTimes;
  /** When it is dark, or the sun sets where it does not get dark; absent where neither happens. */
  readonly darkAt?: number;
  readonly sunset?: number;
  /** Span of the night's clock. */
  readonly from: number;
  readonly to: number;
  /** Hours of local mean solar time between which the day's temperature runs. */
  readonly sunriseH: number;
  readonly sunsetH: number;
}

/** Nothing where nobody knows the date. */
export function findNightSun({ date, place }: Camp): NightSun | undefined {
  const day = parseDate(date ?? "");
  if (date === undefined || day === undefined) return undefined;
  const lonDeg = place === undefined ? 0 : dateLongitudeDeg(place);
  const noon = day - lonDeg / 360;
  const plain = { from: noon + 6 / 24, to: noon + 21 / 24, sunriseH: 6, sunsetH: 18 };
  if (place === undefined) return plain;
  const evening = sunDay({ latDeg: place.latDeg, lonDeg, date });
  const morning = sunDay({ latDeg: place.latDeg, lonDeg, date: dateLater(date, 1) });
  const told = sunTimes(evening, morning);
  const darkAt = evening.dusk ?? evening.sunset;
  const { sunset } = evening;
  const { sunrise } = morning;
  const hours = {
    sunriseH: 12 + ((sunrise ?? noon + 0.75) - noon - 1) * 24,
    sunsetH: 12 + ((sunset ?? noon + 0.25) - noon) * 24,
  };
  return {
    ...plain,
    told,
    ...(darkAt === null ? {} : { darkAt }),
    ...(sunset === null ? {} : { sunset, from: sunset - 2 / 24 }),
    ...(sunrise === null ? {} : { to: sunrise + 1 / 24 }),
    ...(hours.sunriseH < hours.sunsetH ? hours : {}),
  };
}

function sunTimes(evening: SunDay, morning: SunDay): SunTimes {
  const told = (instant: number | null) => (instant === null ? null : isoInstant(instant));
  return {
    kind: kindOf(evening),
    sunset: told(evening.sunset),
    dusk: told(evening.dusk),
    dawn: told(morning.dawn),
    sunrise: told(morning.sunrise),
  };
}

function kindOf({ sunset, dusk, up }: SunDay): SunKind {
  if (sunset === null) return up ? "no-night" : "no-day";
  return dusk === null ? "no-dusk" : "night";
}
