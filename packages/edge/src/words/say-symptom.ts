import type { AdviceKey, Symptom, SymptomFigure, SymptomFigureKey } from "@nightspan/core";
import { plainLabels } from "@nightspan/drawing";
import { angle } from "./quantities.ts";

/** What people tell, as they tell it: "Slides to the foot end". */
export function saySymptom(symptom: Symptom): string {
  return SYMPTOM_WORDS[symptom];
}

/** One figure, with what it should lie between where that is known. */
export function sayFigure({ figure, value, unit, low, high }: SymptomFigure): string {
  const told = (amount: number): string => TOLD[unit](amount);
  if (figure === "turns-more") return value > 4 ? MANY_TURNS : `Turns more round the trunk: ${value}.`;
  const wished =
    low === undefined
      ? ""
      : high === undefined
        ? `; at least ${told(low)} is wished for`
        : `; ${told(low)} to ${told(high)} is wished for`;
  return `${FIGURE_WORDS[figure]}: ${told(value)}${wished}.`;
}

/** What helps besides. */
export function sayAdvice(advice: AdviceKey): string {
  return ADVICE_WORDS[advice];
}

const SYMPTOM_WORDS: Readonly<Record<Symptom, string>> = {
  "slides-to-foot": "Slides to the foot end",
  "calf-ridge": "A ridge under the calves, knees forced straight",
  "shoulder-squeeze": "Squeezed shoulders",
  "bottoms-out": "Lower in the morning than in the evening",
  "strap-slips": "A strap slips down its trunk",
  "tips-on-entry": "Tips over on getting in",
};

const FIGURE_WORDS: Readonly<Record<Exclude<SymptomFigureKey, "turns-more">, string>> = {
  "foot-raise": "Foot end above head end",
  "foot-slope": "Slope up towards the feet",
  "cloth-over-stature": "Hammock longer than the sleeper by",
  "strap-angle": "Straps below level",
  bend: "Fold of the body, lying along the middle",
  "bend-ridgeline-longer": "Fold with the ridgeline 3 cm longer",
  "bend-flatter": "Fold with the straps 3° flatter",
  "cloth-pull": "The cloth's own sideways pull over the weight",
  "cloth-pull-ridgeline-shorter": "The same with the ridgeline 3 cm shorter",
  "cloth-pull-steeper": "The same with the straps 3° steeper",
  creep: "Each side gives in the first night",
  settle: "That lowers the cloth by",
  "settle-ten-minutes": "Of it in the first ten minutes",
  "settle-overnight": "And from then until the morning",
  "drop-found": "The seat is lower than planned by",
  "low-point-evening": "Lowest cloth in the evening",
  "low-point-morning": "Lowest cloth in the morning",
  "down-over-inward": "Pull down the trunk over pull against it",
  grip: "Grip on smooth wet bark, as wrapped",
  "grip-one-turn-more": "Grip with one turn more",
  "seat-height": "Seat above the ground",
  "knee-height": "Knee of the sleeper above the ground",
  "seat-over-knee": "Seat over knee",
};

const MANY_TURNS =
  "No number of turns grips at this angle on smooth wet bark: hang it flatter, or find rougher bark.";

const ADVICE_WORDS: Readonly<Record<AdviceKey, string>> = {
  "lie-diagonally":
    "Lie across the cloth, 10 to 20° off its middle line, head to one side and feet to the other.",
  "longer-hammock": "Take a longer hammock: 1.1 m more than the sleeper is tall.",
  "ridgeline-longer": "Lengthen the ridgeline by 3 cm, try, and write down which was better.",
  "ridgeline-shorter": "Shorten the ridgeline by 3 cm, try, and write down which was better.",
  "straps-flatter": "Hang it a little flatter, within the limits.",
  "straps-steeper": "Hang it a little steeper, within the limits.",
  "re-set-after-ten-minutes": "Sit in it for ten minutes, then set it again.",
  "start-higher": "Start the night higher by what it comes down.",
  "look-at-knots-and-trees":
    "It came down by more than straps give. Look for a knot that slips or a tree that leans in, and take other trees if one moves.",
  "turns-more": "Put more turns round the trunk.",
  "above-a-swelling": "Tie above a swelling or a branch stub, where the height allows it.",
  "draw-tight-first": "Draw the strap tight round the trunk by hand before anybody loads it.",
  "sit-in-the-middle": "Sit down in the middle, well back, both feet on the ground.",
  "spread-the-cloth": "Spread the cloth wide behind you before you sit.",
};

const TOLD: Readonly<Record<SymptomFigure["unit"], (value: number) => string>> = {
  m: (value) => plainLabels({ quantity: "short-length", value, digits: 0 }),
  rad: angle,
  "1": (value) => value.toFixed(2),
};
