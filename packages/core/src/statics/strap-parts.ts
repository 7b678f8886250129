import { EYE_M, KNOT_M, OWN_EYE_OVERLAP_M, STRAP_OVERLAP_M, TAIL_M, WRAPS } from "./hang-constants.ts";
import type { HangEnd, HangInput, StrapParts } from "./hang-types.ts";

type Suspended = Pick<HangInput, "suspension">;

/**
 * One end of a suspension by its parts.
 *
 *   webbing:         turns × girth + knot + tail + bark to hammock
 *   eye to eye:      girth + overlap, each eye half the overlap off the bark
 *   through its eye: girth + overlap, the other end off the bark by the overlap less the eye
 *
 * A tree strap longer than that comes the further off the bark, and the sling is set the shorter.
 *
 * Shapes   one suspension, one trunk, one length bark to hammock → five lengths
 * Units    [m]
 * Holds    any lengths above 0; a sling that would have to be shorter than nothing is told as 0
 * Error    a strap lies on a round trunk; knots and overlaps by a hand's breadth
 * Source   common-practice (handbook/statics.md)
 */
export function strapParts({ suspension }: Suspended, { dbhM }: HangEnd, strapLengthM: number): StrapParts {
  const girthM = Math.PI * dbhM;
  const { type, wraps = WRAPS, throughOwnEye = false, connectorM = 0 } = suspension;
  if (type === "tied-webbing") {
    const [roundTrunkM, tieM] = [wraps * girthM, KNOT_M + TAIL_M];
    return { roundTrunkM, tieM, offBarkM: strapLengthM - connectorM, connectorM, slingM: 0 };
  }
  const tieM = throughOwnEye ? OWN_EYE_OVERLAP_M : STRAP_OVERLAP_M;
  const spareM = Math.max(tieM, (suspension.ownedM ?? 0) - girthM);
  const offBarkM = Math.min(strapLengthM, throughOwnEye ? spareM - EYE_M : spareM / 2);
  const slingM = Math.max(0, strapLengthM - offBarkM - connectorM);
  return { roundTrunkM: girthM, tieM, offBarkM, connectorM, slingM };
}

/** Webbing to bring: strap, turns, knot and tail. A sling is bought as it is: then the strap round the tree. */
export function webbingOf(input: Suspended, end: HangEnd, strapLengthM: number): number {
  const { roundTrunkM, tieM, offBarkM } = strapParts(input, end, strapLengthM);
  return roundTrunkM + tieM + (input.suspension.type === "tied-webbing" ? offBarkM : 0);
}

/** The longest that webbing as long as there is lets bark to hammock be at one trunk; no bound for slings [m]. */
export function longestOwnedM({ suspension }: Suspended, end: HangEnd): number {
  const { type, ownedM, connectorM = 0 } = suspension;
  if (type !== "tied-webbing" || ownedM === undefined) return Infinity;
  const { roundTrunkM, tieM } = strapParts({ suspension }, end, 0);
  return ownedM - roundTrunkM - tieM + connectorM;
}
