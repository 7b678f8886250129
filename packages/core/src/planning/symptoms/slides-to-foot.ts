import { degrees } from "../../quantity/angle.ts";
import type { SymptomRule } from "./symptom-case.ts";

/**
 * Slides to the foot end: the foot gather is not high enough over the head gather.
 *
 *   slope = asin(raise / gather distance)
 *
 * Source   common-practice: 3 to 5° up towards the feet
 */
export const SLIDES_TO_FOOT: SymptomRule = {
  tells: { slides: "to-foot" },
  look({ model, adjustment, off }) {
    const { footRaiseM } = adjustment.state;
    const { footRaiseMinM, footRaiseMaxM } = model.request.limits;
    return {
      figures: [
        { figure: "foot-raise", value: footRaiseM, unit: "m", low: footRaiseMinM, high: footRaiseMaxM },
        {
          figure: "foot-slope",
          value: Math.asin(footRaiseM / model.come(off).gatherM),
          unit: "rad",
          low: SLOPE_LEAST,
          high: SLOPE_MOST,
        },
      ],
      advice: ["lie-diagonally"],
    };
  },
};

const SLOPE_LEAST = degrees(3);
const SLOPE_MOST = degrees(5);
