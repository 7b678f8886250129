import {
  degrees,
  inDegrees,
  radians,
  type Adjustment,
  type AsHungOff,
  type HangInput,
  type HangState,
  type Instruction,
  type OffQuantity,
  type Radians,
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
  return next === "hang-anew"
    ? "No one change puts this right. Take it down and hang it anew as planned."
    : "Leave it as it is.";
}

/** "Seat 38 cm above the ground, foot end 12 cm above head end, straps 31° and 34° below level." */
export function sayState({ seatHeightM, footRaiseM, head, foot }: HangState): string {
  const raise = `${centimetres(Math.abs(footRaiseM))} ${footRaiseM < 0 ? "below" : "above"} head end`;
  const straps = `straps ${angle(head.angle)} and ${angle(foot.angle)} below level`;
  return `Seat ${centimetres(seatHeightM)} above the ground, foot end ${raise}, ${straps}.`;
}

/** "The seat is 38 cm, planned 45 cm." */
export function sayOff({ quantity, planned, found }: AsHungOff): string {
  const told = quantity === "spanM" ? length : centimetres;
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

/**
 * What is not sure enough: measurements that contradict one another, and straps that nobody measured and that may well
 * be past their limits. Empty where neither is so.
 */
export function sayDoubts(
  { misfit, band, doubts }: Adjustment,
  { limits }: Pick<HangInput, "limits">,
): readonly string[] {
  const misread = misfit > MISREAD ? [MISREAD_WORDS] : [];
  const [first] = doubts;
  if (first === undefined) return misread;
  const straps =
    doubts.length === 2 ? "both straps" : `the ${first === "head.angle" ? "head" : "foot"} strap`;
  const allowed = `${degreesOf(limits.angleMin)} to ${degreesOf(limits.angleMax)} is allowed`;
  const [low, high] = band[first];
  const likely =
    high - low > UNKNOWN ? "" : `${degreesOf(radians(low))} to ${degreesOf(radians(high))} is likely, `;
  return [...misread, `Measure the angle of ${straps} with the card: ${likely}${allowed}.`];
}

const MISREAD_WORDS = "These measurements do not fit together. Measure again before you change anything.";

/** A range as wide as this tells nobody anything. Source: house-convention. */
const UNKNOWN = degrees(15);

/** Far above 3 standard deviations something was misread. Source: house-convention (handbook/planning.md). */
const MISREAD = 5;

function degreesOf(value: Radians): string {
  return `${Math.round(inDegrees(value))}°`;
}

/** To the centimetre, as a tape at a hang is read. */
function centimetres(valueM: number): string {
  return plainLabels({ quantity: "short-length", value: valueM, digits: 0 });
}
