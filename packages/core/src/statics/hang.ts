import type { Basis } from "../outcome/basis.ts";
import { refuseAll, succeed, type Outcome } from "../outcome/outcome.ts";
import { hangCore, type HangCore } from "./hang-core.ts";
import { hangBand } from "./hang-band.ts";
import { CENTRAL_90, USUAL_ERRORS, type HangErrors } from "./hang-errors.ts";
import { hangNotes } from "./hang-notes.ts";
import { brokenLimits, okRanges } from "./hang-ok.ts";
import { hangInputRefusals } from "./hang-input.ts";
import { hangRig, type HangRig } from "./hang-rig.ts";
import { hangSettling } from "./hang-settling.ts";
import { hangShape } from "./hang-shape.ts";
import { strapParts, webbingOf } from "./strap-parts.ts";
import { pullOf, siteOf, type HangTrial } from "./hang-trial.ts";
import type { BandRange, Hang, HangInput, StrapHang } from "./hang-types.ts";

/**
 * How to hang one hammock between two trees: strap heights and lengths for the strap angle, seat height
 * and foot raise asked for, with the pulls, the shape, and how far each figure may be off.
 *
 *   each node: t += (0, w);  each link: dp = (l/|t| + l/EA) t;  each gather: t ∓= ridgeline
 *
 * Shapes   scalars in; the shape's polylines out
 * Units    SI; angles in radians below level
 * Holds    spans to 30 m, ground up to 0.7 steep along the pair; anything else is refused by field.
 *          Where a limit binds the angle moves, within the angle limits, to the nearest that serves
 * Error    forces to 1e-10 of the weight; the body as a string of weights without bending or friction:
 *          see `band`
 * Source   hang-chain; body de-leva-1996; seat height ansur-ii; strap and knot lengths common-practice
 */
export function hang(input: HangInput): Outcome<Hang> {
  const failure = refuseAll(hangInputRefusals(input));
  if (failure !== undefined) return failure;
  const rig = hangRig(input);
  const core = hangCore(rig, input);
  if (!core.ok) return core;
  return succeed(toldHang(rig, input, core.value));
}

function toldHang(rig: HangRig, input: HangInput, { trial, movedBy }: HangCore): Hang {
  const { straps, setting, figures } = trial;
  const { lying } = straps;
  const site = siteOf(input);
  const footLevelM = site.footGroundM + setting.footHeightM;
  const settling = hangSettling(rig, input, trial);
  const errors = errorsOf(input);
  const okInput = { suspension: input.suspension, limits: input.okLimits ?? input.limits };
  return {
    head: strapOf(trial, input, "head", setting.headHeightM),
    foot: strapOf(trial, input, "foot", footLevelM),
    ...(rig.ridgelineM === undefined ? {} : { ridgelineM: rig.ridgelineM, ridgelinePullN: figures.ridgeN }),
    seatHeightM: figures.seatHeightM,
    lowPointM: figures.lowPointM,
    footRaiseM: figures.footRaiseM,
    levelFootOverHeadM: footLevelM - setting.headHeightM,
    settleM: settling.tenMinutesM + settling.overnightM,
    settling,
    ok: okRanges(rig, site, okInput, trial),
    band: { ...setBand(trial, errors), ...hangBand({ rig, rigInput: input, site, trial, errors }) },
    shape: hangShape(rig, site, setting, trial),
    notes: hangNotes(rig, input, trial, movedBy, brokenLimits(okInput, trial)),
    residual: figures.residual,
    iterations: lying.iterations + figures.iterations,
    basis: BASIS,
  };
}

function errorsOf({ spanErrorM }: HangInput): HangErrors {
  return spanErrorM === undefined ? USUAL_ERRORS : { ...USUAL_ERRORS, spanM: spanErrorM };
}

/** How far off what people set and measure usually is: the central 90 % round what was planned. */
function setBand({ straps, setting }: HangTrial, errors: HangErrors): Hang["band"] {
  const round = (middle: number, error: number): BandRange => [
    middle - CENTRAL_90 * error,
    middle + CENTRAL_90 * error,
  ];
  return {
    "head.strapHeightM": round(setting.headHeightM, errors.strapHeightM),
    "foot.strapHeightM": round(setting.footHeightM, errors.strapHeightM),
    "head.strapLengthM": round(straps.headStrapM, errors.strapLengthM),
    "foot.strapLengthM": round(straps.footStrapM, errors.strapLengthM),
    spanM: round(setting.spanM, errors.spanM),
  };
}

function strapOf(
  { straps, setting }: HangTrial,
  input: HangInput,
  end: "head" | "foot",
  levelM: number,
): StrapHang {
  const { lying } = straps;
  const downN = end === "head" ? lying.headDownN : lying.footDownN;
  const strapLengthM = end === "head" ? straps.headStrapM : straps.footStrapM;
  return {
    strapHeightM: end === "head" ? setting.headHeightM : setting.footHeightM,
    aboveLevelM: levelM,
    strapLengthM,
    webbingM: webbingOf(input, input[end], strapLengthM),
    parts: strapParts(input, input[end], strapLengthM),
    angle: end === "head" ? straps.headAngle : straps.footAngle,
    pullN: pullOf(lying.alongN, downN),
    sidewaysN: lying.alongN,
    downN,
  };
}

const BASIS: Basis = {
  rule: "hang",
  source: "hang-chain",
  assumes: [
    "straps and ridgeline weigh nothing; the ridgeline does not stretch",
    "the sleeper lies along the middle of the cloth, without friction, and bends with it",
    "sitting: all the weight across the middle, feet not yet taking any",
    "ground: the straight line between the grounds at the two trees",
    "straps bear on the bark that faces the berth",
  ],
};
