import { BODY_MARKS } from "../body-mark.ts";
import type { SymptomRule } from "./symptom-case.ts";

/**
 * Tips over on getting in: the seat is too high for the legs, or one sits off the middle.
 *
 * Source   common-practice: seat height 0.9 to 1.0 of the knee's height; knee drillis-contini-1966
 */
export const TIPS_ON_ENTRY: SymptomRule = {
  tells: { sits: "too-high" },
  look({ model, adjustment }) {
    const { seatHeightM } = adjustment.state;
    const kneeM = KNEE_OF_STATURE * model.request.sleeper.statureM;
    return {
      figures: [
        { figure: "seat-height", value: seatHeightM, unit: "m", low: LEAST * kneeM, high: MOST * kneeM },
        { figure: "knee-height", value: kneeM, unit: "m" },
        { figure: "seat-over-knee", value: seatHeightM / kneeM, unit: "1", low: LEAST, high: MOST },
      ],
      advice: ["sit-in-the-middle", "spread-the-cloth"],
    };
  },
};

const LEAST = 0.9;
const MOST = 1;
const KNEE_OF_STATURE = BODY_MARKS.find(({ mark }) => mark === "knee")?.ofStature ?? NaN;
