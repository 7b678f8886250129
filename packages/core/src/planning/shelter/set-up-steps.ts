import type { SetUpOrder, SetUpStep } from "../../plan/night-types.ts";

/** Order of work: looking up comes first in any weather; in rain, and when in doubt, the roof goes up before the bed. */
export const SET_UP_STEPS: Readonly<Record<SetUpOrder, readonly SetUpStep[]>> = {
  fair: [
    "look-up",
    "look-at-trunk",
    "look-down",
    "pace-span",
    "straps",
    "hammock",
    "sit-test",
    "adjust",
    "insulation",
    "tarp-staged",
    "drip-lines",
    "storage-line",
  ],
  foul: [
    "look-up",
    "look-at-trunk",
    "look-down",
    "pace-span",
    "tarp-ridge",
    "windward-side",
    "lee-side",
    "straps",
    "hammock",
    "drip-lines",
    "sit-test",
    "adjust",
    "insulation",
    "storage-line",
  ],
};
