import type { WetVerdict } from "../../plan/tarp-types.ts";
import { STRAP_CLEAR_M } from "../../shelter/best-pitch.ts";
import { tryPitch, type PitchSite, type PitchTrial } from "../../shelter/pitch-trial.ts";
import { ENDS } from "../../shelter/tarp-geometry.ts";

/**
 * The same pitch lowered as a whole where that alone covers what is not covered, and room over the hammock and the straps
 * bear it; nothing where there is no such need or no such room.
 *
 * Shapes   a pitch, its plain answers, the room that must stay over the hammock → a pitch
 * Units    metres
 * Source   rain-shade (handbook/shelter.md)
 */
export function loweredPitch(
  trial: PitchTrial,
  verdicts: readonly WetVerdict[],
  site: PitchSite,
  roomM: number,
): PitchTrial | undefined {
  const { choice, pitch, pegged, room } = trial;
  const spareM = Math.min(room.headroomM - roomM, room.lowestEdgeM);
  const asked = verdicts.flatMap(({ lowerByM }) =>
    lowerByM === undefined || lowerByM > spareM ? [] : [lowerByM],
  );
  if (asked.length === 0) return undefined;
  const downM = Math.max(...asked);
  const ties = { headTieM: pitch.headTieM - downM, footTieM: pitch.footTieM - downM };
  const lowered = tryPitch(choice, { ...pitch, ...ties }, pegged, site);
  const rubs = ENDS.some(
    (end) => trial.strapClearM[end] >= STRAP_CLEAR_M && lowered.strapClearM[end] < STRAP_CLEAR_M,
  );
  return rubs ? undefined : lowered;
}
