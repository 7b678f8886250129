import type { HangErrors } from "./hang-errors.ts";
import {
  hangFigures,
  type HangFigures,
  type HangSetting,
  type HangSite,
  type HangStart,
} from "./hang-figures.ts";
import { hangRig, stretchedRig, type BodyModel, type HangRig, type RigInput } from "./hang-rig.ts";
import { pullOf, startOf, type HangTrial } from "./hang-trial.ts";
import type { HangQuantity } from "./hang-types.ts";

/** What comes of a hang, and so what we are unsure of. */
export type ComeQuantity = Extract<
  HangQuantity,
  | "head.angle"
  | "foot.angle"
  | "head.pullN"
  | "foot.pullN"
  | "seatHeightM"
  | "lowPointM"
  | "footRaiseM"
  | "ridgelinePullN"
>;

export const COME_QUANTITIES: readonly ComeQuantity[] = [
  "head.angle",
  "foot.angle",
  "head.pullN",
  "foot.pullN",
  "seatHeightM",
  "lowPointM",
  "footRaiseM",
  "ridgelinePullN",
];

export type Come = Readonly<Record<ComeQuantity, number>>;

export type ErrorName =
  | "spanM"
  | "headHeightM"
  | "footHeightM"
  | "headStrapM"
  | "footStrapM"
  | "groundM"
  | "groundBetweenM"
  | "stretchLog"
  | "massRatio";

export const ERROR_NAMES: readonly ErrorName[] = [
  "spanM",
  "headHeightM",
  "footHeightM",
  "headStrapM",
  "footStrapM",
  "groundM",
  "groundBetweenM",
  "stretchLog",
  "massRatio",
];

/** What may be other than planned, each as one number: 0 where all is as planned. */
export type HangDeviation = Readonly<Record<ErrorName, number>>;

export const NO_DEVIATION: HangDeviation = {
  spanM: 0,
  headHeightM: 0,
  footHeightM: 0,
  headStrapM: 0,
  footStrapM: 0,
  groundM: 0,
  groundBetweenM: 0,
  stretchLog: 0,
  massRatio: 0,
};

/** The size of each error, one standard deviation. */
export function errorSizes(errors: HangErrors): HangDeviation {
  const { spanM, strapHeightM, strapLengthM, groundM, groundBetweenM, stretchLog, massRatio } = errors;
  return {
    spanM,
    headHeightM: strapHeightM,
    footHeightM: strapHeightM,
    headStrapM: strapLengthM,
    footStrapM: strapLengthM,
    groundM,
    groundBetweenM,
    stretchLog,
    massRatio,
  };
}

/** A hang as planned, with all that its band rests on. */
export interface BandInput {
  readonly rig: HangRig;
  readonly rigInput: RigInput;
  readonly site: HangSite;
  readonly trial: HangTrial;
  readonly errors: HangErrors;
}

/** A hang as it would be set where things are other than planned. */
export interface DeviatedHang {
  readonly setting: HangSetting;
  readonly site: HangSite;
  /** Whether the straps had to be let out to reach at all. */
  readonly letOut: boolean;
}

/**
 * The plan's setting where things are other than planned. Nobody ties what does not reach: straps that would
 * fall short of the other tree, pulled straight and unloaded, are let out, both alike, until they reach.
 */
export function deviated({ rig, site, trial }: BandInput, off: HangDeviation): DeviatedHang {
  const { setting } = trial;
  const there: HangSite = { ...site, footGroundM: site.footGroundM + off.groundM };
  const set: HangSetting = {
    spanM: setting.spanM + off.spanM,
    headHeightM: setting.headHeightM + off.headHeightM,
    footHeightM: setting.footHeightM + off.footHeightM,
    headStrapM: Math.max(LEAST_STRAP_M, setting.headStrapM + off.headStrapM),
    footStrapM: Math.max(LEAST_STRAP_M, setting.footStrapM + off.footStrapM),
  };
  const shortM = shortfall(rig, there, set);
  if (!(shortM > 0)) return { setting: set, site: there, letOut: false };
  const { headStrapM, footStrapM } = set;
  const reaching = { ...set, headStrapM: headStrapM + shortM / 2, footStrapM: footStrapM + shortM / 2 };
  return { setting: reaching, site: there, letOut: true };
}

/** A gather drawn right up to the bark still leaves this much of strap [m]. */
const LEAST_STRAP_M = 0.005;

/** How far straps and hammock pulled straight, unloaded, fall short of the other tree [m]; ≤ 0 where they reach. */
export function shortfall(rig: HangRig, site: HangSite, setting: HangSetting): number {
  const dxM = setting.spanM - site.headRadiusM - site.footRadiusM;
  const dzM = site.footGroundM + setting.footHeightM - setting.headHeightM;
  const betweenM = Math.min(rig.clothM, rig.ridgelineM ?? Infinity);
  return Math.sqrt(dxM * dxM + dzM * dzM) - setting.headStrapM - betweenM - setting.footStrapM;
}

/** The rig where mass, stretch or body are other than planned. */
export function deviatedRig(input: BandInput, off: HangDeviation, body: BodyModel = "body"): HangRig {
  const { massRatio, stretchLog } = off;
  const stretchRatio = stretchLog === 0 ? 1 : Math.exp(stretchLog);
  if (massRatio === 0 && body === "body") return stretchedRig(input.rig, stretchRatio);
  return hangRig(input.rigInput, { body, massRatio: 1 + massRatio, stretchRatio });
}

/** What comes of the plan's setting where things are other than planned: the true forward map. */
export function comeOf(
  input: BandInput,
  off: HangDeviation,
  body: BodyModel = "body",
  start: HangStart = startOf(input.trial.straps),
): Come {
  const { setting, site } = deviated(input, off);
  return comeOfFigures(hangFigures(deviatedRig(input, off, body), site, setting, start), off.groundBetweenM);
}

export function comeOfFigures(figures: HangFigures, groundBetweenM: number): Come {
  const { alongN, headDownN, footDownN } = figures;
  return {
    "head.angle": Math.atan(headDownN / alongN),
    "foot.angle": Math.atan(footDownN / alongN),
    "head.pullN": pullOf(alongN, headDownN),
    "foot.pullN": pullOf(alongN, footDownN),
    seatHeightM: figures.seatHeightM - groundBetweenM,
    lowPointM: figures.lowPointM - groundBetweenM,
    footRaiseM: figures.footRaiseM,
    ridgelinePullN: figures.ridgeN,
  };
}
