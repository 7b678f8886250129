import { meanAngle } from "../adjust/evidence.ts";
import {
  ANGLE_STEP,
  clothFigure,
  clothPullOf,
  isShortCloth,
  lieTries,
  RIDGELINE_STEP_M,
  withAngle,
  withRidgeline,
} from "./lie-figures.ts";
import type { SymptomRule } from "./symptom-case.ts";
import type { AdviceKey, SymptomFigure } from "./symptom-types.ts";

/**
 * Squeezed shoulders: the cloth is drawn too hard lengthways, by flat straps, a long ridgeline or short cloth. What
 * would help is worked out anew: the cloth's pull with the ridgeline one step shorter, and with steeper straps. It
 * often trades against the ridge under the calves.
 *
 * Source   common-practice; pull of the cloth hang-chain
 */
export const SHOULDER_SQUEEZE: SymptomRule = {
  tells: { shoulders: "squeezed" },
  look({ model, off }) {
    const { request, weightN } = model;
    const come = model.come(off);
    const now = clothPullOf({ come, shape: model.shape(off), weightN });
    const { angleMin: low, angleMax: high } = request.limits;
    const figures: SymptomFigure[] = [
      { figure: "strap-angle", value: meanAngle(come), unit: "rad", low, high },
      { figure: "cloth-pull", value: now, unit: "1" },
      clothFigure(request),
    ];
    const tried = lieTries(
      [
        {
          figure: "cloth-pull-ridgeline-shorter",
          key: "ridgeline-shorter",
          request: withRidgeline(request, -RIDGELINE_STEP_M),
        },
        { figure: "cloth-pull-steeper", key: "straps-steeper", request: withAngle(request, ANGLE_STEP) },
      ],
      { of: clothPullOf, now, worth: WORTH, unit: "1" },
    );
    const advice: AdviceKey[] = [...tried.advice, "lie-diagonally"];
    return {
      figures: [...figures, ...tried.figures],
      advice: isShortCloth(request) ? [...advice, "longer-hammock"] : advice,
    };
  },
};

/** A pull that is less by this share of the weight is worth trying. Source: house-convention. */
const WORTH = 0.01;
