import { radians, type Radians } from "../quantity/angle.ts";
import { seatHeightOf } from "./hang-constants.ts";
import {
  hangFigures,
  type HangFigures,
  type HangSetting,
  type HangSite,
  type HangStart,
} from "./hang-figures.ts";
import { lyingAt, type Lying } from "./hang-lying.ts";
import type { HangRig } from "./hang-rig.ts";
import type { HangInput } from "./hang-types.ts";

/** Straps for one mean angle: lengths under load [m], and how far each strap reaches along the level. */
export interface TrialStraps {
  readonly meanAngle: number;
  readonly lying: Lying;
  /** Level distance bark to gather, the same at both ends; ≤ 0 where the trees are too close. */
  readonly runM: number;
  readonly headStrapM: number;
  readonly footStrapM: number;
  readonly headAngle: Radians;
  readonly footAngle: Radians;
}

/** A trial with its heights: what to set, and what comes of it. */
export interface HangTrial {
  readonly straps: TrialStraps;
  readonly setting: HangSetting;
  readonly figures: HangFigures;
}

export type TrialInput = Pick<HangInput, "spanM" | "head" | "foot" | "targets" | "limits">;

export function siteOf(input: Pick<HangInput, "head" | "foot">): HangSite {
  return {
    headRadiusM: input.head.dbhM / 2,
    footRadiusM: input.foot.dbhM / 2,
    footGroundM: input.foot.elevationM - input.head.elevationM,
  };
}

/**
 * Straps for a mean angle, hammock centred between the barks: closed form once the hammock is solved.
 *
 *   run = (clear − d)/2,   length = run · T/H,   T² = H² + V²
 */
export function trialStraps(rig: HangRig, input: TrialInput, meanAngle: number): TrialStraps {
  const lying = lyingAt(rig, meanAngle, input.targets.footRaiseM);
  const clearM = input.spanM - (input.head.dbhM + input.foot.dbhM) / 2;
  const runM = (clearM - lying.gatherDxM) / 2;
  return {
    meanAngle,
    lying,
    runM,
    headStrapM: (runM * pullOf(lying.alongN, lying.headDownN)) / lying.alongN,
    footStrapM: (runM * pullOf(lying.alongN, lying.footDownN)) / lying.alongN,
    headAngle: radians(Math.atan(lying.headDownN / lying.alongN)),
    footAngle: radians(Math.atan(lying.footDownN / lying.alongN)),
  };
}

/**
 * Heights for a trial: all moves up and down as one, so the sitting is solved once at height 0 and the
 * whole is then shifted to the seat height. A seat nobody stated gives way to the limits on the low point.
 */
export function trialHang(rig: HangRig, site: HangSite, input: TrialInput, straps: TrialStraps): HangTrial {
  const { lying, runM } = straps;
  const { alongN, headDownN, footDownN, gatherDzM } = lying;
  const level: HangSetting = {
    spanM: input.spanM,
    headHeightM: 0,
    footHeightM: gatherDzM + (runM * (footDownN - headDownN)) / alongN - site.footGroundM,
    headStrapM: unloaded(rig, straps.headStrapM, alongN, headDownN),
    footStrapM: unloaded(rig, straps.footStrapM, alongN, footDownN),
  };
  const atZero = hangFigures(rig, site, level, startOf(straps));
  const upM = seatFor(rig, input, atZero) - atZero.seatHeightM;
  return {
    straps,
    setting: { ...level, headHeightM: upM, footHeightM: level.footHeightM + upM },
    figures: { ...atZero, seatHeightM: atZero.seatHeightM + upM, lowPointM: atZero.lowPointM + upM },
  };
}

/** The straps of a setting as it hangs, in the form the limits look at. */
export function strapFigures(rig: HangRig, setting: HangSetting, figures: HangFigures) {
  const { alongN, headDownN, footDownN } = figures;
  const headStrapM = setting.headStrapM * (1 + rig.strapStretchPerN * pullOf(alongN, headDownN));
  const footStrapM = setting.footStrapM * (1 + rig.strapStretchPerN * pullOf(alongN, footDownN));
  return {
    headStrapM,
    footStrapM,
    runM: (Math.min(headStrapM, footStrapM) * alongN) / pullOf(alongN, Math.max(headDownN, footDownN)),
    headAngle: radians(Math.atan(headDownN / alongN)),
    footAngle: radians(Math.atan(footDownN / alongN)),
  };
}

/** Where the forward solve of a trial's own setting may start: at its answer. */
export function startOf({ lying }: TrialStraps): HangStart {
  const { alongN, headDownN, ridgeAlongN, ridgeUpN } = lying;
  return { alongN, upN: -headDownN, ridgeAlongN, ridgeUpN };
}

export function pullOf(alongN: number, downN: number): number {
  return Math.sqrt(alongN * alongN + downN * downN);
}

/** Length of a strap without load that has the given length under its pull. */
function unloaded(rig: HangRig, lengthM: number, alongN: number, downN: number): number {
  return lengthM / (1 + rig.strapStretchPerN * pullOf(alongN, downN));
}

function seatFor(rig: HangRig, { targets, limits }: TrialInput, atZero: HangFigures): number {
  if (targets.seatHeightM !== undefined) return targets.seatHeightM;
  const lowOverSeatM = atZero.lowPointM - atZero.seatHeightM;
  const highest = (limits.lowPointMaxM ?? Infinity) - lowOverSeatM;
  const lowest = limits.lowPointMinM - lowOverSeatM;
  const wanted = Math.max(lowest, Math.min(highest, seatHeightOf(rig.statureM)));
  return Math.max(limits.seatHeightMinM, Math.min(limits.seatHeightMaxM, wanted));
}
