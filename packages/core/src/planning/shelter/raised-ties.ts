import { STRAP_CLEAR_M } from "../../shelter/best-pitch.ts";
import { cordClearM, cordCrosses } from "../../shelter/cord-clear.ts";
import { tryPitch, type PitchSite, type PitchTrial } from "../../shelter/pitch-trial.ts";
import { ENDS, type End } from "../../shelter/tarp-geometry.ts";

/**
 * The same pitch with a tie higher at each tree where the tarp line would meet the strap; nothing where there is no such
 * need, the tie is out of reach, it would be more than a hand's length, or a side that is pegged would come off the ground.
 *
 * Shapes   a pitch, the highest tie in reach → a pitch
 * Units    metres
 * Source   tarp-geometry; 0.3 m at most is house-convention (handbook/shelter.md)
 */
export function raisedTies(trial: PitchTrial, site: PitchSite, reachM: number): PitchTrial | undefined {
  const { choice, pitch, pegged, strapClearM } = trial;
  const atTree = cordClearM(trial, site);
  const upM = (end: End) =>
    cordCrosses(strapClearM[end], atTree[end]) ? STRAP_CLEAR_M + SPARE_M - atTree[end] : 0;
  const [headTieM, footTieM] = [pitch.headTieM + upM("head"), pitch.footTieM + upM("foot")];
  const mostM = Math.max(...ENDS.map(upM));
  if (mostM === 0 || mostM > MOST_UP_M || pegged.length > 0) return undefined;
  if (Math.max(headTieM, footTieM) > reachM) return undefined;
  return tryPitch(choice, { ...pitch, headTieM, footTieM }, pegged, site);
}

/** A little more than the least, so that the tie height told to a centimetre is still clear [m]. */
const SPARE_M = 0.01;
const MOST_UP_M = 0.3;
