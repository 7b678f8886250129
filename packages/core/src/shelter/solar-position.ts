export interface SolarPosition {
  /** Seen from the place, air's bending included, from straight up [rad]. */
  readonly zenithRad: number;
  /** Clockwise from north [rad]. */
  readonly azimuthRad: number;
  readonly declinationRad: number;
  /** True solar time less mean solar time [days]. */
  readonly equationDays: number;
}

/**
 * Where the sun stands.
 *
 *   mean longitude, anomaly and equation of the centre in powers of the century; nutation's first term; hour angle
 *   from the equation of time; parallax 8.8″ and bending 1.02′/tan(h + 10.3/(h + 5.11)) at 1010 hPa and 10 °C
 *
 * Shapes   an instant and a place → angles
 * Units    days since 2000-01-01T12:00Z, degrees north and east → rad
 * Holds    1900 to 2100
 * Error    0.01° against the test case of the solar position algorithm
 * Source   meeus-1998, checked by spa-2008 (handbook/shelter.md)
 */
export function solarPosition(dayJ2000: number, latDeg: number, lonDeg: number): SolarPosition {
  const { declination, equationDays } = sunAt(dayJ2000);
  const dayShare = dayJ2000 + 0.5 - Math.floor(dayJ2000 + 0.5);
  const hour = (dayShare + equationDays - 0.5) * 2 * Math.PI + lonDeg * DEG;
  const latitude = latDeg * DEG;
  const upwards =
    Math.sin(latitude) * Math.sin(declination) + Math.cos(latitude) * Math.cos(declination) * Math.cos(hour);
  const elevation = Math.asin(Math.max(-1, Math.min(1, upwards)));
  const seen = elevation - PARALLAX * Math.cos(elevation) + bending(elevation);
  const south = Math.sin(latitude) * Math.cos(hour) - Math.cos(latitude) * Math.tan(declination);
  const azimuth = Math.atan2(Math.sin(hour), south) + Math.PI;
  return { zenithRad: Math.PI / 2 - seen, azimuthRad: azimuth, declinationRad: declination, equationDays };
}

const DEG = Math.PI / 180;
const PARALLAX = (8.794 / 3600) * DEG;

/** Bending of the air [rad]; none for a sun well below the horizon. Source: meeus-1998, chapter 16. */
function bending(elevation: number): number {
  const high = elevation / DEG;
  if (high < -1) return 0;
  return (1.02 / 60 / Math.tan((high + 10.3 / (high + 5.11)) * DEG)) * DEG;
}

/** Declination and equation of time alone: what sunrise and sunset rest on. */
export function sunAt(dayJ2000: number): { readonly declination: number; readonly equationDays: number } {
  const century = (dayJ2000 + DYNAMICAL_DAYS) / 36525;
  const longitude = 280.46646 + century * (36000.76983 + century * 0.0003032);
  const anomaly = (357.52911 + century * (35999.05029 - century * 0.0001537)) * DEG;
  const centre =
    (1.914602 - century * (0.004817 + century * 0.000014)) * Math.sin(anomaly) +
    (0.019993 - century * 0.000101) * Math.sin(2 * anomaly) +
    0.000289 * Math.sin(3 * anomaly);
  const node = (125.04 - 1934.136 * century) * DEG;
  const seen = (longitude + centre - 0.00569 - 0.00478 * Math.sin(node)) * DEG;
  const tilt = (23.439291 - century * 0.0130042 + 0.00256 * Math.cos(node)) * DEG;
  const ascension = Math.atan2(Math.cos(tilt) * Math.sin(seen), Math.cos(seen));
  const declination = Math.asin(Math.sin(tilt) * Math.sin(seen));
  const nutation = -0.00478 * Math.sin(node) * Math.cos(tilt) * DEG;
  const ahead = (longitude - 0.0057183) * DEG - ascension + nutation;
  return { declination, equationDays: wrapped(ahead) / (2 * Math.PI) };
}

/** Dynamical time is ahead of the clock by about 70 s in our time. */
const DYNAMICAL_DAYS = 70 / 86400;

function wrapped(angle: number): number {
  return angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));
}
