import type { HangLimits } from "../../statics/hang-types.ts";
import type { Adjustment } from "./adjust-types.ts";
import type { Round } from "./likely-state.ts";
import type { Told } from "./one-instruction.ts";

/** So many instructions are told before anybody has measured an angle. Source: house-convention. */
const MOST_BLIND = 2;

/** A move that a tape hardly tells from none [cm]. Source: common-practice. */
const LITTLE_CM = 3;

/**
 * Whether the angles are to be measured before anything more is moved: where nobody ever measured one, it may well lie
 * past its limit, and two instructions were followed already, or one was and the next is worth hardly more than the tape.
 * Seat and foot end alone can be put right for ever while the straps come flatter and flatter.
 */
export function anglesFirst(
  { instruction }: Told,
  rounds: readonly Round[],
  band: Adjustment["band"],
  { angleMin, angleMax }: HangLimits,
): boolean {
  const followed = rounds.length - 1;
  const isBlind = followed >= MOST_BLIND || (followed > 0 && (instruction?.cm ?? Infinity) <= LITTLE_CM);
  if (instruction === undefined || !isBlind) return false;
  return (["head.angle", "foot.angle"] as const).some((angle) => {
    const isFound = rounds.some(({ evidence }) => evidence.some(({ of }) => of === angle));
    return !isFound && (band[angle][0] < angleMin || band[angle][1] > angleMax);
  });
}
