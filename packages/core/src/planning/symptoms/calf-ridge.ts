import { meanAngle } from "../adjust/evidence.ts";
import {
  ANGLE_STEP,
  bendOf,
  clothFigure,
  isShortCloth,
  lieTries,
  RIDGELINE_STEP_M,
  withAngle,
  withRidgeline,
} from "./lie-figures.ts";
import type { SymptomRule } from "./symptom-case.ts";
import type { AdviceKey, SymptomFigure } from "./symptom-types.ts";

/**
 * A ridge under the calves, knees forced straight: the cloth is short, or the hang is too droopy. What would help is
 * worked out anew: the fold of the body with the ridgeline one step longer, and with flatter straps.
 *
 * Source   common-practice; fold of the body hang-chain
 */
export const CALF_RIDGE: SymptomRule = {
  tells: { knees: "strained" },
  look({ model, off }) {
    const { request, weightN } = model;
    const come = model.come(off);
    const now = bendOf({ come, shape: model.shape(off), weightN });
    const { angleMin: low, angleMax: high } = request.limits;
    const figures: SymptomFigure[] = [
      clothFigure(request),
      { figure: "strap-angle", value: meanAngle(come), unit: "rad", low, high },
      { figure: "bend", value: now, unit: "rad" },
    ];
    const tried = lieTries(
      [
        {
          figure: "bend-ridgeline-longer",
          key: "ridgeline-longer",
          request: withRidgeline(request, RIDGELINE_STEP_M),
        },
        { figure: "bend-flatter", key: "straps-flatter", request: withAngle(request, -ANGLE_STEP) },
      ],
      { of: bendOf, now, worth: WORTH, unit: "rad" },
    );
    const advice: AdviceKey[] = ["lie-diagonally", ...tried.advice];
    return {
      figures: [...figures, ...tried.figures],
      advice: isShortCloth(request) ? ["longer-hammock", ...advice] : advice,
    };
  },
};

/** A fold that is less by this much is worth trying [rad]. Source: house-convention. */
const WORTH = 0.005;
