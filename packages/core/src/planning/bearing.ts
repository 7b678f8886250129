/** Direction of a step on the ground, clockwise from north, 0 to 2π [rad]. Units: eastM, northM [m]. */
export function bearing(eastM: number, northM: number): number {
  return turn(Math.atan2(eastM, northM));
}

/** The same direction said the other way about. */
export function reversed(bearingRad: number): number {
  return turn(bearingRad + Math.PI);
}

function turn(angle: number): number {
  const inTurn = angle % FULL_TURN;
  return inTurn < 0 ? inTurn + FULL_TURN : inTurn;
}

const FULL_TURN = 2 * Math.PI;
