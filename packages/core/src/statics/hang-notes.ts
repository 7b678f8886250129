import type { Limit } from "../outcome/outcome.ts";
import type { HangRig } from "./hang-rig.ts";
import type { HangTrial } from "./hang-trial.ts";
import type { BorderNote, HangInput, HangNote } from "./hang-types.ts";

/** What to know beside the figures of a hang: limits that moved it or are passed, then borders of the model. */
export function hangNotes(
  rig: HangRig,
  input: HangInput,
  trial: HangTrial,
  movedBy: Limit | undefined,
  outside: readonly Limit[],
): readonly HangNote[] {
  const moved: readonly HangNote[] = movedBy === undefined ? [] : [{ key: "moved-by", limit: movedBy }];
  return [
    ...moved,
    ...outside.map((limit): HangNote => ({ key: "outside-usual", limit })),
    ...borderNotes(rig, input, trial).map((key): HangNote => ({ key })),
  ];
}

function borderNotes(rig: HangRig, input: HangInput, { straps, figures }: HangTrial): readonly BorderNote[] {
  const { spanM, head, foot, sleeper } = input;
  const { lying, headStrapM, footStrapM } = straps;
  const greatestN = Math.max(lying.headDownN, lying.footDownN, lying.alongN);
  const near: readonly (readonly [BorderNote, boolean])[] = [
    ["nearly-straight", lying.gatherDxM > NEARLY_STRAIGHT * rig.clothM],
    ["short-cloth", rig.clothM < rig.statureM + SHORT_CLOTH_M],
    ["short-straps", Math.min(headStrapM, footStrapM) < SHORT_STRAP_M],
    ["ridgeline-barely-taut", figures.ridgeN > 0 && figures.ridgeN < BARELY_TAUT * rig.weightN],
    ["stretchy-straps", rig.strapStretchPerN * greatestN > STRETCHY],
    ["steep-ground", Math.abs(head.elevationM - foot.elevationM) > STEEP_GROUND * spanM],
    ["body-unlike-table", sleeper.statureM < LEAST_ADULT_M || sleeper.statureM > GREATEST_ADULT_M],
  ];
  return near.filter(([, isNear]) => isNear).map(([note]) => note);
}

/** Gathers further apart than this share of the cloth lean on the stretch of the cloth. Source: hang-chain. */
const NEARLY_STRAIGHT = 0.985;
/** Cloth beyond the stature below which hammocks are called short [m]. Source: common-practice. */
const SHORT_CLOTH_M = 0.9;
/** Straps shorter than this turn by degrees for each centimetre of span [m]. Source: hang-chain. */
const SHORT_STRAP_M = 0.2;
/** A ridgeline that pulls less than this over the weight may as well be slack. Source: hang-chain. */
const BARELY_TAUT = 0.05;
/** Strain above which straps no longer stretch in proportion. Source: common-practice. */
const STRETCHY = 0.06;
/** Rise of the ground over the span above which a straight line between the trees is no longer the ground. */
const STEEP_GROUND = 0.4;
/** Statures between which the body's table was measured, roughly [m]. Source: de-leva-1996. */
const LEAST_ADULT_M = 1.4;
const GREATEST_ADULT_M = 2.05;
