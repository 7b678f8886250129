import { CENTRAL_90, type HangErrors } from "./hang-errors.ts";
import { hangFigures, type HangSetting, type HangSite } from "./hang-figures.ts";
import { hangRig, type BodyModel, type HangRig, type RigInput } from "./hang-rig.ts";
import { pullOf, startOf, type HangTrial } from "./hang-trial.ts";
import type { BandRange, HangQuantity } from "./hang-types.ts";

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

export type HangBand = Readonly<Partial<Record<ComeQuantity, BandRange>>>;

/** What may be other than planned, each as one number: 0 where all is as planned. */
export type HangDeviation = Readonly<Record<ErrorName, number>>;

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

export interface BandInput {
  readonly rig: HangRig;
  readonly rigInput: RigInput;
  readonly site: HangSite;
  readonly trial: HangTrial;
  readonly errors: HangErrors;
}

/**
 * How unsure we are of what comes of a hang: the central 90 % of errors in what was set and measured,
 * taken as straight lines through the plan, and on top, at full width, what the lying body might be
 * instead: all its weight in one point (a V), or spread evenly (an arc).
 *
 *   low = min over bodies − 1.645 σ,  high = max over bodies + 1.645 σ,  σ² = Σ (∂q/∂eᵢ · σᵢ)²
 *
 * Error    covers 88 to 92 % of sampled input errors for each quantity that does not bend sharply;
 *          the ridgeline's pull does where it goes slack, and its band is then too wide
 * Source   hang-chain; errors common-practice
 */
export function hangBand(input: BandInput): HangBand {
  const planned = comeOf(input, AS_PLANNED);
  const spread = inputSpread(input);
  const bodies = (["vee", "arc"] as const).map((body) => comeOf(input, AS_PLANNED, body));
  const band: Partial<Record<ComeQuantity, BandRange>> = {};
  for (const quantity of COME_QUANTITIES) {
    if (quantity === "ridgelinePullN" && input.rigInput.hammock.ridgelineM === undefined) continue;
    const values = [planned, ...bodies].map((come) => come[quantity]);
    const halfWidth = CENTRAL_90 * spread[quantity];
    const low = Math.min(...values) - halfWidth;
    const least = quantity === "ridgelinePullN" ? Math.max(0, low) : low;
    band[quantity] = [least, Math.max(...values) + halfWidth];
  }
  return band;
}

/** One standard deviation of each quantity from errors in what was set and measured. */
export function inputSpread(input: BandInput): Readonly<Record<ComeQuantity, number>> {
  const square = { ...NOTHING };
  const sizes = errorSizes(input.errors);
  for (const name of ERROR_NAMES) {
    const more = comeOf(input, { ...AS_PLANNED, [name]: sizes[name] / 2 });
    const less = comeOf(input, { ...AS_PLANNED, [name]: -sizes[name] / 2 });
    for (const quantity of COME_QUANTITIES) square[quantity] += (more[quantity] - less[quantity]) ** 2;
  }
  const spread = { ...NOTHING };
  for (const quantity of COME_QUANTITIES) spread[quantity] = Math.sqrt(square[quantity]);
  return spread;
}

/** What comes of the plan's setting where things are other than planned. */
export function comeOf(input: BandInput, off: HangDeviation, body: BodyModel = "body"): Come {
  const { rigInput, site, trial } = input;
  const asPlanned = off.massRatio === 0 && off.stretchLog === 0 && body === "body";
  const options = { body, massRatio: 1 + off.massRatio, stretchRatio: Math.exp(off.stretchLog) };
  const rig = asPlanned ? input.rig : hangRig(rigInput, options);
  const { setting, straps } = trial;
  const set: HangSetting = {
    spanM: setting.spanM + off.spanM,
    headHeightM: setting.headHeightM + off.headHeightM,
    footHeightM: setting.footHeightM + off.footHeightM,
    headStrapM: setting.headStrapM + off.headStrapM,
    footStrapM: setting.footStrapM + off.footStrapM,
  };
  const there: HangSite = { ...site, footGroundM: site.footGroundM + off.groundM };
  const figures = hangFigures(rig, there, set, startOf(straps));
  const { alongN, headDownN, footDownN } = figures;
  return {
    "head.angle": Math.atan(headDownN / alongN),
    "foot.angle": Math.atan(footDownN / alongN),
    "head.pullN": pullOf(alongN, headDownN),
    "foot.pullN": pullOf(alongN, footDownN),
    seatHeightM: figures.seatHeightM - off.groundBetweenM,
    lowPointM: figures.lowPointM - off.groundBetweenM,
    footRaiseM: figures.footRaiseM,
    ridgelinePullN: figures.ridgeN,
  };
}

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

type Come = Readonly<Record<ComeQuantity, number>>;

const AS_PLANNED: HangDeviation = {
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

const NOTHING: Come = {
  "head.angle": 0,
  "foot.angle": 0,
  "head.pullN": 0,
  "foot.pullN": 0,
  seatHeightM: 0,
  lowPointM: 0,
  footRaiseM: 0,
  ridgelinePullN: 0,
};
