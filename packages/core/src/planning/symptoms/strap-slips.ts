import { BARK_FRICTION_LOW } from "../../statics/capstan.ts";
import { strapGrip } from "./strap-grip.ts";
import type { SymptomRule } from "./symptom-case.ts";
import type { AdviceKey } from "./symptom-types.ts";

/**
 * A strap slips down the trunk: half the weight pulls down whatever the angle, and the steeper the strap the less it
 * presses inward. Down over inward is tan θ; turns that grip more than that on smooth wet bark are asked for. That it
 * slipped says that it grips less than reckoned, so at least one turn more, whatever the figures are.
 *
 * Source   capstan, common-practice
 */
export const STRAP_SLIPS: SymptomRule = {
  tells: {},
  look({ model, adjustment }) {
    const { head, foot } = adjustment.state;
    const downOverInward = Math.tan(Math.max(head.angle, foot.angle));
    const grip = (more: number): number => strapGrip(model.request.suspension, more, BARK_FRICTION_LOW);
    const more = [1, 2, 3, 4].find((turns) => grip(turns) >= downOverInward);
    const advice: AdviceKey[] = ["turns-more", "draw-tight-first", "above-a-swelling"];
    return {
      figures: [
        { figure: "down-over-inward", value: downOverInward, unit: "1" },
        { figure: "grip", value: grip(0), unit: "1", low: downOverInward },
        { figure: "grip-one-turn-more", value: grip(1), unit: "1", low: downOverInward },
        { figure: "turns-more", value: more ?? MOST_TURNS, unit: "1" },
      ],
      advice,
    };
  },
};

/** More turns than anybody carries webbing for; where they do not grip, the angle must come down. */
const MOST_TURNS = 5;
