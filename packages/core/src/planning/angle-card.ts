import { degrees, radians, type Radians } from "../quantity/angle.ts";

/** One line of the card: a strap angle, and how far the strap falls over so much level run. */
export interface AngleCardLine {
  readonly angle: Radians;
  /** Fall of the strap over one metre of level run [m]. */
  readonly fallM: number;
}

/**
 * A strap's angle without a phone: how far it falls below level over one metre of level run.
 *
 *   fall = tan θ × 1 m
 *
 * Shapes   four angles → four lines, flattest first
 * Units    angles below level [rad] → fallM [m]
 * Holds    straps that hang straight, so loaded ones
 * Error    exact; a card read to 1 cm tells the angle to about half a degree
 * Source   common-practice for the choice of angles: 30° is the aim, 25 to 35° the range, 20° too flat
 */
export function angleCard(): readonly AngleCardLine[] {
  return CARD_ANGLES.map((angle) => ({ angle, fallM: Math.tan(angle) }));
}

/** The angle of a strap that falls so far over so much level run. */
export function angleOfFall(fallM: number, runM: number): Radians {
  return radians(Math.atan(fallM / runM));
}

const CARD_ANGLES = [20, 25, 30, 35].map(degrees);
