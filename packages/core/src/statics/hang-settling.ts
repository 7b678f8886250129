import {
  BEDDING_IN_M,
  CREEP_RATIO,
  NYLON_STIFFNESS_RATIO,
  STRAP_EA_N,
  WET_NYLON_RATIO,
} from "./hang-constants.ts";
import { hangFigures } from "./hang-figures.ts";
import type { HangRig } from "./hang-rig.ts";
import { pullOf, siteOf, type HangTrial } from "./hang-trial.ts";
import type { HangInput, HangSettling } from "./hang-types.ts";

/**
 * What the straps give, each cause apart: stretch under the sleeper, bedding in within ten minutes, creep until the
 * morning, and what nylon gives besides when it gets wet. The hang is solved anew with longer straps for each.
 *
 *   wet:  strap + strap × pull / EA of nylon × (wet over dry − 1)
 *
 * Shapes   one hang as planned → five lengths
 * Units    [m]
 * Holds    hangs that `hang` can plan
 * Error    bedding in, creep and stretch half to twice; the pull is taken as planned
 * Source   hang-chain; bedding in and creep common-practice; nylon sling-practice and textile-tables
 */
export function hangSettling(
  rig: HangRig,
  input: Pick<HangInput, "head" | "foot" | "suspension">,
  { straps, setting, figures }: HangTrial,
): HangSettling {
  const { suspension } = input;
  const { alongN, headDownN, footDownN } = straps.lying;
  const pulls = { head: pullOf(alongN, headDownN), foot: pullOf(alongN, footDownN) };
  const lowAt = (longer: (strapM: number, pullN: number) => number): number =>
    hangFigures(rig, siteOf(input), {
      ...setting,
      headStrapM: longer(setting.headStrapM, pulls.head),
      footStrapM: longer(setting.footStrapM, pulls.foot),
    }).lowPointM;
  const bedded = (strapM: number): number => strapM + BEDDING_IN_M[suspension.type];
  const crept = (strapM: number): number => bedded(strapM) + strapM * CREEP_RATIO[suspension.type];
  const [afterTenM, morningM] = [lowAt(bedded), lowAt(crept)];
  const settling = {
    headStretchM: setting.headStrapM * rig.strapStretchPerN * pulls.head,
    footStretchM: setting.footStrapM * rig.strapStretchPerN * pulls.foot,
    tenMinutesM: figures.lowPointM - afterTenM,
    overnightM: afterTenM - morningM,
  };
  if (suspension.type === "whoopie-sling") return settling;
  const nylonN = suspension.eaN ?? NYLON_STIFFNESS_RATIO * STRAP_EA_N[suspension.type];
  const wetM = lowAt((strapM, pullN) => crept(strapM) + (WET_NYLON_RATIO - 1) * (strapM / nylonN) * pullN);
  return { ...settling, wetNylonM: morningM - wetM };
}
