import { at } from "../numeric/at.ts";
import {
  CHAIN_CAUSES,
  chainSlopes,
  newChainSlopes,
  type ChainRest,
  type ChainSlopes,
} from "./chain-slopes.ts";
import { COME_QUANTITIES, ERROR_NAMES, type ErrorName, type HangDeviation } from "./hang-deviation.ts";
import {
  MIDDLE_NODE,
  type HangFigures,
  type HangSetting,
  type HangSite,
  type HangStart,
} from "./hang-figures.ts";
import type { HangRig } from "./hang-rig.ts";
import { pullOf } from "./hang-trial.ts";

/** A hang that was solved, with what it was solved from. */
export interface SolvedHang {
  readonly rig: HangRig;
  readonly site: HangSite;
  readonly setting: HangSetting;
  readonly figures: HangFigures;
  /** Whether the straps are as long as it takes to reach, and no longer. */
  readonly letOut: boolean;
}

/** What has slopes, in the order of every list of them; straps as they are under load. */
export const SLOPE_QUANTITIES = [...COME_QUANTITIES, "head.strapLengthM", "foot.strapLengthM"] as const;

/** Writes how everything moves with one cause, in the order of SLOPE_QUANTITIES. */
export type SlopesInto = (cause: ErrorName, into: Float64Array) => void;

/**
 * How all that comes of a hang moves with each thing that is set or may be off: the exact derivative of the
 * forward solve, without another solve.
 *
 * A heavier sleeper is taken as the same shape under a stretch as much greater, all forces in proportion; the
 * hammock's own weight grows with it, which is wrong by less than a hundredth of what the mass does.
 *
 * Shapes   the answer is valid until the next call
 * Units    per metre, per unit of stretchLog or massRatio
 * Error    rounding, except at corners: where a ridgeline just comes taut, or another node becomes the lowest
 * Source   hang-chain
 */
export function hangSlopes(solved: SolvedHang): SlopesInto {
  const { rig, figures } = solved;
  chainSlopes(rig.lying, figures.lying, rig.ridgelineM, figures.lowNode, LYING);
  chainSlopes(rig.sitting, figures.sitting, rig.ridgelineM, MIDDLE_NODE, SITTING);
  return (cause, into) => {
    CAUSES.fill(0);
    addCauses(solved, cause, 1, CAUSES);
    forceSlopes(solved, cause, into);
    placeSlopes(solved, cause, into);
  };
}

/**
 * Where to start the next solve if things move on by so much: along the slopes last worked out, which must be
 * those of this hang.
 */
export function startOff(solved: SolvedHang, by: HangDeviation): HangStart {
  const { lying, sitting } = solved.figures;
  CAUSES.fill(0);
  for (const cause of ERROR_NAMES) if (by[cause] !== 0) addCauses(solved, cause, by[cause], CAUSES);
  return startAlong(lying, sitting);
}

/** The same where one thing alone moves on. */
export function startOffBy(solved: SolvedHang, cause: ErrorName, by: number): HangStart {
  CAUSES.fill(0);
  addCauses(solved, cause, by, CAUSES);
  return startAlong(solved.figures.lying, solved.figures.sitting);
}

function startAlong(lying: ChainRest, sitting: ChainRest): HangStart {
  const { alongN, upN, ridgeAlongN, ridgeUpN } = restOff(lying, LYING);
  return { alongN, upN, ridgeAlongN, ridgeUpN, sitting: restOff(sitting, SITTING) };
}

function restOff(rest: ChainRest, slopes: ChainSlopes): ChainRest {
  const alongN = rest.alongN + sum(slopes.alongN, CAUSES);
  const ridgeAlongN = rest.ridgeAlongN + sum(slopes.ridgeAlongN, CAUSES);
  if (!(alongN > ridgeAlongN && alongN > 0 && ridgeAlongN >= 0)) return rest;
  const upN = rest.upN + sum(slopes.upN, CAUSES);
  return { alongN, upN, ridgeAlongN, ridgeUpN: rest.ridgeUpN + sum(slopes.ridgeUpN, CAUSES) };
}

// Working stores, reused by every call.
const LYING = newChainSlopes();
const SITTING = newChainSlopes();
const CAUSES = new Float64Array(CHAIN_CAUSES.length);
const DX = 0;
const DZ = 1;
const HEAD_STRAP = 2;
const FOOT_STRAP = 3;
const STRETCH = 4;

/** Which cause of the chain a thing that may be off is, and which way; none moves the ground between. */
const CHAIN_CAUSE_OF: Readonly<Record<ErrorName, number>> = {
  spanM: DX,
  headHeightM: DZ,
  footHeightM: DZ,
  headStrapM: HEAD_STRAP,
  footStrapM: FOOT_STRAP,
  groundM: DZ,
  groundBetweenM: -1,
  stretchLog: STRETCH,
  massRatio: STRETCH,
};

/** Adds what one thing off by so much does to ends, straps and stretch; straps let out follow the distance. */
function addCauses(solved: SolvedHang, cause: ErrorName, by: number, causes: Float64Array): void {
  const index = CHAIN_CAUSE_OF[cause];
  if (index < 0) return;
  let size = by;
  if (cause === "headHeightM") size = -by;
  if (cause === "massRatio") size = by * solved.rig.sleeperRatio;
  causes[index] = at(causes, index) + size;
  if (!solved.letOut || index === STRETCH) return;
  const outM = index === DX || index === DZ ? size * towards(solved, index) : -size;
  causes[HEAD_STRAP] = at(causes, HEAD_STRAP) + outM / 2;
  causes[FOOT_STRAP] = at(causes, FOOT_STRAP) + outM / 2;
}

/** How much further the far anchor comes when it moves along x or z. */
function towards({ site, setting }: SolvedHang, index: number): number {
  const dxM = setting.spanM - site.headRadiusM - site.footRadiusM;
  const dzM = site.footGroundM + setting.footHeightM - setting.headHeightM;
  return (index === DX ? dxM : dzM) / Math.sqrt(dxM * dxM + dzM * dzM);
}

function forceSlopes({ rig, setting, figures }: SolvedHang, cause: ErrorName, into: Float64Array): void {
  const heavier = cause === "massRatio" ? rig.sleeperRatio : 0;
  const stretched = at(CAUSES, STRETCH);
  const { alongN, headDownN, footDownN, lying, ridgeN } = figures;
  const along = sum(LYING.alongN, CAUSES) + heavier * alongN;
  const up = sum(LYING.upN, CAUSES);
  const headDown = heavier * headDownN - up;
  const footDown = heavier * footDownN + up;
  const headN = pullOf(alongN, headDownN);
  const footN = pullOf(alongN, footDownN);
  const headPull = (alongN * along + headDownN * headDown) / headN;
  const footPull = (alongN * along + footDownN * footDown) / footN;
  const ridgeAlong = lying.ridgeAlongN * sum(LYING.ridgeAlongN, CAUSES);
  const ridge = ridgeAlong + lying.ridgeUpN * sum(LYING.ridgeUpN, CAUSES);
  const perN = rig.strapStretchPerN;
  const headStrap = at(CAUSES, HEAD_STRAP);
  const footStrap = at(CAUSES, FOOT_STRAP);
  into[0] = (headDown * alongN - headDownN * along) / (headN * headN);
  into[1] = (footDown * alongN - footDownN * along) / (footN * footN);
  into[2] = headPull;
  into[3] = footPull;
  into[7] = ridgeN > 0 ? ridge / ridgeN + heavier * ridgeN : 0;
  into[8] = headStrap * (1 + perN * headN) + setting.headStrapM * perN * (headPull + stretched * headN);
  into[9] = footStrap * (1 + perN * footN) + setting.footStrapM * perN * (footPull + stretched * footN);
}

/** Seat, low point and raise: places of the cloth seen from the head strap, over the sloping ground. */
function placeSlopes({ site, setting, figures }: SolvedHang, cause: ErrorName, into: Float64Array): void {
  const slope = site.footGroundM / setting.spanM;
  const { seatXM, lowXM } = figures;
  into[4] = overGround(SITTING, slope) + risen(cause, seatXM, slope, setting.spanM);
  into[5] = overGround(LYING, slope) + risen(cause, lowXM, slope, setting.spanM);
  into[6] = sum(LYING.raiseM, CAUSES);
}

function overGround({ nodeX, nodeZ }: ChainSlopes, slope: number): number {
  return sum(nodeZ, CAUSES) - slope * sum(nodeX, CAUSES);
}

/** What a cause does to a height over the ground at x, besides moving the cloth seen from the head strap. */
function risen(cause: ErrorName, xM: number, slope: number, spanM: number): number {
  if (cause === "headHeightM") return 1;
  if (cause === "groundBetweenM") return -1;
  if (cause === "groundM") return -xM / spanM;
  return cause === "spanM" ? (slope * xM) / spanM : 0;
}

function sum(slopes: Float64Array, causes: Float64Array): number {
  let total = 0;
  for (let cause = 0; cause < CHAIN_CAUSES.length; cause++) total += at(slopes, cause) * at(causes, cause);
  return total;
}
