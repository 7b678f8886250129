import { at } from "../../numeric/at.ts";
import { succeed, refuseAll, type Outcome } from "../../outcome/outcome.ts";
import { radians } from "../../quantity/angle.ts";
import {
  comeOf,
  errorSizes,
  ERROR_NAMES,
  type BandInput,
  type ErrorName,
  type HangDeviation,
} from "../../statics/hang-band.ts";
import { CLOTH_CELLS } from "../../statics/hang-constants.ts";
import { hangCore } from "../../statics/hang-core.ts";
import { deviated, NO_DEVIATION } from "../../statics/hang-deviation.ts";
import { USUAL_ERRORS } from "../../statics/hang-errors.ts";
import { LYING_PLACES } from "../../statics/hang-figures.ts";
import { hangInputRefusals } from "../../statics/hang-input.ts";
import { hangRig } from "../../statics/hang-rig.ts";
import { hangShape } from "../../statics/hang-shape.ts";
import { siteOf } from "../../statics/hang-trial.ts";
import type { HangInput, HangShape } from "../../statics/hang-types.ts";
import type { HangState, Instruction } from "./adjust-types.ts";

/** A planned hang that can be asked how it would hang if things were off. */
export interface HungModel {
  readonly request: HangInput;
  readonly weightN: number;
  readonly planned: Come;
  /** One standard deviation of each thing that may be off. */
  readonly sizes: HangDeviation;
  readonly come: (off: HangDeviation) => Come;
  /** Where everything would be. */
  readonly shape: (off: HangDeviation) => HangShape;
}

export interface Come {
  readonly state: HangState;
  readonly ridgeN: number;
  /** From one gather to the other, lying [m]. */
  readonly gatherM: number;
}

/** The model of a berth's hang as asked for; refused as the hang itself would be. */
export function hungModel(request: HangInput): Outcome<HungModel> {
  const failure = refuseAll(hangInputRefusals(request));
  if (failure !== undefined) return failure;
  const rig = hangRig(request);
  const core = hangCore(rig, request);
  if (!core.ok) return core;
  const { trial } = core.value;
  const spanM = Math.max(request.spanErrorM ?? 0, AS_HUNG_SPAN_M);
  const errors = { ...USUAL_ERRORS, ...AS_HUNG_ERRORS, spanM };
  const band: BandInput = { rig, rigInput: request, site: siteOf(request), trial, errors };
  const come = (off: HangDeviation): Come => comeAt(band, off);
  return succeed({
    request,
    weightN: rig.weightN,
    planned: come(AS_PLANNED),
    sizes: errorSizes(errors),
    come,
    shape: (off) => shapeAt(band, off),
  });
}

/**
 * What people set in the dusk is further off than what they set by the book, and the lying body is somewhere between
 * the point and the even spread, which lifts or lowers the seat against the model [m]. Source: common-practice.
 */
const AS_HUNG_SPAN_M = 0.15;
const AS_HUNG_ERRORS = { strapHeightM: 0.05, strapLengthM: 0.06, groundBetweenM: 0.05 };

export const AS_PLANNED: HangDeviation = NO_DEVIATION;

/** Two deviations put together. */
export function plus(a: HangDeviation, b: Partial<HangDeviation>): HangDeviation {
  const sum = { ...a };
  for (const name of ERROR_NAMES) sum[name] += b[name] ?? 0;
  return sum;
}

/** What an instruction changes when it is followed. */
export function moveOf({ end, action, cm }: Instruction): Partial<HangDeviation> {
  const byM = (action === "let-out" || action === "raise" ? cm : -cm) / 100;
  const isStrap = action === "let-out" || action === "take-in";
  const name: ErrorName = isStrap ? `${end}StrapM` : `${end}HeightM`;
  return { [name]: byM };
}

function comeAt(band: BandInput, off: HangDeviation): Come {
  const come = comeOf(band, off);
  const gatherM = gatherDistanceM();
  const { setting } = band.trial;
  const stretchPerN = band.rig.strapStretchPerN * Math.exp(off.stretchLog);
  const strap = (heightM: number, unloadedM: number, angle: number, pullN: number) => ({
    strapHeightM: heightM,
    strapLengthM: unloadedM * (1 + stretchPerN * pullN),
    angle: radians(angle),
    pullN,
  });
  return {
    ridgeN: come.ridgelinePullN,
    gatherM,
    state: {
      spanM: setting.spanM + off.spanM,
      head: strap(
        setting.headHeightM + off.headHeightM,
        setting.headStrapM + off.headStrapM,
        come["head.angle"],
        come["head.pullN"],
      ),
      foot: strap(
        setting.footHeightM + off.footHeightM,
        setting.footStrapM + off.footStrapM,
        come["foot.angle"],
        come["foot.pullN"],
      ),
      seatHeightM: come.seatHeightM,
      lowPointM: come.lowPointM,
      footRaiseM: come.footRaiseM,
    },
  };
}

/** Stretch and weight hardly move it, so the planned rig stands in for the rig as it is. */
function shapeAt(band: BandInput, off: HangDeviation): HangShape {
  const { setting, site } = deviated(band, off);
  return hangShape(band.rig, site, setting, band.trial);
}

/** Between the gathers of the hang that was solved last. */
function gatherDistanceM(): number {
  const { xM, zM } = LYING_PLACES;
  const last = CLOTH_CELLS + 1;
  return Math.hypot(at(xM, last) - at(xM, 1), at(zM, last) - at(zM, 1));
}
