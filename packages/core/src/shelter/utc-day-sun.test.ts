import { describe, expect, it } from "vitest";
import { parseInstant } from "./civil-time.ts";
import { sunAt } from "./solar-position.ts";

/**
 * Sunrise and sunset by the published procedure (spa-2008, appendix A.2), on our sun: hour angles and times as shares of
 * the day of universal time, taken modulo 1, one interpolation step over the days before and after.
 */
function byTheReport(midnight: number, latDeg: number, lonDeg: number) {
  const places = [-1, 0, 1].map((day) => rightAscension(midnight + day - DYNAMICAL));
  const [before, today, after] = places;
  if (before === undefined || today === undefined || after === undefined) throw new Error("three days");
  const lat = latDeg * DEG;
  const sidereal = siderealDeg(midnight);
  const transit = (today.alphaDeg - lonDeg - sidereal) / 360;
  const low = Math.sin(-0.8333 * DEG);
  const hour0 =
    Math.acos((low - Math.sin(lat) * Math.sin(today.delta)) / (Math.cos(lat) * Math.cos(today.delta))) / DEG;
  const settled = (share: number) => {
    const m = share - Math.floor(share);
    const n = m + DYNAMICAL;
    const alpha = between(n, turn(today.alphaDeg - before.alphaDeg), turn(after.alphaDeg - today.alphaDeg));
    const delta = today.delta + between(n, today.delta - before.delta, after.delta - today.delta);
    const h = turn(sidereal + 360.985647 * m + lonDeg - (today.alphaDeg + alpha)) * DEG;
    const high = Math.asin(Math.sin(lat) * Math.sin(delta) + Math.cos(lat) * Math.cos(delta) * Math.cos(h));
    return m + (high - low) / (2 * Math.PI * Math.cos(delta) * Math.cos(lat) * Math.sin(h));
  };
  return { sunrise: settled(transit - hour0 / 360), sunset: settled(transit + hour0 / 360) };
}

const DEG = Math.PI / 180;
/** Of the case: 67 s. */
const DYNAMICAL = 67 / 86400;

/** Right ascension by sidereal time, mean time and the equation of time, so that nothing but our own sun is asked. */
function rightAscension(day: number) {
  const { declination, equationDays } = sunAt(day);
  const share = day + 0.5 - Math.floor(day + 0.5);
  return { alphaDeg: siderealDeg(day) - (share + equationDays - 0.5) * 360, delta: declination };
}

/** Mean sidereal time at Greenwich (IAU 1982) [°]. */
function siderealDeg(day: number): number {
  return 280.46061837 + 360.98564736629 * day;
}

function between(n: number, a: number, b: number): number {
  return (n * (a + b + (b - a) * n)) / 2;
}

function turn(deg: number): number {
  return deg - 360 * Math.round(deg / 360);
}

describe("the published case by its own procedure", () => {
  const { sunrise, sunset } = byTheReport(parseInstant("2003-10-17T00:00Z") ?? 0, 39.742476, -105.1786);
  it("has its sunset in the first hour of the UTC day, the evening of 16 October there: 17:20:19", () => {
    expect(Math.abs(sunset * 86400 - (20 * 60 + 19))).toBeLessThan(5);
  });
  it("has its sunrise on 17 October there: 06:12:43", () => {
    expect(Math.abs(sunrise * 86400 - ((13 * 60 + 12) * 60 + 43))).toBeLessThan(5);
  });
});
