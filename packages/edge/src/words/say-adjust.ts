import {
  degrees,
  inDegrees,
  radians,
  type Adjustment,
  type AsHungOff,
  type BandRange,
  type HangInput,
  type HangState,
  type Instruction,
  type OffQuantity,
} from "@nightspan/core";
import { plainLabels } from "@nightspan/drawing";
import { angle, length } from "./quantities.ts";

type SuspensionType = HangInput["suspension"]["type"];

/** The one thing to change: "Let out the head strap by 8 cm." Slings are let out, straps are moved on their trunk. */
export function sayInstruction({ end, action, cm }: Instruction, type: SuspensionType): string {
  const by = centimetres(cm / 100);
  const adjuster = `the ${end} ${type === "whoopie-sling" ? "sling" : "strap"}`;
  switch (action) {
    case "let-out":
      return `Let out ${adjuster} by ${by}.`;
    case "take-in":
      return `Take in ${adjuster} by ${by}.`;
    case "raise":
      return `Move the ${end} strap ${by} up its trunk.`;
    case "lower":
      return `Move the ${end} strap ${by} down its trunk.`;
  }
}

/** What to do, whether or not there is one thing to change. */
export function sayNext({ next, instruction }: Adjustment, type: SuspensionType): string {
  if (instruction !== undefined) return sayInstruction(instruction, type);
  return next === "change" ? NEXT["leave-it"] : NEXT[next];
}

const NEXT: Readonly<Record<Exclude<Adjustment["next"], "change">, string>> = {
  "leave-it": "Leave it as it is.",
  "hang-anew": "No one change puts this right. Take it down and hang it anew as planned.",
  "measure-again": "These measurements do not fit together. Measure again before you change anything.",
  "measure-angles": "Measure the angle of both straps with the card before you move anything more.",
  "plan-again":
    "The trees do not stand as far apart as planned. Change nothing: plan again with what you measured.",
};

/** "Seat 38 cm above the ground, foot end 12 cm above head end, straps 31° and 34° below level." */
export function sayState({ seatHeightM, footRaiseM, head, foot }: HangState): string {
  const raise = `${centimetres(Math.abs(footRaiseM))} ${footRaiseM < 0 ? "below" : "above"} head end`;
  const straps = `straps ${angle(head.angle)} and ${angle(foot.angle)} below level`;
  const seat = seatHeightM > 0 ? `Seat ${centimetres(seatHeightM)} above the ground` : "Seat on the ground";
  return `${seat}, foot end ${raise}, ${straps}.`;
}

/** "The seat is 38 cm, planned 45 cm." */
export function sayOff({ quantity, planned, found }: AsHungOff): string {
  const told = quantity === "spanM" ? length : centimetres;
  if (quantity === "seatHeightM" && found <= 0)
    return `The seat is on the ground, planned ${told(planned)} above it.`;
  if (quantity === "footRaiseM" && found < 0)
    return `The foot end hangs ${told(-found)} below the head end, planned ${told(planned)} above it.`;
  return `${OFF[quantity]} ${told(found)}, planned ${told(planned)}.`;
}

const OFF: Readonly<Record<OffQuantity, string>> = {
  spanM: "The trees stand apart by",
  "head.strapHeightM": "The head strap is tied at",
  "foot.strapHeightM": "The foot strap is tied at",
  "head.strapLengthM": "From bark to hammock the head end measures",
  "foot.strapLengthM": "From bark to hammock the foot end measures",
  seatHeightM: "The seat comes above the ground by",
  footRaiseM: "The foot end hangs above the head end by",
};

/** What is not sure enough and may well be past its limits: what to measure next. Empty where nothing is. */
export function sayDoubts(
  { band, doubts }: Adjustment,
  { limits }: Pick<HangInput, "limits">,
): readonly string[] {
  const { angleMin, angleMax, seatHeightMinM, seatHeightMaxM, footRaiseMinM, footRaiseMaxM } = limits;
  const angles = doubts.filter((doubt) => doubt === "head.angle" || doubt === "foot.angle");
  const [first] = angles;
  const straps =
    angles.length === 2 ? "both straps" : `the ${first === "head.angle" ? "head" : "foot"} strap`;
  const angleWords =
    first === undefined
      ? []
      : [
          `Measure the angle of ${straps} with the card: ${likely(band[first], [angleMin, angleMax], INCLINE)}`,
        ];
  const lieWords = doubts.flatMap((doubt) => {
    if (doubt === "seatHeightM") {
      return [
        `Measure the seat above the ground: ${likely(band[doubt], [seatHeightMinM, seatHeightMaxM], TAPE)}`,
      ];
    }
    if (doubt !== "footRaiseM") return [];
    return [
      `Measure how far the foot end is above the head end: ${likely(band[doubt], [footRaiseMinM, footRaiseMaxM], TAPE)}`,
    ];
  });
  return [...angleWords, ...lieWords];
}

interface Told {
  readonly say: (value: number) => string;
  /** A range as wide as this tells nobody anything. Source: house-convention. */
  readonly unknown: number;
}

/** "31° to 37° is likely, 25° to 35° is allowed." */
function likely([low, high]: BandRange, [least, most]: BandRange, { say, unknown }: Told): string {
  const allowed = `${say(least)} to ${say(most)} is allowed.`;
  return high - low > unknown ? allowed : `${say(low)} to ${say(high)} is likely, ${allowed}`;
}

const INCLINE: Told = { say: degreesOf, unknown: degrees(15) };
const TAPE: Told = { say: centimetres, unknown: 0.5 };

function degreesOf(value: number): string {
  return `${Math.round(inDegrees(radians(value)))}°`;
}

/** To the centimetre, as a tape at a hang is read. */
function centimetres(valueM: number): string {
  return plainLabels({ quantity: "short-length", value: valueM, digits: 0 });
}
